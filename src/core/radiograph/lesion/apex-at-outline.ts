import type { PlanePoint } from "../../units.ts";

/** Where an apex lies to an outline. */
export interface ApexAtOutline {
  readonly inside: boolean;
  /** To the nearest place of the outline, mm. */
  readonly toEdge: number;
  /** The standard deviation of `toEdge` where each corner and the apex err by 1 in each direction. */
  readonly sigmaShare: number;
}

/**
 * How far an apex lies from an outline, and whether within.
 * @source plane geometry; docs/methods/lesion C4
 */
export function apexAtOutline(apex: PlanePoint, corners: readonly PlanePoint[]): ApexAtOutline {
  let [toEdge, share, inside] = [Number.POSITIVE_INFINITY, 0, false];
  for (const [index, to] of corners.entries()) {
    const from = corners.at(index - 1) ?? to;
    const along = shareAlong(apex, from, to);
    const away = Math.hypot(apex.x - from.x - along * (to.x - from.x), apex.y - from.y - along * (to.y - from.y));
    if (away < toEdge) [toEdge, share] = [away, along];
    // A ray to the right of the apex crosses the outline an odd number of times where the apex lies within.
    const passes = from.y > apex.y !== to.y > apex.y;
    if (passes && apex.x < from.x + ((apex.y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
  }
  return { inside, toEdge, sigmaShare: Math.sqrt(1 + (1 - share) ** 2 + share ** 2) };
}

/** How much of the way from one corner to the next the place nearest to the apex lies, 0 to 1. */
function shareAlong(apex: PlanePoint, from: PlanePoint, to: PlanePoint): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const share = ((apex.x - from.x) * x + (apex.y - from.y) * y) / (x * x + y * y);
  return Math.min(1, Math.max(0, share));
}
