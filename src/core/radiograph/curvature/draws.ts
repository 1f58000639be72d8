import { chiSquareQuantile } from "../../statistics/chi-square-quantile.ts";
import { type SeededRandom, seededRandom } from "../../statistics/seeded-random.ts";
import { cholesky, solveTransposed } from "../../statistics/solve-linear.ts";
import type { Mm } from "../../units.ts";
import type { Noise } from "./agreement-of.ts";
import { type Choice, finestSigmaMm } from "./choose-family.ts";
import { courseMeasures } from "./course-measures.ts";
import { type FamilyFit, isCourse } from "./fit-family.ts";
import { type Headline, headlineOf } from "./headline.ts";
import { nearest } from "./project.ts";
import { bendsOf, courseOf } from "./shape-of.ts";
import type { Trace } from "./trace.ts";

const drawn = 1000;

/**
 * Headline numbers of courses that the points allow as well: draws from each family still in question, as many as its
 * weight, with the covariance of its fit, and with the noise of the two end points along the canal.
 * Always the same for the same trace.
 * @source docs/methods/curvature.md C12
 */
export function drawHeadlines(choice: Choice, noiseOf: (fit: FamilyFit) => Noise, apicalLine: Mm): Headline[] {
  const random = seededRandom(20_080_131);
  return choice.fits.flatMap(({ fit, weight }) => {
    const wanted = Math.round(weight * drawn);
    return drawFrom(fit, choice.trace, noiseOf(fit), apicalLine, { random, wanted });
  });
}

function drawFrom(
  fit: FamilyFit,
  trace: Trace,
  noise: Noise,
  apicalLine: Mm,
  { random, wanted }: { random: SeededRandom; wanted: number },
): Headline[] {
  const { across } = trace.anchor;
  const lower = factorOf(fit);
  const spread = spreadOf(fit, across);
  const ends = endsOf(fit, trace);
  const found: Headline[] = [];
  for (let tries = 0; tries < 5 * wanted && found.length < wanted; tries++) {
    const sigma = drawSigma(noise, random);
    const step = solveTransposed(lower, fit.parameters.map(random.normal));
    const parameters = fit.parameters.map((value, index) => value + spread * sigma * (step[index] ?? 0));
    if (!isCourse(fit.family, trace, parameters)) continue;
    const course = courseOf(fit.family, trace.anchor, parameters);
    const [orifice, foramen] = ends.map(
      ({ point, place }) => nearest(course, point, place).place + sigma * random.normal(),
    );
    if (orifice === undefined || foramen === undefined || foramen <= orifice) continue;
    const bends = bendsOf(fit.family, across, parameters);
    found.push(headlineOf(courseMeasures({ course, bends, orifice, foramen }, apicalLine)));
  }
  return found;
}

/**
 * How much wider than the fit's covariance of first order its draws are spread: in a plane that covariance covers as it
 * says; with two bends, whose edges are unsure, and in space it is too narrow, by what docs/studies/curvature.md measures.
 */
function spreadOf(fit: FamilyFit, across: 1 | 2): number {
  if (fit.family.bends === 2) return 1.35;
  return across === 2 ? 1.15 : 1;
}

function drawSigma(noise: Noise, random: SeededRandom): number {
  const sigma = Math.max(noise.sigmaMm, finestSigmaMm);
  if (noise.freedom === undefined) return sigma;
  return sigma * Math.sqrt(noise.freedom / chiSquareQuantile(noise.freedom, random.normal()));
}

/** The factor of J'J, made positive definite where a parameter says nothing (the direction of a bend of no angle). */
function factorOf(fit: FamilyFit): Float64Array {
  const size = fit.parameters.length;
  for (let ridge = 1e-12; ridge < 1; ridge *= 100) {
    const firm = fit.information.map((value, at) => (at % (size + 1) === 0 ? value * (1 + ridge) + ridge : value));
    const lower = cholesky(firm, size);
    if (lower !== undefined) return lower;
  }
  throw new RangeError("a fit's information is never negative");
}

function endsOf(fit: FamilyFit, trace: Trace): { point: Trace["points"][number]; place: number }[] {
  const last = trace.points.length - 1;
  return [0, last].flatMap((index) => {
    const point = trace.points[index];
    const place = fit.projection.places[index];
    return point === undefined || place === undefined ? [] : [{ point, place }];
  });
}
