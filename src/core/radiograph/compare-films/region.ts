import type { ImagePoint } from "../../units.ts";

/** Which pixels of a picture count: 1 where one does, row by row. */
export interface Region {
  readonly columns: number;
  readonly rows: number;
  readonly counts: Uint8Array;
}

/** Outlines on one film, each at least a triangle. */
export type Outlines = readonly (readonly ImagePoint[])[];

/**
 * The pixels of a film within any of some outlines (all pixels where there are none) and outside those left out.
 * @source plane geometry: a row crosses an outline an odd number of times before a place within
 */
export function regionOf(size: { columns: number; rows: number }, within: Outlines, without: Outlines): Region {
  const { columns, rows } = size;
  const counts = new Uint8Array(columns * rows).fill(within.length === 0 ? 1 : 0);
  for (const outline of within) paint({ columns, rows, counts }, outline, 1);
  for (const outline of without) paint({ columns, rows, counts }, outline, 0);
  return { columns, rows, counts };
}

function paint({ columns, rows, counts }: Region, outline: readonly ImagePoint[], value: 0 | 1): void {
  const heights = outline.map(({ row }) => row);
  const first = Math.max(0, Math.ceil(Math.min(...heights)));
  const last = Math.min(rows - 1, Math.floor(Math.max(...heights)));
  for (let row = first; row <= last; row++) {
    const crossings = crossingsOf(outline, row);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const from = Math.max(0, Math.ceil(crossings[pair] ?? 0));
      const to = Math.min(columns - 1, Math.floor(crossings[pair + 1] ?? -1));
      if (from <= to) counts.fill(value, row * columns + from, row * columns + to + 1);
    }
  }
}

function crossingsOf(outline: readonly ImagePoint[], row: number): number[] {
  return outline
    .flatMap((to, index) => {
      const from = outline.at(index - 1) ?? to;
      if (from.row > row === to.row > row) return [];
      return [from.column + ((row - from.row) / (to.row - from.row)) * (to.column - from.column)];
    })
    .sort((a, b) => a - b);
}

/** Every second pixel of a region, as {@link halved} takes them of a picture. */
export function halvedRegion({ columns, rows, counts }: Region): Region {
  const [half, low] = [Math.ceil(columns / 2), Math.ceil(rows / 2)];
  const fewer = new Uint8Array(half * low);
  for (let row = 0; row < low; row++)
    for (let column = 0; column < half; column++)
      fewer[row * half + column] = counts[2 * row * columns + 2 * column] ?? 0;
  return { columns: half, rows: low, counts: fewer };
}
