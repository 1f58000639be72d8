import { type BodyOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type Line, numbersIn, type Page, says } from "../page-model.ts";

/** The references of the case, and the published sources behind every number that the pages print, each with its mark. */
export function sourcePages(source: CaseSource, pages: readonly Page[]): Page[] {
  const own = partsOf(source.parts, "reference").map(({ body }) => says(referenceWords(body)));
  const behind = sourceIdsOf(source, pages).map((id): Line => {
    const found = source.references.get(id);
    return found === undefined
      ? says(id)
      : [{ text: found.reference }, { text: found.verification === "seen" ? "" : " (value from memory)", quiet: true }];
  });
  const blocks = [
    ...(own.length > 0 ? [{ kind: "text" as const, heading: "References of the case", lines: own, dense: true }] : []),
    ...(behind.length > 0
      ? [{ kind: "text" as const, heading: "Behind the numbers", lines: behind, dense: true }]
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

/** What stands under every document. */
const caution = "These figures support, and never replace, licensed judgement, product labelling and local rules.";

function sourceIdsOf({ ledger }: CaseSource, pages: readonly Page[]): string[] {
  const printed = new Set(numbersIn({ pages }).map(({ ledgerEntry }) => ledgerEntry));
  const entries = ledger.filter(({ id }) => printed.has(id));
  const ids = entries.flatMap(({ output }) => {
    const basis: unknown = typeof output === "object" && output !== null ? Reflect.get(output, "basis") : undefined;
    const sources: unknown = typeof basis === "object" && basis !== null ? Reflect.get(basis, "sources") : undefined;
    return Array.isArray(sources) ? sources.filter((id): id is string => typeof id === "string") : [];
  });
  return [...new Set(ids)].sort();
}
