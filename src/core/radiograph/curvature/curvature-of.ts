import { plus } from "../../geometry/vector.ts";
import { degreesOf, mm, rad } from "../../units.ts";
import { type Agreement, agreementOf } from "./agreement-of.ts";
import { bendsReport } from "./bends-report.ts";
import type { Choice } from "./choose-family.ts";
import { type Construction, constructionOf } from "./construction.ts";
import type { Tightest } from "./construction-output.ts";
import { type Course, stateAt } from "./course.ts";
import { type CourseMeasures, courseMeasures } from "./course-measures.ts";
import { drawHeadlines } from "./draws.ts";
import { type FitRequest, fittedCourse } from "./fitted-course.ts";
import { type Headline, headlineOf, withoutNeedlessRadius } from "./headline.ts";
import { intervalsOf } from "./intervals.ts";
import { type Planarity, planarityOf } from "./planarity.ts";
import type { Profile } from "./profile.ts";
import { bendsOf } from "./shape-of.ts";

/** How a course is to be measured. */
export interface CurvatureRequest extends FitRequest {
  readonly scaleSigma: number;
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
  const { choice, fit, agreement, orifice, foramen, profile } = fittedCourse(request);
  const apicalLine = mm(request.apicalLineMm);
  const bends = bendsOf(fit.family, clean.across, fit.parameters);
  const measures = courseMeasures({ course: fit.course, bends, orifice, foramen }, apicalLine);
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

/** What the smoothing spline says of the course as a whole. */
function splineHeadline(profile: Profile): Headline {
  const { lengthMm, maxCurvaturePerMm, atMm, totalTurn } = profile;
  const turn = { lengthMm, maxCurvaturePerMm, totalTurnDeg: degreesOf(rad(totalTurn)) };
  return maxCurvaturePerMm === 0 ? turn : { ...turn, minRadiusMm: 1 / maxCurvaturePerMm, atMm };
}
