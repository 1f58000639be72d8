import type { ImagePoint } from "../../../core/units.ts";
import { filmPoint, isSamePoint, meanPoint, pixelsBetween, pointBetween } from "./film-point.ts";

/** How far the points of a recorded course lie apart along it, in pixels of the film. */
export const courseStepPx = 3;

/**
 * A course of evenly spaced points from a chain of neighbouring pixels.
 * Takes the chain from one anchor to the next, and both anchors, which the course begins and ends at exactly.
 * Gives points about {@link courseStepPx} apart. A chain of pixels is a stair and wavers by a pixel where the line is
 * faint; a mean over seventeen neighbours, taken twice, takes both out and moves an arc of radius R by about 24 / R
 * pixels, half a pixel for the tightest canals.
 */
export function courseOfPath(path: readonly ImagePoint[], from: ImagePoint, to: ImagePoint): ImagePoint[] {
  return evenlySpaced(smoothed(smoothed([from, ...path.slice(1, -1), to])), courseStepPx);
}

/** A straight course between two places. */
export const straightCourse = (from: ImagePoint, to: ImagePoint): ImagePoint[] =>
  evenlySpaced([from, to], courseStepPx);

/** Points along a line at equal distances as near to the wanted one as the whole length allows; its ends are kept. */
export function evenlySpaced(points: readonly ImagePoint[], stepPx: number): ImagePoint[] {
  const line = points.filter((point, index) => index === 0 || !isSamePoint(point, points[index - 1] ?? point));
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return [];
  const along = distancesAlong(line);
  const length = along.at(-1) ?? 0;
  const steps = Math.max(1, Math.round(length / stepPx));
  const inner = Array.from({ length: steps - 1 }, (_, index) => pointAt(line, along, (length * (index + 1)) / steps));
  return line.length === 1 ? [first] : [first, ...inner, last];
}

/** Distance of every point from the first, along the line, in pixels. */
export function distancesAlong(points: readonly ImagePoint[]): number[] {
  let length = 0;
  return points.map((point, index) => {
    const before = points[index - 1];
    length += before === undefined ? 0 : pixelsBetween(before, point);
    return length;
  });
}

/** The place at a distance along a line, given the distances of its points. */
export function pointAt(points: readonly ImagePoint[], along: readonly number[], distance: number): ImagePoint {
  const after = along.findIndex((at) => at >= distance);
  const end = points[after < 0 ? points.length - 1 : after] ?? filmPoint(0, 0);
  const start = points[after - 1];
  if (start === undefined) return end;
  const [low, high] = [along[after - 1] ?? 0, along[after] ?? 0];
  return pointBetween(start, end, high > low ? (distance - low) / (high - low) : 0);
}

const reach = 8;

/** Each point's mean with as many neighbours on both sides as there are, up to {@link reach}; the ends stay. */
function smoothed(points: readonly ImagePoint[]): ImagePoint[] {
  return points.map((_, index) => {
    const wide = Math.min(reach, index, points.length - 1 - index);
    return meanPoint(points.slice(index - wide, index + wide + 1));
  });
}
