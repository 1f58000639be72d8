import { distancesAlong, pointAt } from "../../../core/geometry/course-of-path.ts";
import type { ImagePoint } from "../../../core/units.ts";
import type { CourseRead } from "../../../ledger/course-in-space.ts";
import { type FilmPlacement, filmStep } from "../kernels/film-placement.ts";

/** One level on all films: its number, and the share of each film's trace at which it lies. */
export interface LevelTick {
  /** Counted from the orifice, which is 0. */
  readonly number: number;
  readonly shares: readonly number[];
  readonly zMm: number;
  /** A person said that these places are one level. */
  readonly fixed: boolean;
  /** The two ends of the traces are one level by what they are, and stay. */
  readonly isEnd: boolean;
}

/** The levels of a course in space as shares of the traces on its films. */
export function levelTicks({ levels }: Pick<CourseRead, "levels">): LevelTick[] {
  const whole = levels.at(-1)?.alongMm ?? [];
  return levels.map(({ alongMm, zMm, fixed }, index) => ({
    number: index,
    shares: alongMm.map((along, view) => within01(along / (whole[view] || 1))),
    ...{ zMm, fixed, isEnd: index === 0 || index === levels.length - 1 },
  }));
}

const within01 = (share: number): number => Math.min(1, Math.max(0, share));

/** A trace with the distances of its points, so that places on it are found fast. */
export interface MeasuredLine {
  readonly points: readonly ImagePoint[];
  readonly along: readonly number[];
}

/** See {@link MeasuredLine}. */
export const measuredLine = (points: readonly ImagePoint[]): MeasuredLine => ({
  points,
  along: distancesAlong(points),
});

/** The place at a share of a line. */
export const placeOnLine = ({ points, along }: MeasuredLine, share: number): ImagePoint =>
  pointAt(points, along, (along.at(-1) ?? 0) * share);

/** The share of a line that is nearest to a place, and how far off it is in pixels of the film. */
export function shareNearest({ points, along }: MeasuredLine, at: ImagePoint): { share: number; distancePx: number } {
  let best = { share: 0, distancePx: Number.POSITIVE_INFINITY };
  for (const [index, start] of points.entries()) {
    const end = points[index + 1] ?? start;
    const [dx, dy] = [end.column - start.column, end.row - start.row];
    const squared = dx * dx + dy * dy;
    const raw = squared === 0 ? 0 : ((at.column - start.column) * dx + (at.row - start.row) * dy) / squared;
    const part = within01(raw);
    const distancePx = Math.hypot(start.column + dx * part - at.column, start.row + dy * part - at.row);
    if (distancePx >= best.distancePx) continue;
    const from = along[index] ?? 0;
    best = { share: (from + Math.sqrt(squared) * part) / (along.at(-1) || 1), distancePx };
  }
  return best;
}

/** Which way along a trace an arrow key goes where the tick stands: 1 to the apex, -1 to the orifice, as it is seen. */
export function arrowAlong(
  key: string,
  line: MeasuredLine,
  { share, placement }: { readonly share: number; readonly placement: FilmPlacement },
): 1 | -1 | undefined {
  const arrow = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key];
  if (arrow === undefined) return undefined;
  const [before, after] = [placeOnLine(line, share - 0.02), placeOnLine(line, Math.min(1, share + 0.02))];
  const step = filmStep(placement, { x: arrow[0] ?? 0, y: arrow[1] ?? 0 });
  const toApex = step.column * (after.column - before.column) + step.row * (after.row - before.row);
  return toApex < 0 ? -1 : 1;
}
