import { type CanalBending, curvatureAt, type Knot, onePlaceMm } from "./canal-bending.ts";
import { diameterAt, type InstrumentShape } from "./instrument-shape.ts";

/** Which side of a bent instrument the radius of its course belongs to. */
export type Convention = "neutral" | "outer" | "inner";

/** The strain at a distance from the tip, as a fraction. */
export interface Strained {
  readonly fromTipMm: number;
  readonly strain: number;
}

/** An instrument seated in a canal with its tip at a depth. */
export interface Seated {
  readonly shape: InstrumentShape;
  readonly bending: Pick<CanalBending, "knots" | "lengthMm">;
  readonly tipDepthMm: number;
  readonly convention: Convention;
}

/**
 * The strain at the surface of an instrument of diameter d where its course has curvature k.
 * Takes d k: the diameter in mm times 1/mm. Gives a fraction: d / (2R), d / (2R - d) or d / (2R + d).
 * @source M. G. A. Bahia, V. T. L. Buono, Oral Surg Oral Med Oral Pathol Oral Radiol Endod 2005;100:249-255 (memory);
 * docs/methods/bend C1
 */
function surfaceStrain(diameterOverRadius: number, convention: Convention): number {
  switch (convention) {
    case "neutral":
      return diameterOverRadius / 2;
    case "outer":
      return diameterOverRadius / (2 - diameterOverRadius);
    case "inner":
      return diameterOverRadius / (2 + diameterOverRadius);
  }
}

/** The strain at a distance from the tip; where the curvature jumps, the larger one. */
export function strainAt(seated: Seated, fromTipMm: number): number {
  const curvature = curvatureAt(seated.bending.knots, seated.tipDepthMm - fromTipMm);
  return surfaceStrain(diameterAt(seated.shape, fromTipMm) * curvature, seated.convention);
}

/**
 * Where an instrument is strained most, and by how much; 0 at the tip in a straight canal.
 * Exact: between its stations the diameter, and between knots the curvature, is a straight line, so that their product is
 * largest at an end of such a stretch or at the top of a parabola.
 * @source docs/methods/bend C3
 */
export function peakStrain(seated: Seated): Strained {
  return stretchesOf(seated).reduce<Strained>(
    (best, stretch) => {
      const { fromTipMm, product } = largestOn(stretch);
      const strain = surfaceStrain(product, seated.convention);
      return strain > best.strain ? { fromTipMm, strain } : best;
    },
    { fromTipMm: 0, strain: 0 },
  );
}

/** Diameter and curvature at one place of the instrument. */
interface At {
  readonly fromTipMm: number;
  readonly diameterMm: number;
  readonly perMm: number;
}

/** The stretches of the seated part on which diameter and curvature are straight lines. */
function stretchesOf({ shape, bending, tipDepthMm }: Seated): [At, At][] {
  const { knots } = bending;
  return knots.slice(1).flatMap((apical, index): [At, At][] => {
    const coronal = knots[index];
    if (coronal === undefined) return [];
    const near = Math.max(0, tipDepthMm - apical.fromOrificeMm);
    const far = Math.min(tipDepthMm, tipDepthMm - coronal.fromOrificeMm);
    const inner = shape.stations.map(({ atMm }) => atMm).filter((atMm) => atMm > near && atMm < far);
    const ends = near <= far ? [near, ...inner, far] : [];
    const at = (fromTipMm: number): At => ({
      fromTipMm,
      diameterMm: diameterAt(shape, fromTipMm),
      perMm: onLine(coronal, apical, tipDepthMm - fromTipMm),
    });
    return ends.slice(1).map((end, place) => [at(ends[place] ?? end), at(end)]);
  });
}

function onLine(start: Knot, end: Knot, fromOrificeMm: number): number {
  const width = end.fromOrificeMm - start.fromOrificeMm;
  if (width === 0) return Math.max(start.perMm, end.perMm);
  return start.perMm + ((fromOrificeMm - start.fromOrificeMm) / width) * (end.perMm - start.perMm);
}

function largestOn([start, end]: readonly [At, At]): { fromTipMm: number; product: number } {
  const widening = end.diameterMm - start.diameterMm;
  const bending = end.perMm - start.perMm;
  const curve = 2 * widening * bending;
  const top = curve < 0 ? -(start.diameterMm * bending + start.perMm * widening) / curve : 0;
  const product = (share: number) => (start.diameterMm + share * widening) * (start.perMm + share * bending);
  const best = [0, 1, Math.min(1, Math.max(0, top))].reduce((a, b) => (product(b) > product(a) ? b : a));
  return { fromTipMm: start.fromTipMm + best * (end.fromTipMm - start.fromTipMm), product: product(best) };
}

/** How far apart the places of a profile lie at most, mm. */
const stepMm = 0.25;

/** The places of the seated part at which its strain is told: even steps, stations, knots. */
export function placesAlong({ shape, bending, tipDepthMm }: Omit<Seated, "convention">): number[] {
  const even = Array.from({ length: Math.floor(tipDepthMm / stepMm) + 1 }, (_, index) => index * stepMm);
  const turning = bending.knots.map(({ fromOrificeMm }) => tipDepthMm - fromOrificeMm);
  const wanted = [...even, ...turning, ...shape.stations.map(({ atMm }) => atMm), tipDepthMm];
  const inside = wanted.filter((atMm) => atMm >= 0 && atMm <= tipDepthMm).sort((a, b) => a - b);
  return inside.filter((atMm, index) => index === 0 || atMm - (inside[index - 1] ?? 0) > onePlaceMm);
}

/** The same instrument thicker everywhere by so many mm, or thinner. */
export const thickerBy = (shape: InstrumentShape, byMm: number): InstrumentShape => ({
  ...shape,
  stations: shape.stations.map(({ atMm, diameterMm }) => ({ atMm, diameterMm: Math.max(0, diameterMm + byMm) })),
});
