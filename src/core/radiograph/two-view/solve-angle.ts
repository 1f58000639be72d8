import type { Receptor } from "./camera.ts";

/** Two landmarks as two films show them: how far the second lies to distal of the first on either film. */
export interface SeparationSeen {
  /** Horizontal angle of the first film in radians. */
  readonly angle: number;
  readonly firstMm: number;
  readonly secondMm: number;
  /** How far the second landmark lies to buccal of the first in truth, and how surely. */
  readonly buccalMm: number;
  readonly buccalSigmaMm: number;
  /** Standard deviation of a point on a film. */
  readonly sigmaMm: number;
}

/** A horizontal angle that fits, with its standard deviation, in radians. */
export interface AngleSolved {
  readonly angle: number;
  readonly sigma: number;
}

const widest = Math.PI / 3;

/**
 * The horizontal angles of a second film that two landmarks of known buccolingual separation allow: none, one or two.
 * Takes parallel rays at vertical angle 0. Gives angles of at most 60 degrees.
 * @source plane geometry, docs/methods/two-view.md C12
 */
export function solveAngle(seen: SeparationSeen, receptor: Receptor): AngleSolved[] {
  const { angle, firstMm, buccalMm } = seen;
  if (buccalMm === 0) return [];
  const found = receptor === "fixed" ? [fixedAngle(seen)] : turnedAngles(seen);
  const distalMm = receptor === "fixed" ? firstMm - buccalMm * Math.tan(angle) : distalOf(seen);
  return found
    .filter((one) => Math.abs(one) <= widest)
    .map((one) => ({ angle: one, sigma: sigmaOf(seen, { receptor, distalMm, found: one }) }));
}

const distalOf = ({ angle, firstMm, buccalMm }: SeparationSeen): number =>
  (firstMm - buccalMm * Math.sin(angle)) / Math.cos(angle);

const fixedAngle = ({ angle, firstMm, secondMm, buccalMm }: SeparationSeen): number =>
  Math.atan(Math.tan(angle) + (secondMm - firstMm) / buccalMm);

/** u = x cos a + y sin a = r cos(a - f), with f = atan2(y, x): two angles, or none. */
function turnedAngles(seen: SeparationSeen): number[] {
  const distal = distalOf(seen);
  const reach = Math.hypot(distal, seen.buccalMm);
  const cosine = seen.secondMm / reach;
  // A little beyond the reach is noise of the points.
  if (Math.abs(cosine) > 1 + (3 * seen.sigmaMm) / reach) return [];
  const middle = Math.atan2(seen.buccalMm, distal);
  const half = Math.acos(Math.max(-1, Math.min(1, cosine)));
  return [middle + half, middle - half].map((one) => Math.atan2(Math.sin(one), Math.cos(one)));
}

function sigmaOf(
  { angle, buccalMm, buccalSigmaMm, sigmaMm }: SeparationSeen,
  { receptor, distalMm, found }: { receptor: Receptor; distalMm: number; found: number },
): number {
  const clicks = Math.SQRT2 * sigmaMm;
  if (receptor === "fixed") {
    const slope = Math.abs(buccalMm) / Math.cos(found) ** 2;
    return Math.hypot(clicks, clicks, (Math.tan(found) - Math.tan(angle)) * buccalSigmaMm) / slope;
  }
  const slope = Math.abs(buccalMm * Math.cos(found) - distalMm * Math.sin(found));
  const carried = Math.cos(found) / Math.cos(angle);
  const depth = Math.sin(found) - carried * Math.sin(angle);
  return Math.hypot(clicks, carried * clicks, depth * buccalSigmaMm) / Math.max(slope, 1e-9);
}
