import type { ImagePoint } from "../../../core/units.ts";
import { pixelsBetween, pointBetween } from "./film-point.ts";
import { handlesOf, lineOf, type Mark } from "./mark-shape.ts";

/** What of the marks is under the pointer: a place to take hold of, or a line between them. */
export type Hit =
  | { readonly on: "handle"; readonly markId: string; readonly handle: number }
  | { readonly on: "line"; readonly markId: string; readonly point: number };

/** A place on a line that is nearest to another place. */
export interface Nearest {
  /** Index of the point of the line that is nearest along it. */
  readonly point: number;
  readonly distancePx: number;
}

/**
 * What a pointer at a place of the film touches, handles before lines, the nearest of each.
 * Takes the marks, the place, how far off still counts (in pixels of the film, so the caller divides by the zoom), and
 * the mark whose handles are shown, which goes before the others.
 */
export function hitAt(marks: readonly Mark[], at: ImagePoint, withinPx: number, selected?: string): Hit | undefined {
  const shown = marks.filter(({ id }) => id === selected);
  return handleHit(shown, at, withinPx) ?? lineHit(marks, at, withinPx);
}

function handleHit(marks: readonly Mark[], at: ImagePoint, withinPx: number): Hit | undefined {
  const hits = marks.flatMap(({ id, body }) =>
    handlesOf(body).map((place, handle) => ({ markId: id, handle, distance: pixelsBetween(place, at) })),
  );
  const [nearest] = hits.filter(({ distance }) => distance <= withinPx).sort((a, b) => a.distance - b.distance);
  return nearest && { on: "handle", markId: nearest.markId, handle: nearest.handle };
}

function lineHit(marks: readonly Mark[], at: ImagePoint, withinPx: number): Hit | undefined {
  const hits = marks.flatMap(({ id, body }) => {
    const nearest = nearestOnLine(lineOf(body), at);
    return nearest === undefined ? [] : [{ markId: id, ...nearest }];
  });
  const [best] = hits.filter(({ distancePx }) => distancePx <= withinPx).sort((a, b) => a.distancePx - b.distancePx);
  return best && { on: "line", markId: best.markId, point: best.point };
}

/** The place of a line nearest to another place, or undefined for a line of no points. */
export function nearestOnLine(line: readonly ImagePoint[], at: ImagePoint): Nearest | undefined {
  let best: Nearest | undefined;
  line.forEach((start, index) => {
    const end = line[index + 1] ?? start;
    const fraction = fractionNearest(start, end, at);
    const distancePx = pixelsBetween(pointBetween(start, end, fraction), at);
    if (best === undefined || distancePx < best.distancePx)
      best = { point: fraction > 0.5 ? Math.min(index + 1, line.length - 1) : index, distancePx };
  });
  return best;
}

function fractionNearest(start: ImagePoint, end: ImagePoint, at: ImagePoint): number {
  const [across, down] = [end.column - start.column, end.row - start.row];
  const squared = across * across + down * down;
  if (squared === 0) return 0;
  const along = ((at.column - start.column) * across + (at.row - start.row) * down) / squared;
  return Math.min(1, Math.max(0, along));
}
