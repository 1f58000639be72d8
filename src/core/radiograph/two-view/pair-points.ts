import type { View, Views } from "./view.ts";

/** Of all traces so many points are used, evenly chosen: neighbours on a traced line say little more. */
const mostPoints = 120;
/** Points of the same number whose heights differ by more than this, root mean square, in mm, are not the same places. */
const levelToleranceMm = 0.3;

/** Films with their points paired. */
export interface Paired {
  readonly films: Views;
  /** Whether the points were equal in number and yet not the same places. */
  readonly atOtherHeights: boolean;
}

/**
 * The films with their points paired: by index where they are equal in number and lie at the same heights and no level was
 * fixed, else by level.
 * @source docs/methods/two-view.md C6
 */
export function pairPoints(films: Omit<Views, "byIndex">, sigmaMm: number): Paired {
  const [first, ...others] = films.views;
  const count = first?.points.length ?? 0;
  const equal = first?.rows.length === 0 && others.every(({ points }) => points.length === count);
  const near = Math.max(levelToleranceMm, 5 * sigmaMm);
  const together = equal && others.every((view) => first !== undefined && heightsApart(first, view) <= near);
  const views = films.views.map((view) => thinned(view, Math.floor(mostPoints / films.views.length)));
  return { films: { ...films, views, byIndex: together }, atOtherHeights: equal && !together };
}

function heightsApart(a: View, b: View): number {
  const apart = a.points.map(({ v }, index) => (b.points[index]?.v ?? 0) - v);
  const mean = apart.reduce((sum, one) => sum + one, 0) / apart.length;
  return Math.sqrt(apart.reduce((sum, one) => sum + (one - mean) ** 2, 0) / apart.length);
}

/** Evenly chosen points of a film, those at fixed levels among them. */
function thinned(view: View, most: number): View {
  const last = view.points.length - 1;
  const count = Math.min(last + 1, Math.max(10, most));
  const even = Array.from({ length: count }, (_, index) => Math.round((index * last) / (count - 1)));
  const kept = [...new Set([...even, ...view.rows])].sort((a, b) => a - b);
  return {
    ...view,
    points: kept.flatMap((index) => view.points[index] ?? []),
    alongMm: kept.flatMap((index) => view.alongMm[index] ?? []),
    rows: view.rows.map((row) => kept.indexOf(row)),
  };
}
