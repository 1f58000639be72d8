import type { Block, Line, Table } from "../../pages/page-model.ts";
import { linesHeightIn, wrapped } from "../text-metrics.ts";

/** Sizes of a slide's words in points. */
export const sizes = {
  title: 28,
  subtitle: 16,
  heading: 14,
  body: 18,
  dense: 12,
  table: 14,
  caption: 12,
  footer: 10,
} as const;

/** The smallest thing that moves to another slide as one: a heading, a paragraph, a table's row. */
export type Unit =
  | { readonly kind: "heading"; readonly text: string; readonly heightIn: number }
  | { readonly kind: "line"; readonly line: Line; readonly sizePt: number; readonly heightIn: number }
  | { readonly kind: "row"; readonly table: Table; readonly row: readonly Line[]; readonly heightIn: number };

const paragraphGapIn = 0.09;
const rowPaddingIn = 0.14;
const cellPaddingIn = 0.16;
/** A paragraph longer than this is broken, so that no unit is taller than a slide. */
const linesInAUnit = 9;

/** A table's head and caption over its first row. */
export const tableHeadIn = linesHeightIn(1, sizes.caption) + linesHeightIn(1, sizes.table) + rowPaddingIn + 0.12;

/** What a block comes to in a column of a width, unit by unit; pictures have none. */
export function unitsOf(block: Block, widthIn: number): Unit[] {
  if (block.kind === "table")
    return block.rows.map((row) => ({ kind: "row", table: block, row, heightIn: rowHeightIn(block, row, widthIn) }));
  if (block.kind !== "text") return [];
  const heading: Unit[] =
    block.heading === undefined
      ? []
      : [{ kind: "heading", text: block.heading, heightIn: linesHeightIn(1, sizes.heading) + 0.16 }];
  const sizePt = block.dense === true ? sizes.dense : sizes.body;
  return [...heading, ...block.lines.flatMap((line) => lineUnits(line, widthIn, sizePt))];
}

/** The text of a line, without what its runs say about themselves. */
export const plain = (line: Line): string => line.map((run) => run.text).join("");

function lineUnits(line: Line, widthIn: number, sizePt: number): Unit[] {
  const rows = wrapped(plain(line), widthIn - 0.1, sizePt);
  const unitOf = (held: Line, count: number): Unit => ({
    kind: "line",
    line: held,
    sizePt,
    heightIn: linesHeightIn(count, sizePt) + paragraphGapIn,
  });
  if (rows.length <= linesInAUnit) return [unitOf(line, rows.length)];
  const pieces = Array.from({ length: Math.ceil(rows.length / linesInAUnit) }, (_, at) =>
    rows.slice(at * linesInAUnit, (at + 1) * linesInAUnit),
  );
  return pieces.map((piece) => unitOf([{ text: piece.join(" ") }], piece.length));
}

function rowHeightIn({ columns }: Table, row: readonly Line[], widthIn: number): number {
  const lines = row.map(
    (cell, at) =>
      wrapped(plain(cell), Math.max(0.2, widthIn * (columns[at]?.share ?? 1) - cellPaddingIn), sizes.table).length,
  );
  return linesHeightIn(Math.max(1, ...lines), sizes.table) + rowPaddingIn;
}
