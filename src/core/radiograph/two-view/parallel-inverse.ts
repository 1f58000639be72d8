import type { Receptor } from "./camera.ts";

/** What one film shows of a place: its u in mm, under its horizontal angle in radians. */
export interface Sight {
  readonly angle: number;
  readonly u: number;
}

/**
 * Where a place lies mesiodistally (x) and buccolingually (y) that two films show, for parallel rays at vertical angle 0.
 * Takes what both films show, their angles apart. Gives mm: x to distal, y to buccal, from the point that u is counted from.
 * @source plane geometry, docs/methods/two-view.md C2 and C3
 */
export function parallelInverse(one: Sight, other: Sight, receptor: Receptor): { x: number; y: number } {
  if (receptor === "turnsWithBeam") {
    const shift = Math.sin(other.angle - one.angle);
    return {
      x: (one.u * Math.sin(other.angle) - other.u * Math.sin(one.angle)) / shift,
      y: (other.u * Math.cos(one.angle) - one.u * Math.cos(other.angle)) / shift,
    };
  }
  const y = (other.u - one.u) / (Math.tan(other.angle) - Math.tan(one.angle));
  return { x: one.u - y * Math.tan(one.angle), y };
}
