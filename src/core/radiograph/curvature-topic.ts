import estrela from "../../../data/estrela-2008/source.json" with { type: "json" };
import gunday from "../../../data/gunday-2005/source.json" with { type: "json" };
import pruett from "../../../data/pruett-1997/source.json" with { type: "json" };
import schneider from "../../../data/schneider-1971/source.json" with { type: "json" };
import weine from "../../../data/weine-1982/source.json" with { type: "json" };
import type { Basis, Source } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { deg, mm } from "../units.ts";
import { finestSigmaMm } from "./curvature/choose-family.ts";
import { curvatureCautions } from "./curvature/curvature-cautions.ts";
import { type CurvatureInput, cleanPoints, curvatureInput } from "./curvature/curvature-input.ts";
import { curvatureOf, type MeasuredCourse } from "./curvature/curvature-of.ts";
import { curvatureOutput } from "./curvature/curvature-output.ts";
import { straightToDeg } from "./curvature/headline.ts";
import { severityOf } from "./curvature/severity.ts";

const sources: readonly Source[] = [schneider, weine, pruett, gunday, estrela].map(({ id, reference }) => ({
  id,
  reference,
  verification: "memory",
}));

/**
 * One traced course and every published measure of its curvature, each with an interval.
 * @throws Refusal `trace.tooFewPoints` under 4 different points; `input.impossible` where points mix plane and space.
 * @source Schneider 1971, Weine 1982, Pruett 1997, Gunday 2005, Estrela 2008 (memory); docs/methods/curvature.md
 */
export const curvatureTopic = defineTopic({
  name: "curvature",
  version: 2,
  summary: "Curvature of one traced canal: every published measure, each bend, and the profile.",
  input: curvatureInput,
  output: curvatureOutput,
  sources,
  compute: (input) => {
    const clean = cleanPoints(input.points);
    const course = curvatureOf({
      clean,
      sigmaMm: input.sigmaMm,
      scaleSigma: input.scaleRelativeSigma ?? 0,
      penalty: typeof input.smoothing === "number" ? input.smoothing : undefined,
      apicalLineMm: input.weineLengthMm ?? 2,
    });
    return outputOf(input, course, clean.repeated);
  },
});

function outputOf(input: CurvatureInput, course: MeasuredCourse, repeated: number) {
  const { headline, intervals, bends, profile, planarity } = course;
  const { schneiderDeg = 0, pruettDeg = 0, accessAngleDeg = 0, pruettRadiusMm } = headline;
  const severity = severityOf(
    { value: deg(schneiderDeg), interval: intervals.schneiderDeg },
    pruettRadiusMm === undefined ? undefined : { value: mm(pruettRadiusMm), interval: intervals.pruettRadiusMm },
  ).map((one) => ({ ...one, within: [...one.within] }));
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
    fit: course.family,
    fitQuality: fitQuality(course),
    basis: basisOf(input),
    cautions: curvatureCautions(course, repeated, severity),
    notComputed: notComputed(course, input),
  };
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

function fitQuality({ choice, agreement }: MeasuredCourse) {
  const [best, ...others] = choice.fits.map(({ fit, weight }) => ({ family: fit.family.name, weight }));
  if (best === undefined) throw new RangeError("some family always fits");
  const { fits, rmsMm, noise } = agreement;
  return { weight: best.weight, fits, rmsMm, sigmaMm: Math.max(noise.pointSigmaMm, finestSigmaMm), others };
}

function notComputed({ headline }: MeasuredCourse, input: CurvatureInput) {
  const straight = headline.heightDistanceMm === undefined;
  const why = "the course is straight: it has no bend, and so no point of departure and no radius";
  const slight = !straight && headline.pruettRadiusMm === undefined;
  const whySlight = `the largest bend turns by ${straightToDeg} degrees at most, which counts as straight: a radius would say more than it holds`;
  const s = input.weineLengthMm ?? 2;
  return [
    ...(straight ? ["pruettRadiusMm", "minRadiusMm", "atMm", "heightDistanceMm"].map((name) => ({ name, why })) : []),
    ...(slight ? ["pruettRadiusMm", "minRadiusMm", "atMm"].map((name) => ({ name, why: whySlight })) : []),
    ...(headline.weineDeg === undefined
      ? [{ name: "weineDeg", why: `the part of the canal that belongs to the bend is shorter than ${s} mm` }]
      : []),
  ];
}

function basisOf(input: CurvatureInput): Basis {
  return {
    formula:
      "Courses of straight parts, arcs and ramps by least squares with a penalised choice; published constructions",
    assumptions: [
      "The points are in mm, in order from orifice to foramen, and equally noisy in every direction.",
      input.sigmaMm === undefined
        ? "The noise of a point is estimated from its distance to the course."
        : `The standard deviation of a point is ${input.sigmaMm} mm, as stated, or more where the points scatter more.`,
      "The published measures are the largest bend's; its part of the canal ends where another bend begins.",
      `Weine's apical line is the chord of the last ${input.weineLengthMm ?? 2} mm.`,
      "Estrela's classes are read with the radius of Pruett's circle; the method itself uses two lines of 6 mm.",
      "The published classes and constructions are quoted from memory.",
    ],
    sources: sources.map(({ id }) => id),
  };
}
