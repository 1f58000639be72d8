import type { z } from "zod";
import type { Interval } from "../../basis.ts";
import { deg, mm } from "../../units.ts";
import { bendsReport } from "../curvature/bends-report.ts";
import type { curvatureOutput } from "../curvature/curvature-output.ts";
import { type HeadlineName, headlineNames } from "../curvature/headline.ts";
import { planarityOf } from "../curvature/planarity.ts";
import { type Profile, profileOf } from "../curvature/profile.ts";
import { nearest } from "../curvature/project.ts";
import { disagreement, severityOf } from "../curvature/severity.ts";
import { type Trace, traceOf } from "../curvature/trace.ts";
import { drawnInterval } from "./drawn-intervals.ts";
import { apicalLine, type SolvedFilms } from "./solve-films.ts";
import { withoutSignOfZero } from "./without-sign-of-zero.ts";

/** Every measure of curvature in the form of the topic curvature. */
export type CurvatureInSpace = z.infer<typeof curvatureOutput>;

/**
 * What the course in space measures, in the form that the topic `curvature` gives for a course in space: the fitted course's
 * measures, with intervals from what the films allow, and the smoothing spline's profile of the places found one by one.
 * @source docs/methods/two-view.md C9, C11; docs/methods/curvature.md
 */
export function curvatureInSpace(solved: SolvedFilms, sources: readonly string[]): CurvatureInSpace {
  const { headline, measures } = solved.reading;
  const intervals = headlineIntervals(solved);
  const profile = profileOfPlaces(solved);
  const { schneiderDeg = 0, pruettDeg = 0, accessAngleDeg = 0, pruettRadiusMm } = headline;
  const severity = severityOf(
    { value: deg(schneiderDeg), interval: intervals.schneiderDeg },
    pruettRadiusMm === undefined ? undefined : { value: mm(pruettRadiusMm), interval: intervals.pruettRadiusMm },
  ).map((one) => ({ ...one, within: [...one.within] }));
  const { rmsMm, largestMm, normal } = planarityOf(profile.samples.map(({ place }) => place));
  return {
    ...headline,
    ...{ schneiderDeg, pruettDeg, accessAngleDeg, lengthMm: measures.length, chordMm: measures.chord },
    totalTurnDeg: headline.totalTurnDeg ?? 0,
    maxCurvaturePerMm: headline.maxCurvaturePerMm ?? 0,
    planarity: {
      planar: rmsMm <= Math.max(0.02, depthSigma(solved)),
      rmsMm,
      largestMm,
      normal: [withoutSignOfZero(normal.x), withoutSignOfZero(normal.y), withoutSignOfZero(normal.z)],
    },
    profile: profile.samples.map(({ sMm, curvaturePerMm }) => ({ sMm, curvaturePerMm })),
    smoothing: { penalty: profile.penalty, chosenBy: "estimated noise" },
    bends: bendsReport(measures.bends, 2),
    ...{ intervals, severity },
    ...fitOf(solved),
    basis: {
      formula: "Courses of straight parts, arcs and ramps fitted to the points of all films through their projections",
      assumptions: [
        `Weine's apical line is the chord of the last ${apicalLine} mm.`,
        "The profile is a smoothing spline of the places found one by one.",
      ],
      sources: [...sources],
    },
    cautions: [...disagreement(severity)],
    notComputed: notComputed(headline),
  };
}

/** The mean standard deviation of x, y and z of the places found one by one. */
const depthSigma = ({ places, sigmaMm }: SolvedFilms): number => {
  const squares = places.map(({ spread }) => (spread.x ** 2 + spread.y ** 2 + spread.z ** 2) / 3);
  return sigmaMm * Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
};

function headlineIntervals({
  draws,
  reading,
}: SolvedFilms): Partial<Record<HeadlineName, Interval>> & Record<string, Interval> {
  const entries = headlineNames.flatMap((name): [string, Interval][] => {
    const value = reading.headline[name];
    if (value === undefined) return [];
    const drawn = draws.flatMap(({ reading: { headline }, counts }) =>
      headline[name] === undefined ? [] : [{ value: headline[name], counts }],
    );
    return [[name, drawnInterval(drawn, value)]];
  });
  return Object.fromEntries(entries);
}

/** The smoothing spline of the places found one by one, over their distances along the fitted course. */
function profileOfPlaces(solved: SolvedFilms): Profile {
  const { places, course } = solved;
  const points = places.map(({ place }) => place);
  const span = course.foramen - course.orifice;
  let reached = 0;
  const along = points.map((point, index) => {
    const guess = course.orifice + (index / (points.length - 1)) * span;
    const place = nearest(course.course, point, guess).place - course.orifice;
    reached = Math.min(span, Math.max(reached, place));
    return index === points.length - 1 ? span : reached;
  });
  const trace: Trace = { ...traceOf(points, 2), along, lengthMm: span };
  return profileOf(trace, { sigmaMm: Math.max(depthSigma(solved), 0.0005) });
}

function fitOf({ choice, agreement, sigmaMm }: SolvedFilms): Pick<CurvatureInSpace, "fit" | "fitQuality"> {
  const [best, ...others] = choice.fits.map(({ fit, weight }) => ({ family: fit.family.name, weight }));
  if (best === undefined) throw new RangeError("some family always fits");
  const { fits, rmsMm } = agreement;
  return { fit: best.family, fitQuality: { fits, rmsMm, sigmaMm, weight: best.weight, others } };
}

function notComputed(headline: SolvedFilms["reading"]["headline"]): { name: string; why: string }[] {
  const straight = headline.heightDistanceMm === undefined;
  const why = "the course is straight: it has no bend, and so no point of departure and no radius";
  return [
    ...(straight ? ["pruettRadiusMm", "minRadiusMm", "atMm", "heightDistanceMm"].map((name) => ({ name, why })) : []),
    ...(headline.weineDeg === undefined
      ? [{ name: "weineDeg", why: `the part of the canal that belongs to the bend is shorter than ${apicalLine} mm` }]
      : []),
  ];
}
