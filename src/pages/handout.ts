import { partsOf, thePart } from "../record/parts.ts";
import { apicalWords, pulpalWords, wayWords } from "../record/words/case-words.ts";
import type { CaseSource } from "./case-source.ts";
import { ledgerReader } from "./ledger-reader.ts";
import { type Block, type Page, type PageModel, says } from "./page-model.ts";
import { recallPages } from "./sections/after.ts";
import { anatomyPages } from "./sections/anatomy.ts";
import { canalTables } from "./sections/canal-table.ts";
import { filmGallery } from "./sections/film-gallery.ts";
import { sourcePages } from "./sections/sources.ts";
import { sentence } from "./sentence.ts";
import { titleOf } from "./title-of.ts";

/** A case on paper: what it was, what was measured on each film, what was done, how it went, and the sources. */
export function handout(source: CaseSource): PageModel {
  const pages = [
    summary(source),
    ...anatomyPages(source),
    ...filmGallery(source),
    ...canalPages(source),
    ...recallPages(source),
    ...sourcePages(source),
  ];
  return { as: "handout", ...titleOf(source), pages };
}

function summary({ parts }: CaseSource): Page {
  const about = thePart(parts, "case")?.body;
  const diagnosis = partsOf(parts, "diagnosis").at(-1)?.body;
  const plan = partsOf(parts, "plan").at(-1)?.body;
  const blocks: Block[] = [
    ...(about === undefined || about.complaint === ""
      ? []
      : [{ kind: "text" as const, heading: "Complaint", lines: [says(about.complaint)] }]),
    ...(diagnosis === undefined
      ? []
      : [
          {
            kind: "text" as const,
            heading: "Diagnosis",
            lines: [says(sentence(`${pulpalWords[diagnosis.pulpal]}; ${apicalWords[diagnosis.apical]}`))],
          },
        ]),
    ...(plan === undefined
      ? []
      : [
          {
            kind: "text" as const,
            heading: "Chosen",
            lines: [says(sentence(wayWords[plan.chosen])), ...(plan.because === "" ? [] : [says(plan.because)])],
          },
        ]),
  ];
  return { title: "Summary", on: about?.presentedOn ?? "", blocks, notes: [] };
}

/** The canal table as the last visit left it. */
function canalPages(source: CaseSource): Page[] {
  const visits = partsOf(source.parts, "visit").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  const last = visits.filter((visit) => visit.body.canals.length > 0).at(-1);
  if (last === undefined) return [];
  const from = { parts: source.parts, read: ledgerReader(source.ledger) };
  return [
    { title: "Canals as the last visit left them", on: last.body.on, blocks: canalTables(last.body, from), notes: [] },
  ];
}
