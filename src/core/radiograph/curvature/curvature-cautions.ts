import type { MeasuredCourse } from "./curvature-of.ts";
import { disagreement, type SeverityByOneSource } from "./severity.ts";

/** Canals are shorter than this; a longer course is likely counted in something else than mm. */
const longestCanalMm = 45;

/** How a distance of a fit is said: in mm, or in px of a film without a scale. */
export type SaidDistance = (mm: number) => string;

/**
 * What a reader must know beside the numbers of a course.
 * Takes the measured course, the number of points left out because they repeat their neighbour, the severity, and how
 * distances are said.
 */
export function curvatureCautions(
  course: MeasuredCourse,
  repeated: number,
  severity: readonly SeverityByOneSource[],
  said: SaidDistance,
): string[] {
  return [
    ...(repeated === 0 ? [] : [`${repeated} point(s) in the same place as the point before were left out.`]),
    ...fitCautions(course, said),
    ...orderCautions(course),
    ...bendCautions(course),
    ...(course.measures.length > longestCanalMm
      ? [`The course is ${course.measures.length.toFixed(1)} mm long, longer than canals are: are the points in mm?`]
      : []),
    ...disagreement(severity),
  ];
}

function fitCautions({ agreement, choice }: MeasuredCourse, said: SaidDistance): string[] {
  const rms = said(agreement.rmsMm);
  if (!agreement.fits)
    return [
      `No family of courses fits: the nearest is ${rms} off and on one side for long stretches. Length, turn and largest curvature are the smoothing spline's; the bends and the published measures are the nearest family's.`,
    ];
  const scatter = agreement.scatters
    ? [`The points scatter by ${rms}, more than stated; the intervals are widened.`]
    : [];
  return [...scatter, ...familyCautions(choice)];
}

/** Weight from which another family is worth a word. */
const worthAWord = 0.1;

function familyCautions({ fits }: MeasuredCourse["choice"]): string[] {
  const [best, ...others] = fits;
  if (best === undefined || best.fit.family.bends === 0) return [];
  const { family } = best.fit;
  const likely = others.filter(({ weight }) => weight >= worthAWord).map(({ fit }) => fit.family);
  if (likely.some((other) => other.bends === family.bends && other.straightEnd !== family.straightEnd))
    return ["The points do not decide whether the canal is straight at its end; the intervals hold both."];
  const [second] = likely;
  return best.weight >= 0.5 || second === undefined
    ? []
    : [`The points allow other courses nearly as well (${second.name}); the intervals hold them.`];
}

/** A point that lies nearer to the orifice than the point before by far more than its noise. */
function orderCautions({ choice, agreement }: MeasuredCourse): string[] {
  const places = choice.fits[0]?.fit.projection.places ?? [];
  const noise = Math.max(0.05, 6 * agreement.noise.pointSigmaMm);
  const back = places.findIndex((place, index) => index > 0 && place < (places[index - 1] ?? place) - noise);
  if (back < 0) return [];
  return [`The points run backwards at point ${back + 1}: are they in order from orifice to foramen?`];
}

function bendCautions({ measures, choice, headline }: MeasuredCourse): string[] {
  const places = choice.fits[0]?.fit.projection.places ?? [];
  const [first] = measures.bends;
  const orifice = places[0] ?? 0;
  const sharp = measures.bends.some(
    ({ from, to }) => places.filter((place) => place - orifice > from - 0.01 && place - orifice < to + 0.01).length < 3,
  );
  const bent = first !== undefined && first.before === 0;
  return [
    ...(sharp ? ["A bend holds fewer than 3 points: its radius may be smaller than given."] : []),
    ...(bent ? ["The canal is bent from the orifice on: the coronal axis is its tangent at the orifice."] : []),
    ...(measures.bends.length > 1
      ? ["There is more than one bend: the published measures are the largest bend's; each bend has its own in bends."]
      : []),
    ...((headline.pruettDeg ?? 0) > 180 ? ["The largest bend turns by more than 180 degrees: check the points."] : []),
  ];
}
