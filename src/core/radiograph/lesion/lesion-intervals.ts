import type { Interval } from "../../basis.ts";
import type { PlanePoint } from "../../units.ts";
import { intervalAround } from "../interval-around.ts";
import type { ApexAtOutline } from "./apex-at-outline.ts";
import { areaSigma } from "./outline-area.ts";
import { diameterErrors, type OutlineDiameters } from "./outline-diameters.ts";

/** What the intervals of a lesion's size rest on. */
export interface LesionErrors {
  readonly corners: readonly PlanePoint[];
  readonly areaMm2: number;
  readonly diameters: OutlineDiameters;
  readonly apex: ApexAtOutline | undefined;
  /** Of one click in each direction, mm. */
  readonly sigmaMm: number;
  /** Of the scale, as a share. */
  readonly scaleSigma: number;
}

/**
 * 95 % intervals of a lesion's size, by name; none reaches below 0.
 * Clicks err independently of each other; the scale errs once for all, an area by twice its share. The diameters' ends
 * below go lower by what the largest of many noisy distances reads too long.
 * @source first-order propagation of error; docs/methods/lesion C5, C6
 */
export function lesionIntervals(errors: LesionErrors): Record<string, Interval> {
  const { corners, areaMm2, diameters, apex, sigmaMm, scaleSigma } = errors;
  const ofArea = Math.hypot(areaSigma(corners, sigmaMm), 2 * areaMm2 * scaleSigma);
  const equivalent = 2 * Math.sqrt(areaMm2 / Math.PI);
  const clicks = diameterErrors(corners, sigmaMm);
  const around = (value: number, sigma: number, excess = 0): Interval => {
    const { low, high, level } = intervalAround(value, sigma);
    return { low: Math.max(0, low - excess), high, level };
  };
  const diameter = (name: keyof OutlineDiameters): Interval =>
    around(diameters[name], Math.hypot(clicks.sigma[name], diameters[name] * scaleSigma), clicks.excess[name]);
  return {
    areaMm2: around(areaMm2, ofArea),
    largestDiameterMm: diameter("largest"),
    acrossDiameterMm: diameter("across"),
    // d sqrt(A) = dA / (2 sqrt(A)), so the diameter errs by half the area's share.
    equivalentDiameterMm: around(equivalent, (equivalent * ofArea) / (2 * areaMm2)),
    ...(apex === undefined ? {} : apexIntervals(apex, errors, around)),
  };
}

function apexIntervals(
  { toEdge, inside, sigmaShare }: ApexAtOutline,
  { sigmaMm, scaleSigma }: LesionErrors,
  around: (value: number, sigma: number) => Interval,
): Record<string, Interval> {
  const edge = around(toEdge, Math.hypot(sigmaShare * sigmaMm, toEdge * scaleSigma));
  // An apex within the outline is 0 mm from the lesion; one that lies at its edge may well be just outside.
  const beyond = Math.max(0, edge.high - 2 * toEdge);
  return { apexToEdgeMm: edge, apexDistanceMm: inside ? { low: 0, high: beyond, level: edge.level } : edge };
}
