import { withUnit } from "../../parts/figures-in-words.ts";
import type { FilmSize } from "./film-point.ts";
import type { MmPerPx } from "./pane-group.ts";

/** A grid over a film: where its lines are, in the film's pixels, and what lies between two of them. */
export interface FilmGrid {
  readonly columns: readonly GridLine[];
  readonly rows: readonly GridLine[];
  /** `1 mm`, `50 px`. */
  readonly step: string;
}

/** One line of a grid; every fifth is strong. */
export interface GridLine {
  readonly at: number;
  readonly isStrong: boolean;
}

const steps = {
  mm: [0.5, 1, 2, 5, 10, 20],
  px: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000],
} as const;

/** Lines nearer to each other on the screen than this hide the film. */
const leastOnScreen = 16;

/**
 * The grid that fits a film at a zoom: the smallest of the usual steps whose lines are far enough apart on the screen.
 * In millimetres of the film's scale where it has one, else in pixels; counted from its upper left edge.
 */
export function filmGrid(film: FilmSize, zoom: number, mmPerPx?: MmPerPx): FilmGrid {
  const unit = mmPerPx === undefined ? "px" : "mm";
  const per = mmPerPx ?? { column: 1, row: 1 };
  const finest = Math.max(per.column, per.row);
  const step = steps[unit].find((one) => (one / finest) * zoom >= leastOnScreen) ?? steps[unit].at(-1) ?? 1;
  return {
    columns: linesOver(film.columns, step / per.column),
    rows: linesOver(film.rows, step / per.row),
    step: withUnit(String(step), unit),
  };
}

/** Lines every so many pixels from an edge to the other; the edge lies half a pixel before the first centre. */
function linesOver(size: number, every: number): GridLine[] {
  const count = Math.floor(size / every + 1e-9) + 1;
  return Array.from({ length: count }, (_, index) => ({ at: index * every - 0.5, isStrong: index % 5 === 0 }));
}
