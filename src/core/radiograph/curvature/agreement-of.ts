import { dot, plus, type Vector, vector } from "../../geometry/vector.ts";
import type { FamilyFit } from "./fit-family.ts";

/** How sure the points of a trace are: their standard deviation, and whether it was only estimated. */
export interface Noise {
  readonly sigmaMm: number;
  /** Of one point by itself, in mm. */
  readonly pointSigmaMm: number;
  /** Degrees of freedom of an estimated standard deviation; absent for a stated one. */
  readonly freedom?: number;
}

/** How well a family describes a trace. */
export interface Agreement {
  /** What intervals are drawn with. */
  readonly noise: Noise;
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
const negligibleMisfitMm = 0.045;
/** Fewer points than this cannot show long stretches on one side. */
const fewestForStretches = 12;
/** Correlation over a 24th of the course from which points lie on one side for long stretches; a path's noise is shorter. */
const longStretches = 0.5;

/**
 * How well a fit agrees with its points, and the standard deviation that its intervals are drawn with: the stated one, or
 * the estimated one, made larger where points lie farther from the course than stated or follow each other.
 * Takes the fit and the stated standard deviation in mm, or undefined.
 * @source docs/methods/curvature.md C12 and C16
 */
export function agreementOf(fit: FamilyFit, statedSigmaMm: number | undefined): Agreement {
  const { residuals, squares, places } = fit.projection;
  const left = leftOver(fit.projection);
  const following = followingCorrelation(left);
  const loss = effectiveLoss(following, residuals.length);
  const freedom = freedomLeft(fit, loss);
  const estimated = squares / freedom;
  const rmsMm = Math.sqrt(squares / places.length);
  const known = statedSigmaMm !== undefined && statedSigmaMm > 0 ? statedSigmaMm : undefined;
  const scatters = known !== undefined && estimated > known ** 2 * (1 + 4 * Math.sqrt(2 / freedom));
  const variance = Math.max(estimated, (statedSigmaMm ?? 0) ** 2);
  const sigmaMm = Math.sqrt(variance * loss);
  return {
    noise: {
      sigmaMm,
      pointSigmaMm: Math.sqrt(variance),
      ...(statedSigmaMm === undefined ? { freedom: freedom / loss } : {}),
    },
    rmsMm,
    localSigmaMm: localSigma(left, residuals.length / places.length),
    fits:
      (known !== undefined && !scatters) ||
      places.length < fewestForStretches ||
      rmsMm < negligibleMisfitMm ||
      followingCorrelation(left, Math.max(1, Math.round(left.length / 24))) < longStretches,
    scatters,
  };
}

/**
 * Residuals less what the parameters have taken up: noise that follows itself is taken up more, a parameter being worth
 * as many residuals as say one thing together; a third of the residuals is always left.
 */
function freedomLeft({ projection, parameters, freedom }: FamilyFit, loss: number): number {
  const count = projection.residuals.length;
  return Math.max(1, Math.min(freedom, Math.max(count - parameters.length * loss, count / 3)));
}

/** How many residuals of a fit say no more than one: 1 where they do not follow each other. */
export function lossOf(fit: FamilyFit): number {
  return effectiveLoss(followingCorrelation(leftOver(fit.projection)), fit.projection.residuals.length);
}

/** Residuals that follow each other say less than their number: (1+r)/(1-r) less, where r is more than chance makes it. */
function effectiveLoss(following: number, count: number): number {
  const kept = Math.min(0.9, following);
  return kept > 2 / Math.sqrt(count) ? (1 + kept) / (1 - kept) : 1;
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

/** Correlation of what is left at one point with what is left at the next, or further on. */
function followingCorrelation(left: readonly Vector[], further = 1): number {
  let square = 0;
  let product = 0;
  left.forEach((one, index) => {
    square += dot(one, one);
    product += dot(one, left[index + further] ?? none);
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
