import { partsOf } from "../record/parts.ts";
import type { CaseSource } from "./case-source.ts";
import { ledgerReader } from "./ledger-reader.ts";
import { type Line, type Page, type PageModel, says } from "./page-model.ts";
import { recallTable } from "./sections/after.ts";
import { canalTables } from "./sections/canal-table.ts";
import { spaceOnPaper } from "./sections/course-in-space.ts";
import { filmGallery } from "./sections/film-gallery.ts";
import { mishapFacts, stepSourcesOf } from "./sections/mishap.ts";
import { removalFacts } from "./sections/removal.ts";
import { sourcePages } from "./sections/sources.ts";
import { summaryPage } from "./sections/summary.ts";
import { comparisonOnPaper } from "./sections/two-dates.ts";
import { filledWith } from "./sections/visit-materials.ts";
import { againstLimits } from "./sections/visit-sums.ts";
import { titleOf } from "./title-of.ts";

/**
 * A case on paper, two sheets where it is a usual one: what it was, what was measured on each film, what was done, how it
 * went, what is told elsewhere alone, and the sources.
 */
export function handout(source: CaseSource): PageModel {
  const told = [
    summaryPage(source),
    ...filmGallery(source),
    ...spaceOnPaper(source),
    ...canalPages(source),
    ...dosesPage(source),
    ...mishapPage(source),
    ...recallPage(source),
    ...comparisonOnPaper(source),
    ...leftOutPage(source),
  ];
  const { title, mark, demo } = titleOf(source);
  return { as: "handout", title, mark, demo, pages: [...told, ...sourcePages(source, told, "byName")] };
}

/** The canal table as the last visit left it. */
function canalPages(source: CaseSource): Page[] {
  const visits = partsOf(source.parts, "visit").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  const last = visits.filter((visit) => visit.body.canals.length > 0).at(-1);
  if (last === undefined) return [];
  const from = { parts: source.parts, read: ledgerReader(source.ledger) };
  const blocks = [...canalTables(last.body, from), ...filledWith(last.body)];
  return [{ title: "Canals as the last visit left them", on: last.body.on, blocks, notes: [] }];
}

/** What each visit's amounts came to against published limits. */
function dosesPage(source: CaseSource): Page[] {
  const visits = partsOf(source.parts, "visit").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  const lines = visits.flatMap((visit, at) =>
    againstLimits(visit, source).map((line): Line => [{ text: `Visit ${at + 1}: `, quiet: true }, ...line]),
  );
  return lines.length === 0
    ? []
    : [{ title: "Doses against limits", on: "", blocks: [{ kind: "text", lines }], notes: [] }];
}

function mishapPage(source: CaseSource): Page[] {
  const mishaps = partsOf(source.parts, "mishap");
  if (mishaps.length === 0) return [];
  const lines = [...mishaps.map((mishap) => mishapFacts(mishap, source)), ...removalFacts(source)];
  const stepSources = mishaps.flatMap(({ body }) => stepSourcesOf(body));
  return [{ title: "Mishaps", on: "", blocks: [{ kind: "text", lines }], notes: [], stepSources }];
}

function recallPage(source: CaseSource): Page[] {
  const table = recallTable(source, "withNotes");
  return table === undefined ? [] : [{ title: "Recalls", on: "", blocks: [table], notes: [] }];
}

/** Names what the record holds and these sheets leave out. */
function leftOutPage({ parts }: CaseSource): Page[] {
  const kinds = [
    ["medicalHistory", "medical history"],
    ["findings", "findings with their controls"],
    ["plan", "the ways that were weighed and what makes the tooth harder"],
    ["consent", "consent"],
    ["visit", "each visit in full"],
    ["mishap", "the account of each mishap"],
    ["removal", "how each removal was weighed"],
    ["handback", "hand-back"],
    ["review", "reviews"],
    ["claim", "claims"],
  ] as const;
  const names = kinds.filter(([kind]) => partsOf(parts, kind).length > 0).map(([, name]) => name);
  if (names.length === 0) return [];
  const line = says(`Left out here and told in the record and its deck: ${names.join(", ")}.`);
  return [{ title: "Not on these sheets", on: "", blocks: [{ kind: "text", lines: [line] }], notes: [] }];
}
