import type { BodyOf } from "../../record/parts.ts";
import { canalStateWords } from "../../record/words/visit-words.ts";
import { numberText } from "../ledger-reader.ts";
import { type Block, says, type Table } from "../page-model.ts";
import { fillingEnd, taperWords } from "../sections/canal-table.ts";
import type { LetterCase } from "./letter-case.ts";

type Row = BodyOf<"visit">["canals"][number];

/** Each canal as the last visit that names it left it. */
export function canalsInLetter({ visits }: Pick<LetterCase, "visits">): Table[] {
  const rows = new Map(visits.flatMap(({ body }) => body.canals.map((row) => [row.canal, row] as const)));
  if (rows.size === 0) return [];
  const columns = [
    ["Canal", 0.08],
    ["State", 0.18],
    ["Working length", 0.26],
    ["Size and taper", 0.12],
    ["Filled with", 0.22],
    ["Filling ends", 0.14],
  ] as const;
  return [
    {
      kind: "table",
      caption: "Canals; lengths from the reference point, filling ends from the apex",
      columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
      rows: [...rows.values()].map((row) => cellsOf(row).map(says)),
    },
  ];
}

const cellsOf = (row: Row): readonly string[] => [
  row.canal,
  row.blockedBy === undefined ? canalStateWords[row.state] : `${canalStateWords[row.state]}: ${row.blockedBy}`,
  lengthOf(row),
  sizeOf(row),
  [row.filledWith, row.technique].filter((piece) => piece !== undefined && piece !== "").join(", ") || "–",
  fillingEnd(row.fillingEndMm),
];

function lengthOf({ workingLengthMm, reference }: Row): string {
  if (workingLengthMm === undefined) return "–";
  const length = `${numberText(workingLengthMm, 1)} mm`;
  return reference === "" ? length : `${length}, ${reference}`;
}

function sizeOf({ apicalSize, taper }: Row): string {
  if (apicalSize === undefined) return "–";
  return taper === undefined ? `${apicalSize}` : `${apicalSize} ${taperWords(taper)}`;
}

/** Lots of what stays in the tooth, or may: what is said not to stay is left out. */
export function lotsInLetter({ visits }: Pick<LetterCase, "visits">): Block[] {
  const lots = visits.flatMap(({ body }) => body.lots.filter(({ stays }) => stays !== false));
  const named = [...new Set(lots.map(({ material, lot }) => (lot === "" ? material : `${material}, lot ${lot}`)))];
  return named.length === 0
    ? []
    : [{ kind: "text", heading: "Materials and their lots", lines: [says(`${named.join("; ")}.`)] }];
}
