import { plus } from "../../geometry/vector.ts";
import { faultAt } from "../../refusal.ts";
import { degreesOf, mm, rad } from "../../units.ts";
import { type Agreement, agreementOf } from "./agreement-of.ts";
import { bendsReport } from "./bends-report.ts";
import { type Choice, chooseFamily, finestSigmaMm } from "./choose-family.ts";
import { type Construction, constructionOf } from "./construction.ts";
import type { Tightest } from "./construction-output.ts";
import { type Course, stateAt } from "./course.ts";
import { type CourseMeasures, courseMeasures } from "./course-measures.ts";
import type { CleanPoints } from "./curvature-input.ts";
import { drawHeadlines } from "./draws.ts";
import { type Headline, headlineOf, withoutNeedlessRadius } from "./headline.ts";
import { intervalsOf } from "./intervals.ts";
import { type Planarity, planarityOf } from "./planarity.ts";
import { type Profile, profileAlongItself, profileOf } from "./profile.ts";
import { bendsOf } from "./shape-of.ts";
import { retraced, type Trace, thinned, traceOf } from "./trace.ts";

/** How a course is to be measured. */
export interface CurvatureRequest {
  readonly clean: CleanPoints;
  readonly sigmaMm: number | undefined;
  readonly scaleSigma: number;
  readonly penalty: number | undefined;
  readonly apicalLineMm: number;
}

/** Everything that was found out about a course. */
export interface MeasuredCourse {
  /** The name of the family chosen. */
  readonly family: string;
  readonly choice: Choice;
  readonly agreement: Agreement;
  readonly measures: CourseMeasures;
  readonly headline: Headline;
  readonly intervals: ReturnType<typeof intervalsOf>;
  readonly profile: Profile;
  readonly planarity: Planarity | undefined;
  readonly bends: ReturnType<typeof bendsReport>;
  /** How the published measures are built; absent for a straight course. */
  readonly construction: Construction | undefined;
  /** Absent where no family fits, or the course is straight. */
  readonly tightest: Tightest | undefined;
}

/**
 * A traced course measured twice: by the family of courses that fits it best, and by a smoothing spline.
 * @throws Refusal `input.impossible` where the points run to and fro instead of along one course.
 * @source docs/methods/curvature.md
 */
export function curvatureOf(request: CurvatureRequest): MeasuredCourse {
  const { clean, sigmaMm } = request;
  const choice = chooseFamily(traceOf(clean.points, clean.across), sigmaMm);
  const [best] = choice.fits;
  if (best === undefined) throw new RangeError("some family always fits");
  const { fit } = best;
  const apicalLine = mm(request.apicalLineMm);
  const agreement = agreementOf(fit, sigmaMm);
  const { orifice, foramen } = endsOf(fit.projection.places, choice.trace);
  const bends = bendsOf(fit.family, clean.across, fit.parameters);
  const measures = courseMeasures({ course: fit.course, bends, orifice, foramen }, apicalLine);
  const profile = profileOfFit(request, choice, agreement);
  const seen = splineHeadline(profile);
  const headline = withoutNeedlessRadius(agreement.fits ? headlineOf(measures) : { ...headlineOf(measures), ...seen });
  const draws = drawHeadlines(choice, (one) => agreementOf(one, sigmaMm).noise, apicalLine);
  return {
    family: fit.family.name,
    choice,
    agreement,
    measures,
    headline,
    intervals: intervalsOf(
      headline,
      draws,
      request.scaleSigma,
      agreement.fits ? {} : { ...headlineOf(measures), ...seen },
    ),
    profile,
    planarity: clean.across === 2 ? planarityOf(profile.samples.map(({ place }) => place)) : undefined,
    bends: bendsReport(measures.bends, clean.across),
    construction: constructionOf({ course: fit.course, orifice, measures }, apicalLine),
    tightest:
      agreement.fits && headline.atMm !== undefined ? tightestAt(fit.course, orifice + headline.atMm) : undefined,
  };
}

/** The place at a distance along a course and the circle that bends as the course does there. */
function tightestAt(course: Course, s: number): Tightest | undefined {
  const { place, normal, curvature } = stateAt(course, s);
  return curvature === 0
    ? undefined
    : { at: place, centre: plus(place, normal, 1 / curvature), radius: 1 / Math.abs(curvature) };
}

/** Points on which the length of a line through them is compared with the length of the course. */
const coarsePoints = 12;

/**
 * The ends of a course, where the nearest places of its first and last point lie.
 * @throws Refusal `input.impossible` where the points do not run along the course: the line through a few means of them is
 * more than twice as long, or it ends before it begins.
 */
function endsOf(places: Float64Array, trace: Trace): { orifice: number; foramen: number } {
  const orifice = places[0] ?? 0;
  const foramen = places.at(-1) ?? orifice;
  const means = thinned(trace, coarsePoints).trace.points;
  if (foramen - orifice > 0.5 * traceOf(means, trace.anchor.across).lengthMm) return { orifice, foramen };
  throw faultAt("points", "run to and fro instead of along one course; put them in order from orifice to foramen");
}

/** The smoothing spline over distances along the fitted course; where that does not fit, over distances along the spline. */
function profileOfFit(request: CurvatureRequest, choice: Choice, agreement: Agreement): Profile {
  const places = choice.fits[0]?.fit.projection.places ?? choice.trace.along;
  // With few points the second differences say little; the estimate from the fit is steadier.
  const estimated = agreement.fits ? agreement.noise.sigmaMm : agreement.localSigmaMm;
  const sigmaMm = Math.max(request.sigmaMm ?? estimated, finestSigmaMm);
  const by = request.penalty === undefined ? { sigmaMm } : { penalty: request.penalty };
  const along = retraced(choice.trace, places);
  return agreement.fits ? profileOf(along, by) : profileAlongItself(along, by);
}

/** What the smoothing spline says of the course as a whole. */
function splineHeadline(profile: Profile): Headline {
  const { lengthMm, maxCurvaturePerMm, atMm, totalTurn } = profile;
  const turn = { lengthMm, maxCurvaturePerMm, totalTurnDeg: degreesOf(rad(totalTurn)) };
  return maxCurvaturePerMm === 0 ? turn : { ...turn, minRadiusMm: 1 / maxCurvaturePerMm, atMm };
}
