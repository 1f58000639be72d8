import { type BodyOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type Line, numbersIn, type Page, says } from "../page-model.ts";
import { sourceName } from "../source-name.ts";

/**
 * The references of the case, and the published sources behind every number that the pages print, each with its mark: in
 * full, or by name and year where the paper is short.
 */
export function sourcePages(source: CaseSource, pages: readonly Page[], behind: "inFull" | "byName"): Page[] {
  const own = partsOf(source.parts, "reference").map(({ body }) => says(referenceWords(body)));
  const ids = sourceIdsOf(source, pages);
  const behindLines = behind === "inFull" ? ids.map((id) => inFull(id, source)) : byName(ids, source);
  const steps = stepLines(pages, source, behind);
  const blocks = [
    ...(own.length > 0 ? [{ kind: "text" as const, heading: "References of the case", lines: own, dense: true }] : []),
    ...(ids.length > 0
      ? [{ kind: "text" as const, heading: "Behind the numbers", lines: behindLines, dense: behind === "inFull" }]
      : []),
    ...(steps.length > 0
      ? [{ kind: "text" as const, heading: "Behind the usual steps", lines: steps, dense: behind === "inFull" }]
      : []),
    { kind: "text" as const, heading: "Cautions", lines: [says(caution)] },
  ];
  return [{ title: "Sources", on: "", blocks, notes: [] }];
}

/** `Martins JNR, .... Worldwide analyses of ... . J Endod 2018;44(11):1641-1649`. */
function referenceWords({ authors, title, journal, year, volume, pages }: BodyOf<"reference">): string {
  const inVolume = [volume === "" ? "" : `;${volume}`, pages === "" ? "" : `:${pages}`].join("");
  const where = [journal, year === undefined ? "" : `${year}${inVolume}`].filter((piece) => piece !== "").join(" ");
  return [authors.join(", "), title, where].filter((piece) => piece !== "").join(". ");
}

function inFull(id: string, { references }: CaseSource): Line {
  const found = references.get(id);
  if (found === undefined) return says(id);
  return [
    { text: found.reference },
    { text: found.verification === "seen" ? "" : " (value from memory)", quiet: true },
  ];
}

/** What stands behind the steps after a mishap that the pages tell of, each source once. */
function stepLines(pages: readonly Page[], source: CaseSource, behind: "inFull" | "byName"): Line[] {
  const named = [...new Set(pages.flatMap(({ stepSources = [] }) => stepSources))].sort();
  const ids = named.filter((name) => name !== practice);
  const others =
    ids.length < named.length ? [ids.length === 0 ? "Common practice." : "The others: common practice."] : [];
  if (behind === "inFull") return [...ids.map((id) => inFull(id, source)), ...others.map(says)];
  const names = ids.length === 0 ? [] : [`${ids.map((id) => shortSource(id, source.references)).join(", ")}.`];
  return named.length === 0 ? [] : [says([...names, ...others].join(" "))];
}
const practice = "common practice";

/** `Ahmed 2017*, Clark 1910*`, and where they stand in full. */
function byName(ids: readonly string[], { references }: CaseSource): Line[] {
  const names = ids.map((id) => shortSource(id, references));
  const where = "* value from memory. In full in the deck's sources and on the method pages.";
  return [[{ text: `${names.join(", ")}. ` }, { text: where, quiet: true }]];
}

/** `Ahmed 2017`, with a star where its value was recalled. */
export const shortSource = (id: string, references: CaseSource["references"]): string =>
  `${sourceName(id)}${references.get(id)?.verification === "seen" ? "" : "*"}`;

/** What stands under every document. */
export const caution =
  "These figures support, and never replace, licensed judgement, product labelling and local rules.";

function sourceIdsOf({ ledger, kept = [] }: CaseSource, pages: readonly Page[]): string[] {
  const printed = new Set(numbersIn({ pages }).map(({ ledgerEntry }) => ledgerEntry));
  const entries = [...ledger, ...kept].filter(({ id }) => printed.has(id));
  const ids = entries.flatMap(({ output }) => {
    const basis: unknown = typeof output === "object" && output !== null ? Reflect.get(output, "basis") : undefined;
    const sources: unknown = typeof basis === "object" && basis !== null ? Reflect.get(basis, "sources") : undefined;
    return Array.isArray(sources) ? sources.filter((id): id is string => typeof id === "string") : [];
  });
  return [...new Set(ids)].sort();
}
