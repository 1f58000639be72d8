import { cross, plus } from "../../geometry/vector.ts";
import { chiSquareQuantile } from "../../statistics/chi-square-quantile.ts";
import { type SeededRandom, seededRandom } from "../../statistics/seeded-random.ts";
import type { Mm } from "../../units.ts";
import type { Noise } from "./agreement-of.ts";
import { type Choice, finestSigmaMm } from "./choose-family.ts";
import { stateAt } from "./course.ts";
import { type CourseSpan, courseMeasures } from "./course-measures.ts";
import { type FamilyFit, fitFamily } from "./fit-family.ts";
import { type Headline, headlineOf } from "./headline.ts";
import { nearest } from "./project.ts";
import { bendsOf } from "./shape-of.ts";
import type { Trace } from "./trace.ts";

/** Courses drawn for the intervals of one trace. */
const drawn = 200;
/** Places at which a drawn course is seen: more would cost time and say the same. */
const seenPlaces = 40;
/** A drawn course is as good as fitted where a round gains less than a hundredth of the squares. */
const effort = { rounds: 6, settled: 0.01 };

/** With two bends the family was chosen by the same noise: what docs/studies/curvature.md measures without it is too narrow. */
const twoBendsSpread = 1.2;

/** Headline numbers of courses that the points allow as well; always the same for the same trace. */
export const drawHeadlines = (choice: Choice, noiseOf: (fit: FamilyFit) => Noise, apicalLine: Mm): Headline[] =>
  drawCourses(choice, noiseOf).map((again) => headlineOf(courseMeasures(again, apicalLine)));

/**
 * Courses that the points allow as well: for each family still in question, as many as its weight,
 * the fitted course is seen again with new noise and fitted again, so that a draw is always a course that lies where the
 * points lie; and each end is seen again with its own noise along the canal. Always the same for the same trace.
 * @source B. Efron, R. J. Tibshirani, "An Introduction to the Bootstrap", Chapman & Hall 1993 (memory);
 * docs/methods/curvature.md C12
 */
export function drawCourses(choice: Choice, noiseOf: (fit: FamilyFit) => Noise): CourseSpan[] {
  const random = seededRandom(20_080_131);
  return sharesOf(choice.fits).flatMap(({ fit, weight }) => {
    const seeing = seeingOf(fit, choice.trace, noiseOf(fit));
    return Array.from({ length: Math.round(weight * drawn) }, () => seeing.again(random)).flatMap((again) =>
      again === undefined ? [] : [again],
    );
  });
}

/**
 * The weights of families as draws share them out: those with the same number of bends as if each parameter had cost 2
 * and not ln n, because a straight end too short to be chosen may still be there; each number of bends keeps its weight.
 * @source H. Akaike, "A new look at the statistical model identification", IEEE Trans Automat Contr 1974;19:716-723 (memory)
 */
function sharesOf(fits: Choice["fits"]): { fit: FamilyFit; weight: number }[] {
  return [0, 1, 2].flatMap((bends) => {
    const alike = fits.filter(({ fit }) => fit.family.bends === bends);
    const total = sumOf(alike.map(({ weight }) => weight));
    const most = Math.max(...alike.map(({ fit }) => fit.parameters.length));
    const lifted = alike.map(({ fit, weight }) => {
      const saved = Math.log(fit.projection.residuals.length) - 2;
      return { fit, weight: weight * Math.exp(((fit.parameters.length - most) * Math.max(0, saved)) / 2) };
    });
    const sum = sumOf(lifted.map(({ weight }) => weight));
    return lifted.map(({ fit, weight }) => ({ fit, weight: (total * weight) / sum }));
  });
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

function seeingOf(fit: FamilyFit, trace: Trace, noise: Noise) {
  const { across } = trace.anchor;
  const places = evenly(fit.projection.places, seenPlaces);
  const clean = places.map((at) => {
    const { place, tangent, normal } = stateAt(fit.course, at);
    return { foot: place, directions: across === 1 ? [normal] : [normal, cross(tangent, normal)] };
  });
  // Fewer places, each as sure as the points that it stands for.
  const surer = Math.sqrt(places.length / trace.points.length);
  const seen: Omit<Trace, "points"> = {
    along: places,
    lengthMm: trace.lengthMm,
    anchor: trace.anchor,
  };
  const ends = endsOf(fit, trace);
  const spread = fit.family.bends === 2 ? twoBendsSpread : 1;
  return {
    again: (random: SeededRandom) => {
      const share = drawShare(noise, random);
      const sigma = spread * Math.max(noise.sigmaMm, finestSigmaMm) * share;
      const points = clean.map(({ foot, directions }) =>
        directions.reduce((place, direction) => plus(place, direction, surer * sigma * random.normal()), foot),
      );
      const again = fitFamily(fit.family, { ...seen, points }, fit.parameters, effort);
      if (again === undefined) return undefined;
      const [orifice, foramen] = ends.map(
        ({ point, place }) => nearest(again.course, point, place).place + noise.pointSigmaMm * share * random.normal(),
      );
      if (orifice === undefined || foramen === undefined || foramen <= orifice) return undefined;
      return { course: again.course, bends: bendsOf(fit.family, across, again.parameters), orifice, foramen };
    },
  };
}

/** An estimated noise is itself unsure. */
function drawShare(noise: Noise, random: SeededRandom): number {
  if (noise.freedom === undefined) return 1;
  return Math.sqrt(noise.freedom / chiSquareQuantile(noise.freedom, random.normal()));
}

/** At most `most` of the places, from the first to the last. */
function evenly(places: Float64Array, most: number): number[] {
  const count = Math.min(most, places.length);
  return Array.from({ length: count }, (_, index) => {
    const at = Math.round((index / (count - 1)) * (places.length - 1));
    return places[at] ?? 0;
  });
}

function endsOf(fit: FamilyFit, trace: Trace): { point: Trace["points"][number]; place: number }[] {
  const last = trace.points.length - 1;
  return [0, last].flatMap((index) => {
    const point = trace.points[index];
    const place = fit.projection.places[index];
    return point === undefined || place === undefined ? [] : [{ point, place }];
  });
}
