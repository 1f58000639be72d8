/** Which rows of a long table stand in sight, and how much space the others take above and below. */
export interface RowWindow {
  readonly first: number;
  readonly last: number;
  readonly abovePx: number;
  readonly belowPx: number;
}

/** A few rows more than can be seen, so that a quick scroll shows no gap. */
const spare = 12;

/** The rows to draw for a scroll position; all rows are equally high. */
export function windowOfRows(count: number, rowPx: number, scrollPx: number, heightPx: number): RowWindow {
  const first = Math.max(0, Math.min(count, Math.floor(scrollPx / rowPx) - spare));
  const last = Math.min(count, Math.ceil((scrollPx + heightPx) / rowPx) + spare);
  return {
    first,
    last: Math.max(first, last),
    abovePx: first * rowPx,
    belowPx: (count - Math.max(first, last)) * rowPx,
  };
}
