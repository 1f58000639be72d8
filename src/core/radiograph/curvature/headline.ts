import { deg, degreesOf, rad } from "../../units.ts";
import { type CourseMeasures, largestBend } from "./course-measures.ts";
import type { PublishedMeasures } from "./published-measures.ts";

/** The headline numbers of a course in the units of the output; what a straight course does not have is absent. */
export type Headline = Partial<Record<HeadlineName, number>>;

/** The names of the headline numbers, each of which gets an interval. */
export const headlineNames = [
  "lengthMm",
  "chordMm",
  "schneiderDeg",
  "weineDeg",
  "pruettDeg",
  "pruettRadiusMm",
  "accessAngleDeg",
  "heightMm",
  "heightDistanceMm",
  "heightMaxMm",
  "maxCurvaturePerMm",
  "minRadiusMm",
  "atMm",
  "totalTurnDeg",
] as const;

/** One of the headline numbers. */
export type HeadlineName = (typeof headlineNames)[number];

/** The headline numbers of a measured course: its largest bend's, and the whole course's length, chord and turn. */
export function headlineOf(course: CourseMeasures): Headline {
  const whole = { lengthMm: course.length, chordMm: course.chord, totalTurnDeg: degrees(course.totalTurn) };
  const bend = largestBend(course.bends);
  if (bend === undefined) return { ...whole, ...straightHeadline };
  return { ...whole, ...publishedHeadline(bend.measures), ...tightest(course) };
}

/**
 * The turn up to which a bend is reported without a radius: the limit of Schneider's class "straight".
 * @source Schneider SW, Oral Surg Oral Med Oral Pathol 1971;32:271-275 (memory); docs/methods/curvature.md C18
 */
export const straightToDeg = deg(5);

/** The headline of a course without the radius that a bend of 5 degrees and less is not worth (C18); angles and lengths stay. */
export function withoutNeedlessRadius(headline: Headline): Headline {
  if ((headline.pruettDeg ?? 0) > straightToDeg) return headline;
  const { pruettRadiusMm: _radius, minRadiusMm: _tightest, atMm: _place, ...rest } = headline;
  return rest;
}

/** The published measures of one bend in the units of the output. */
export function publishedHeadline(measures: PublishedMeasures) {
  return {
    schneiderDeg: degreesOf(measures.schneider),
    ...(measures.weine === undefined ? {} : { weineDeg: degreesOf(measures.weine) }),
    pruettDeg: degreesOf(measures.pruett),
    ...(measures.pruettRadius === undefined ? {} : { pruettRadiusMm: measures.pruettRadius }),
    accessAngleDeg: degreesOf(measures.accessAngle),
    heightMm: measures.height,
    heightDistanceMm: measures.heightDistance,
    heightMaxMm: measures.heightMax,
  };
}

/** Of all bends over 5 degrees (of all, where none is), the largest curvature, its radius, and the middle of that bend. */
function tightest(course: CourseMeasures): Headline {
  const bent = course.bends.filter(({ turn }) => degrees(turn) > straightToDeg);
  const [bend] = [...(bent.length > 0 ? bent : course.bends)].sort((a, b) => b.largestCurvature - a.largestCurvature);
  if (bend === undefined || bend.largestCurvature === 0) return { maxCurvaturePerMm: 0 };
  return {
    maxCurvaturePerMm: bend.largestCurvature,
    minRadiusMm: 1 / bend.largestCurvature,
    atMm: (bend.from + bend.to) / 2,
  };
}

/** A straight course turns by nothing; it has no departure point and no radius, so those stay absent. */
const straightHeadline: Headline = {
  schneiderDeg: 0,
  weineDeg: 0,
  pruettDeg: 0,
  accessAngleDeg: 0,
  heightMm: 0,
  heightMaxMm: 0,
  maxCurvaturePerMm: 0,
};

const degrees = (angle: number): number => degreesOf(rad(angle));
