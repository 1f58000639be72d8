import type { Picture } from "./picture.ts";
import type { Region } from "./region.ts";

/** Pixels of the first film with their grey and how it changes there; three numbers apart, one line each. */
export interface Template {
  readonly count: number;
  readonly column: Float64Array;
  readonly row: Float64Array;
  readonly grey: Float64Array;
  readonly right: Float64Array;
  readonly down: Float64Array;
  /** Middle and half size of the film: the step is solved in places counted from there. */
  readonly middle: { readonly column: number; readonly row: number; readonly half: number };
}

/** So far from a film's edge its smoothed grey holds what was made up beyond it, px. */
export const edge = 2;
/** As many pixels tell eight numbers as well as all of them would, for films of any grain. */
const mostPixels = 120_000;

/** A part of a film: its first column and row, and how many of each. */
export interface Window {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

const whole = ({ columns, rows }: Picture): Window => ({ column: 0, row: 0, columns, rows });

/** Pixels of a region on an even grid, as many as are needed, with the grey and how it changes. */
export function templateOf(
  { first, region }: { readonly first: Picture; readonly region: Region },
  window: Window = whole(first),
): Template {
  const { columns, rows } = first;
  const isLarge = window.columns * window.rows > mostPixels;
  const counted = isLarge ? sumOf(region.counts) : 0;
  const apart = Math.max(1, Math.ceil(Math.sqrt(counted / mostPixels)));
  const chosen: number[] = [];
  const last = {
    column: Math.min(columns - edge, window.column + window.columns),
    row: Math.min(rows - edge, window.row + window.rows),
  };
  for (let row = Math.max(edge, window.row); row < last.row; row += apart)
    for (let column = Math.max(edge, window.column); column < last.column; column += apart)
      if (region.counts[row * columns + column] === 1) chosen.push(row * columns + column);
  return {
    count: chosen.length,
    ...linesOf(first, chosen),
    middle: { column: (columns - 1) / 2, row: (rows - 1) / 2, half: Math.max(columns, rows) / 2 },
  };
}

/** What a template holds of each chosen pixel. A plain loop: `from` with a function takes several times as long. */
function linesOf({ columns, values }: Picture, chosen: readonly number[]) {
  const line = () => new Float64Array(chosen.length);
  const [column, row, grey, right, down] = [line(), line(), line(), line(), line()];
  for (let index = 0; index < chosen.length; index++) {
    const at = chosen[index] ?? 0;
    column[index] = at % columns;
    row[index] = Math.floor(at / columns);
    grey[index] = values[at] ?? 0;
    right[index] = ((values[at + 1] ?? 0) - (values[at - 1] ?? 0)) / 2;
    down[index] = ((values[at + columns] ?? 0) - (values[at - columns] ?? 0)) / 2;
  }
  return { column, row, grey, right, down };
}

function sumOf(counts: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < counts.length; at++) sum += counts[at] ?? 0;
  return sum;
}
