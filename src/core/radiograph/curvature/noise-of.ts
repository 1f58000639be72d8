import { dot, plus, type Vector, vector } from "../../geometry/vector.ts";
import type { Noise } from "./draws.ts";
import type { FamilyFit } from "./fit-family.ts";

/** How well a family describes a trace. */
export interface Agreement {
  readonly noise: Noise;
  /** Mean squared residual over the squared noise: about 1 where the family fits. */
  readonly ratio: number;
  /** Correlation of each residual with the next; near 0 where the family fits. */
  readonly following: number;
  /** Root mean square distance of the points from the course, in mm. */
  readonly rmsMm: number;
  /** Noise of one point against its neighbours, in mm: a shape that does not fit leaves it small. */
  readonly localSigmaMm: number;
  /** Whether the points lie about the course as noise would, and not on one side of it for long stretches. */
  readonly fits: boolean;
  /** Whether the points scatter more than the stated noise allows. */
  readonly scatters: boolean;
}

/** A shape that is off by less than this is near enough for every measure, in mm. */
const negligibleMisfitMm = 0.02;

/**
 * The standard deviation that intervals of a fit are drawn with: the stated one, or the estimated one, made larger where
 * points lie farther from the course than stated or on one side of it for long stretches.
 * Takes the fit and the stated standard deviation in mm, or undefined.
 * @source docs/methods/curvature.md C12
 */
export function agreementOf(fit: FamilyFit, statedSigmaMm: number | undefined): Agreement {
  const { residuals, squares } = fit.projection;
  const freedom = Math.max(1, fit.freedom);
  const estimated = squares / freedom;
  const left = leftOver(fit.projection);
  const following = followingCorrelation(left);
  const ratio = statedSigmaMm === undefined || statedSigmaMm === 0 ? 1 : estimated / statedSigmaMm ** 2;
  // Correlated residuals say less than their number: the effective number shrinks by (1-r)/(1+r).
  const chance = 2 / Math.sqrt(residuals.length);
  const kept = Math.min(0.9, following);
  const stretch = kept > chance ? (1 + kept) / (1 - kept) : 1;
  const variance = statedSigmaMm === undefined ? estimated : statedSigmaMm ** 2 * Math.max(1, ratio);
  const sigmaMm = Math.sqrt(variance * stretch);
  const points = fit.projection.places.length;
  const rmsMm = Math.sqrt(squares / points);
  const scatters = ratio > 1 + 4 * Math.sqrt(2 / freedom);
  const stated = statedSigmaMm !== undefined && statedSigmaMm > 0 && !scatters;
  return {
    noise: statedSigmaMm === undefined ? { sigmaMm, freedom } : { sigmaMm },
    ratio,
    following,
    rmsMm,
    localSigmaMm: localSigma(left, residuals.length / points),
    fits: stated || points < 12 || rmsMm < negligibleMisfitMm || following < 0.5,
    scatters,
  };
}

/** What is left between each point and its nearest place on the course, as a vector. */
function leftOver({ residuals, directions, places }: FamilyFit["projection"]): Vector[] {
  const across = residuals.length / places.length;
  return Array.from(places, (_, point) => {
    const parts = Array.from({ length: across }, (__, part) => point * across + part);
    return parts.reduce((sum, index) => plus(sum, directions[index] ?? none, residuals[index] ?? 0), none);
  });
}

const none = vector(0, 0);

/** Correlation of what is left at one point with what is left at the next. */
function followingCorrelation(left: readonly Vector[]): number {
  let square = 0;
  let product = 0;
  left.forEach((one, index) => {
    square += dot(one, one);
    product += dot(one, left[index + 1] ?? none);
  });
  return square === 0 ? 0 : product / square;
}

/** The noise of a point in each direction, from second differences: a smooth misfit leaves none of it. */
function localSigma(left: readonly Vector[], across: number): number {
  let squares = 0;
  for (let index = 1; index + 1 < left.length; index++) {
    const ends = plus(left[index - 1] ?? none, left[index + 1] ?? none);
    const bow = plus(ends, left[index] ?? none, -2);
    squares += dot(bow, bow);
  }
  return Math.sqrt(squares / (6 * across * Math.max(1, left.length - 2)));
}
