import { type ImagePoint, px } from "../units.ts";

/** How far the points of a course lie apart along it, in pixels of the film. */
export const courseStepPx = 3;
/** How many neighbours on each side a point is evened out with. */
const reach = 8;

/**
 * A course of evenly spaced points from a chain of neighbouring pixels.
 * Takes the chain from one place to another, and both places, which the course begins and ends at exactly.
 * Gives points about {@link courseStepPx} apart. A chain of pixels is a stair, up to 8 % too long, and wavers by a pixel
 * where the line is faint; a mean over seventeen neighbours, taken twice, takes both out and moves an arc of radius R by
 * about 24 / R pixels, half a pixel for the tightest canals.
 * @source plane geometry; docs/methods/trace C4
 */
export function courseOfPath(path: readonly ImagePoint[], from: ImagePoint, to: ImagePoint): ImagePoint[] {
  return evenlySpaced(smoothed(smoothed([from, ...path.slice(1, -1), to])), courseStepPx);
}

/** A straight course between two places, its points about {@link courseStepPx} apart. */
export const straightCourse = (from: ImagePoint, to: ImagePoint): ImagePoint[] =>
  evenlySpaced([from, to], courseStepPx);

/** Points along a line at equal distances, in px, as near to the wanted one as the whole length allows; its ends are kept. */
export function evenlySpaced(points: readonly ImagePoint[], stepPx: number): ImagePoint[] {
  const line = points.filter((point, index) => index === 0 || pixelsBetween(point, points[index - 1] ?? point) > 0);
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return [];
  const along = distancesAlong(line);
  const length = along.at(-1) ?? 0;
  const steps = Math.max(1, Math.round(length / stepPx));
  const inner = Array.from({ length: steps - 1 }, (_, index) => pointAt(line, along, (length * (index + 1)) / steps));
  return line.length === 1 ? [first] : [first, ...inner, last];
}

/** The distance of every point from the first along the line, in px. */
export function distancesAlong(points: readonly ImagePoint[]): number[] {
  let length = 0;
  return points.map((point, index) => {
    length += pixelsBetween(points[index - 1] ?? point, point);
    return length;
  });
}

/** The place at a distance along a line, in px, given the distances of its points; past its end the last point. */
export function pointAt(points: readonly ImagePoint[], along: readonly number[], distance: number): ImagePoint {
  const after = along.findIndex((at) => at >= distance);
  const end = points[after < 0 ? points.length - 1 : after] ?? { column: px(0), row: px(0) };
  const start = points[after - 1];
  if (start === undefined) return end;
  const [low, high] = [along[after - 1] ?? 0, along[after] ?? 0];
  const share = high > low ? (distance - low) / (high - low) : 0;
  const between = (axis: keyof ImagePoint) => px(start[axis] + (end[axis] - start[axis]) * share);
  return { column: between("column"), row: between("row") };
}

const pixelsBetween = (a: ImagePoint, b: ImagePoint): number => Math.hypot(a.column - b.column, a.row - b.row);

/** Each point's mean with as many neighbours on both sides as there are, up to {@link reach}; the ends stay. */
function smoothed(points: readonly ImagePoint[]): ImagePoint[] {
  return points.map((_, index) => {
    const wide = Math.min(reach, index, points.length - 1 - index);
    const near = points.slice(index - wide, index + wide + 1);
    const mean = (axis: keyof ImagePoint) => px(near.reduce((sum, point) => sum + point[axis], 0) / near.length);
    return { column: mean("column"), row: mean("row") };
  });
}
