import { Refusal } from "../../refusal.ts";
import { deg, mm } from "../../units.ts";
import { finestSigmaMm } from "./choose-family.ts";
import { constructionOutput, type WrittenPlaces } from "./construction-output.ts";
import { curvatureBasis, usualApicalLineMm } from "./curvature-basis.ts";
import { curvatureCautions } from "./curvature-cautions.ts";
import { type CurvatureInput, cleanPoints } from "./curvature-input.ts";
import { curvatureOf, type MeasuredCourse } from "./curvature-of.ts";
import type { CurvatureOutput } from "./curvature-output.ts";
import { straightToDeg } from "./headline.ts";
import { severityOf } from "./severity.ts";

/**
 * Every published measure of a course in mm, each with an interval.
 * @throws Refusal `trace.tooFewPoints`; `input.impossible` where points mix plane and space or come with values of pixels.
 * @source docs/methods/curvature.md
 */
export function measuresInMm(input: CurvatureInput): CurvatureOutput {
  const faults = ["sigmaPx", "pixelAspect"].filter((name) => Reflect.get(input, name) !== undefined);
  if (faults.length > 0)
    throw new Refusal(
      "input.impossible",
      "Cannot measure the course: its points are in mm, other values are of pixels",
      {},
      faults.map((path) => ({ path, says: "belongs to points in px; say unit px, or leave it out" })),
    );
  const clean = cleanPoints(input.points);
  const course = curvatureOf({
    clean,
    sigmaMm: input.sigmaMm,
    scaleSigma: input.scaleRelativeSigma ?? 0,
    penalty: typeof input.smoothing === "number" ? input.smoothing : undefined,
    apicalLineMm: input.weineLengthMm ?? usualApicalLineMm,
  });
  return outputOf(input, course, clean.repeated);
}

function outputOf(input: CurvatureInput, course: MeasuredCourse, repeated: number) {
  const { headline, intervals, bends, profile, planarity } = course;
  const { schneiderDeg = 0, pruettDeg = 0, accessAngleDeg = 0, pruettRadiusMm } = headline;
  const severity = severityOf(
    { value: deg(schneiderDeg), interval: intervals.schneiderDeg },
    pruettRadiusMm === undefined ? undefined : { value: mm(pruettRadiusMm), interval: intervals.pruettRadiusMm },
  ).map((one) => ({ ...one, within: [...one.within] }));
  const across = course.choice.trace.anchor.across;
  return {
    ...headline,
    lengthMm: headline.lengthMm ?? course.measures.length,
    chordMm: course.measures.chord,
    totalTurnDeg: headline.totalTurnDeg ?? 0,
    maxCurvaturePerMm: headline.maxCurvaturePerMm ?? 0,
    schneiderDeg,
    pruettDeg,
    accessAngleDeg,
    ...(planarity === undefined ? {} : { planarity: planarityOutput(planarity, course) }),
    profile: profile.samples.map(({ sMm, curvaturePerMm }) => ({ sMm, curvaturePerMm })),
    smoothing: { penalty: profile.penalty, chosenBy: chosenBy(input) },
    bends,
    intervals,
    severity,
    ...constructionIn(course, {
      place: ({ x, y, z }) => (across === 2 ? [x, y, z] : [x, y]),
      length: (length) => length,
    }),
    fit: course.family,
    fitQuality: fitQuality(course),
    basis: curvatureBasis(input),
    cautions: curvatureCautions(course, repeated, severity, (distance) => `${distance.toFixed(3)} mm`),
    notComputed: notComputed(course, input),
  };
}

/** How the measures were built, in the axes and unit of the input. */
export function constructionIn({ construction, tightest, headline }: MeasuredCourse, written: WrittenPlaces) {
  if (construction === undefined) return {};
  const withRadius = headline.pruettRadiusMm !== undefined;
  return { construction: constructionOutput(construction, tightest, withRadius, written) };
}

function chosenBy({ smoothing, sigmaMm }: CurvatureInput): "input" | "stated noise" | "estimated noise" {
  if (typeof smoothing === "number") return "input";
  return sigmaMm === undefined ? "estimated noise" : "stated noise";
}

/** A course is called planar where it leaves its plane by no more than its points' noise allows, and at least 0.02 mm. */
function planarityOutput(
  { rmsMm, largestMm, normal }: NonNullable<MeasuredCourse["planarity"]>,
  course: MeasuredCourse,
) {
  const { fits, noise, localSigmaMm } = course.agreement;
  const planar = rmsMm <= Math.max(0.02, fits ? noise.pointSigmaMm : localSigmaMm);
  const direction: [number, number, number] = [normal.x, normal.y, normal.z];
  return { planar, rmsMm, largestMm, normal: direction };
}

function fitQuality(course: MeasuredCourse) {
  const { rmsMm, noise } = course.agreement;
  return { ...fitsOf(course), rmsMm, sigmaMm: Math.max(noise.pointSigmaMm, finestSigmaMm) };
}

/** Whether the chosen family fits, and what the others are worth beside it. */
export function fitsOf({ choice, agreement }: MeasuredCourse) {
  const [best, ...others] = choice.fits.map(({ fit, weight }) => ({ family: fit.family.name, weight }));
  if (best === undefined) throw new RangeError("some family always fits");
  return { weight: best.weight, fits: agreement.fits, others };
}

function notComputed({ headline }: MeasuredCourse, input: CurvatureInput) {
  const straight = headline.heightDistanceMm === undefined;
  const why = "the course is straight: it has no bend, and so no point of departure and no radius";
  const slight = !straight && headline.pruettRadiusMm === undefined;
  const whySlight = `the largest bend turns by ${straightToDeg} degrees at most, which counts as straight: a radius would say more than it holds`;
  const s = input.weineLengthMm ?? usualApicalLineMm;
  return [
    ...(straight
      ? ["pruettRadiusMm", "minRadiusMm", "atMm", "heightDistanceMm", "construction"].map((name) => ({ name, why }))
      : []),
    ...(slight ? ["pruettRadiusMm", "minRadiusMm", "atMm"].map((name) => ({ name, why: whySlight })) : []),
    ...(headline.weineDeg === undefined
      ? [{ name: "weineDeg", why: `the part of the canal that belongs to the bend is shorter than ${s} mm` }]
      : []),
  ];
}
