import { plus, type Vector } from "../../geometry/vector.ts";
import { type Course, stateAt } from "../curvature/course.ts";
import type { Camera } from "./camera.ts";
import type { Sighting } from "./sightings.ts";

/** A course seen on all films: where each sighting lies on it and what is left on the films. */
export interface Standing {
  /** Distance from the course's start, for each sighting. */
  readonly places: Float64Array;
  /** What is left: u and v of each film of each sighting, in mm. */
  readonly left: Float64Array;
  /** How the images move for a step along the course, in the same order. */
  readonly along: Float64Array;
  /** Sum of squares of what is left, in mm2. */
  readonly squares: number;
}

const nudge = 1e-4;
const smallStepMm = 1e-5;

/** The places on a course whose images are nearest to what the films show, by Newton's rule from the places given. */
export function standingOf(
  course: Course,
  cameras: readonly Camera[],
  sightings: readonly Sighting[],
  near: ArrayLike<number>,
): Standing {
  const size = 2 * sightings.reduce((sum, { seen }) => sum + seen.length, 0);
  const places = new Float64Array(sightings.length);
  const left = new Float64Array(size);
  const along = new Float64Array(size);
  let squares = 0;
  let from = 0;
  sightings.forEach((sighting, index) => {
    let place = near[index] ?? 0;
    for (let round = 1; ; round++) {
      const step = look(course, cameras, sighting, { place, from, left, along });
      place += step;
      if (Math.abs(step) < smallStepMm || round === 4) break;
    }
    places[index] = place;
    const end = from + 2 * sighting.seen.length;
    for (; from < end; from++) squares += (left[from] ?? 0) ** 2;
  });
  return { places, left, along, squares };
}

interface Look {
  readonly place: number;
  readonly from: number;
  readonly left: Float64Array;
  readonly along: Float64Array;
}

/** Writes down what is left at one place, and gives the step along the course that leaves least. */
function look(
  course: Course,
  cameras: readonly Camera[],
  { seen }: Sighting,
  { place, from, left, along }: Look,
): number {
  const { place: foot, tangent } = stateAt(course, place);
  const ahead: Vector = plus(foot, tangent, nudge);
  let rise = 0;
  let square = 1e-9;
  seen.forEach(({ film, at }, index) => {
    const camera = cameras[film];
    if (camera === undefined) throw new RangeError("every film has a camera");
    const here = camera(foot);
    const there = camera(ahead);
    const u = at.u - here.u;
    const v = at.v - here.v;
    const du = (there.u - here.u) / nudge;
    const dv = (there.v - here.v) / nudge;
    const index2 = from + 2 * index;
    left[index2] = u;
    left[index2 + 1] = v;
    along[index2] = du;
    along[index2 + 1] = dv;
    rise += u * du + v * dv;
    square += du * du + dv * dv;
  });
  return Math.max(-1, Math.min(1, rise / square));
}
