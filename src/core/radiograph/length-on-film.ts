import { faultAt } from "../refusal.ts";
import { type ImagePoint, type Mm, mm } from "../units.ts";
import { type MmPerPx, pointsInPlane } from "./points-in-plane.ts";

/** What a film's calibration hands to every later measure. */
export interface FilmScale {
  readonly mmPerPx: MmPerPx;
  /** Standard deviation of the scale as a share of it; absent where the scale's own error isn't known. */
  readonly relativeSigma?: number | undefined;
  /** Standard deviation of a click, px per axis. */
  readonly sigmaPx: number;
}

/** A length with its standard deviation and the two parts of it. */
export interface FilmLength {
  readonly mm: Mm;
  /** Of both parts together. */
  readonly sigmaMm: Mm;
  readonly clickSigmaMm: Mm;
  /** Absent where the scale's own error isn't known; `sigmaMm` then holds the clicks alone. */
  readonly scaleSigmaMm?: Mm;
}

/**
 * The length of a course clicked on a film, with the error of the clicks and of the scale.
 * Takes at least 2 points in order along the course, in px, and the film's scale. Gives mm in the plane of the tooth.
 * Clicks err independently of each other; the scale errs once for the whole course, so its share is added along the
 * course and not in squares.
 * @throws Refusal `trace.tooFewPoints`
 * @source plane geometry, first-order propagation of error; docs/methods/calibrate C8
 */
export function lengthOnFilm(points: readonly ImagePoint[], scale: FilmScale): FilmLength {
  if (points.length < 2)
    throw faultAt("points", `${points.length} given, a length needs 2 or more`, "trace.tooFewPoints");
  const steps = stepsBetween(points, scale.mmPerPx);
  const length = steps.reduce((sum, step) => sum + step.mm, 0);
  const clickSigma = scale.sigmaPx * Math.sqrt(pullOfClicks(steps, scale.mmPerPx));
  if (scale.relativeSigma === undefined)
    return { mm: mm(length), sigmaMm: mm(clickSigma), clickSigmaMm: mm(clickSigma) };
  const scaleSigma = length * scale.relativeSigma;
  return {
    mm: mm(length),
    sigmaMm: mm(Math.hypot(clickSigma, scaleSigma)),
    clickSigmaMm: mm(clickSigma),
    scaleSigmaMm: mm(scaleSigma),
  };
}

/** One stretch between two clicks: its length and its direction as a unit vector (none where the clicks coincide). */
interface Step {
  readonly mm: number;
  readonly x: number;
  readonly y: number;
}

const still: Step = { mm: 0, x: 0, y: 0 };

function stepsBetween(points: readonly ImagePoint[], scale: MmPerPx): Step[] {
  const places = pointsInPlane(points, scale);
  return places.slice(1).map((place, index) => {
    const before = places[index] ?? place;
    const x = place.x - before.x;
    const y = place.y - before.y;
    const length = Math.hypot(x, y);
    return length === 0 ? still : { mm: length, x: x / length, y: y / length };
  });
}

/** The squared gradient of the length by all clicks' coordinates, mm2 per px2: a click pulls by the bend at it. */
function pullOfClicks(steps: readonly Step[], scale: MmPerPx): number {
  const ends = [still, ...steps, still];
  return ends.slice(1).reduce((sum, after, index) => {
    const before = ends[index] ?? still;
    return sum + (scale.column * (before.x - after.x)) ** 2 + (scale.row * (before.y - after.y)) ** 2;
  }, 0);
}
