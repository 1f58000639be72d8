import { faultAt } from "../../refusal.ts";
import { type Agreement, agreementOf } from "./agreement-of.ts";
import { type Choice, chooseFamily, finestSigmaMm } from "./choose-family.ts";
import type { CleanPoints } from "./curvature-input.ts";
import type { FamilyFit } from "./fit-family.ts";
import { type Profile, profileAlongItself, profileOf } from "./profile.ts";
import { retraced, type Trace, thinned, traceOf } from "./trace.ts";

/** How a course is to be fitted. */
export interface FitRequest {
  readonly clean: CleanPoints;
  readonly sigmaMm: number | undefined;
  readonly penalty: number | undefined;
}

/** A traced course as the family that fits it best and as a smoothing spline. */
export interface FittedCourse {
  readonly choice: Choice;
  /** The best family's fit. */
  readonly fit: FamilyFit;
  readonly agreement: Agreement;
  /** Where the course begins and ends, in distances along the fit. */
  readonly orifice: number;
  readonly foramen: number;
  readonly profile: Profile;
}

/**
 * A traced course fitted by every family and drawn by the spline.
 * @throws Refusal `input.impossible` where the points run to and fro instead of along one course.
 * @source docs/methods/curvature.md C3 to C5, C13
 */
export function fittedCourse(request: FitRequest): FittedCourse {
  const { clean, sigmaMm } = request;
  const choice = chooseFamily(traceOf(clean.points, clean.across), sigmaMm);
  const [best] = choice.fits;
  if (best === undefined) throw new RangeError("some family always fits");
  const { fit } = best;
  const agreement = agreementOf(fit, sigmaMm);
  const ends = endsOf(fit.projection.places, choice.trace);
  return { choice, fit, agreement, ...ends, profile: profileOfFit(request, choice, agreement) };
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
function profileOfFit(request: FitRequest, choice: Choice, agreement: Agreement): Profile {
  const places = choice.fits[0]?.fit.projection.places ?? choice.trace.along;
  // With few points the second differences say little; the estimate from the fit is steadier.
  const estimated = agreement.fits ? agreement.noise.sigmaMm : agreement.localSigmaMm;
  const sigmaMm = Math.max(request.sigmaMm ?? estimated, finestSigmaMm);
  const by = request.penalty === undefined ? { sigmaMm } : { penalty: request.penalty };
  const along = retraced(choice.trace, places);
  return agreement.fits ? profileOf(along, by) : profileAlongItself(along, by);
}
