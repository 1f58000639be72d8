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
  narrowTable: 12,
  caption: 12,
  footer: 10,
} as const;

/** The smallest thing that moves to another slide as one: a heading, a paragraph, a table's row. */
export type Unit =
  | { readonly kind: "heading"; readonly text: string; readonly sizePt: number; readonly heightIn: number }
  | { readonly kind: "line"; readonly line: Line; readonly sizePt: number; readonly heightIn: number }
  | {
      readonly kind: "row";
      readonly table: Table;
      readonly row: readonly Line[];
      readonly sizePt: number;
      /** The height of the caption and the head that stand over the first row in a column. */
      readonly headIn: number;
      readonly heightIn: number;
    };

const paragraphGapIn = 0.09;
const rowPaddingIn = 0.14;
const cellPaddingIn = 0.16;
/** A paragraph longer than this is broken, so that no unit is taller than a slide. */
const linesInAUnit = 9;

/** Narrower columns set their tables smaller. */
const narrowIn = 7;
/** Bold letters take this much more room. */
const boldIsWider = 1.08;
/** A table's caption with the gap under it. */
export const captionIn = 0.3;

/** What a block comes to in a column of a width, set at a scale of the usual sizes, unit by unit; pictures have none. */
export function unitsOf(block: Block, widthIn: number, scale: number): Unit[] {
  if (block.kind === "table") return rowUnits(block, widthIn, scale);
  if (block.kind !== "text") return [];
  const headingPt = sizes.heading * scale;
  const heading: Unit[] =
    block.heading === undefined
      ? []
      : [{ kind: "heading", text: block.heading, sizePt: headingPt, heightIn: linesHeightIn(1, headingPt) + 0.16 }];
  const sizePt = (block.dense === true ? sizes.dense : sizes.body) * scale;
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

function rowUnits(table: Table, widthIn: number, scale: number): Unit[] {
  const sizePt = (widthIn < narrowIn ? sizes.narrowTable : sizes.table) * scale;
  const heads = table.columns.map(({ head }) => [{ text: head }]);
  const headIn = captionIn + rowHeightIn(heads, table, { widthIn, sizePt: sizePt * boldIsWider });
  return table.rows.map((row) => ({
    kind: "row",
    ...{ table, row, sizePt, headIn },
    heightIn: rowHeightIn(row, table, { widthIn, sizePt }),
  }));
}

/** The height of a row, its cells broken into lines as they will stand. */
function rowHeightIn(row: readonly Line[], { columns }: Table, set: { widthIn: number; sizePt: number }): number {
  const lines = row.map((cell, at) => {
    const share = columns[at]?.share ?? 1;
    return wrapped(plain(cell), Math.max(0.2, set.widthIn * share - cellPaddingIn), set.sizePt).length;
  });
  return linesHeightIn(Math.max(1, ...lines), set.sizePt) + rowPaddingIn;
}

/** The height of a table's head alone, without its caption. */
export const headRowIn = (unit: Extract<Unit, { kind: "row" }>): number => unit.headIn - captionIn;
