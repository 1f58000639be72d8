import { type PartOf, partsOf } from "../../record/parts.ts";
import { helpWords } from "../../record/words/visit-words.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import type { Block, Page } from "../page-model.ts";
import { toothFigure } from "../tooth-figure.ts";
import { canalTables } from "./canal-table.ts";
import { textBlock } from "./presenting.ts";
import { afterwards, beforeWork, visitNotes } from "./visit-checks.ts";
import {
  anaestheticTable,
  confirmedBlock,
  filledWith,
  holdPointTable,
  instrumentTable,
  leftInTooth,
  usedTable,
} from "./visit-materials.ts";
import { visitSums } from "./visit-sums.ts";

/** Each visit as it was worked: what was checked, given, used, measured, filled, seen by whom and told. */
export function visitPages(source: CaseSource): Page[] {
  const read = ledgerReader(source.ledger);
  const visits = partsOf(source.parts, "visit").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  return visits.flatMap((visit, index) => [
    workedPage(visit, index + 1, source, read),
    ...sumsPage(visit, index + 1, source),
  ]);
}

/** What the amounts come to, on a page that stands behind its visit. */
function sumsPage(visit: PartOf<"visit">, number: number, source: CaseSource): Page[] {
  const blocks = visitSums(visit, source);
  if (blocks.length === 0) return [];
  const { on } = visit.body;
  return [{ title: `Visit ${number}, doses`, subtitle: momentWords(on, source.parts), on, blocks, notes: [] }];
}

function workedPage({ body }: PartOf<"visit">, number: number, source: CaseSource, read: LedgerReader): Page {
  return {
    title: `Visit ${number}`,
    on: body.on,
    subtitle: [
      momentWords(body.on, source.parts),
      body.minutes === undefined ? "" : `${body.minutes} min`,
      body.help === undefined ? "" : `resident: ${helpWords[body.help]}`,
    ]
      .filter((piece) => piece !== "")
      .join(", "),
    blocks: [
      ...emblemOf(source, body.on),
      ...textBlock("Aim", body.aim),
      ...beforeWork(body),
      ...canalTables(body, { parts: source.parts, read }),
      ...filledWith(body),
      ...anaestheticTable(body),
      ...usedTable(body),
      ...confirmedBlock(body),
      ...instrumentTable(body),
      ...leftInTooth(body),
      ...holdPointTable(body),
      ...textBlock("Told to the patient", body.told),
      ...textBlock("Note", body.note),
      ...afterwards(body),
    ],
    notes: visitNotes(body),
  };
}

/** The tooth as the visit left it. */
function emblemOf(source: CaseSource, day: string): Block[] {
  const figure = toothFigure(source, 900, day);
  return figure === undefined ? [] : [{ kind: "figure", figure, caption: "The canals as the visit left them" }];
}
