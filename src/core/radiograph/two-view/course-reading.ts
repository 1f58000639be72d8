import { cross, dot, plus, unit, type Vector, vector } from "../../geometry/vector.ts";
import { type Deg, deg, degreesOf, type Mm, rad } from "../../units.ts";
import { type Course, stateAt } from "../curvature/course.ts";
import { type CourseMeasures, courseMeasures } from "../curvature/course-measures.ts";
import type { Family } from "../curvature/family.ts";
import { type Headline, headlineOf } from "../curvature/headline.ts";
import { bendsOf } from "../curvature/shape-of.ts";
import type { Camera } from "./camera.ts";

/** A course in the tooth's axes between orifice and foramen. */
export interface CourseInTooth {
  readonly family: Family;
  readonly parameters: Float64Array;
  readonly course: Course;
  readonly orifice: number;
  readonly foramen: number;
  readonly cameras: readonly Camera[];
}

/** How one bend stands in the tooth. */
export interface BendInTooth {
  readonly angleDeg: Deg;
  /** How far it turns out of the film's plane, as a film from mesial would show it: above 0 to buccal. */
  readonly outOfFilmDeg: Deg;
  /** Angle between the plane in which it turns and the plane of the straight film, 0 to 90. */
  readonly planeDeg: Deg;
  /** The direction in which it turns, seen along the canal before it: 0 along the film, 90 to buccal, -90 to lingual. */
  readonly towardsDeg: Deg;
  /** The angle that each film shows. */
  readonly apparentDeg: readonly Deg[];
}

/** What a course measures, and how its bends stand in the tooth. */
export interface CourseReading {
  readonly measures: CourseMeasures;
  readonly headline: Headline;
  readonly bends: readonly BendInTooth[];
  /** The bend of the largest angle; of a straight course, a bend of no angle. */
  readonly largest: BendInTooth;
}

const buccal = vector(0, 1, 0);

/**
 * What a course measures in space, and what of each bend the films show.
 * @source plane geometry, docs/methods/two-view.md C9 and C10
 */
export function readCourse(one: CourseInTooth, apicalLine: Mm): CourseReading {
  const { family, parameters, course, orifice, foramen, cameras } = one;
  const shapes = bendsOf(family, 2, parameters);
  const measures = courseMeasures({ course, bends: shapes, orifice, foramen }, apicalLine);
  const bends = measures.bends.map(({ from, to }) => bendBetween(course, orifice + from, orifice + to, cameras));
  const none: BendInTooth = {
    angleDeg: deg(0),
    outOfFilmDeg: deg(0),
    planeDeg: deg(0),
    towardsDeg: deg(0),
    apparentDeg: cameras.map(() => deg(0)),
  };
  const largest = bends.reduce((best, bend) => (bend.angleDeg > best.angleDeg ? bend : best), none);
  return { measures, headline: headlineOf(measures), bends, largest };
}

function bendBetween(course: Course, from: number, to: number, cameras: readonly Camera[]): BendInTooth {
  const before = stateAt(course, from);
  const after = stateAt(course, to);
  const y = unit(plus(buccal, before.tangent, -dot(buccal, before.tangent)));
  const x = cross(y, before.tangent);
  const outward = dot(after.tangent, y);
  const along = dot(after.tangent, x);
  return {
    angleDeg: degreesOf(rad(Math.acos(Math.min(1, Math.max(-1, dot(before.tangent, after.tangent)))))),
    outOfFilmDeg: degreesOf(rad(Math.atan2(outward, dot(after.tangent, before.tangent)))),
    planeDeg: degreesOf(rad(Math.atan2(Math.abs(outward), Math.abs(along)))),
    towardsDeg: degreesOf(rad(Math.atan2(outward, along))),
    apparentDeg: cameras.map((camera) => angleOnFilm(camera, before, after)),
  };
}

interface Heading {
  readonly place: Vector;
  readonly tangent: Vector;
}

function angleOnFilm(camera: Camera, before: Heading, after: Heading): Deg {
  const [a, b] = [before, after].map(({ place, tangent }) => {
    const here = camera(place);
    const there = camera(plus(place, tangent, 1e-4));
    return vector(there.u - here.u, there.v - here.v);
  });
  if (a === undefined || b === undefined) return deg(0);
  return degreesOf(rad(Math.abs(Math.atan2(cross(a, b).z, dot(a, b)))));
}
