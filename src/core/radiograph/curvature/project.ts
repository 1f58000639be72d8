import { cross, dot, minus, type Vector } from "../../geometry/vector.ts";
import { type Course, stateAt } from "./course.ts";

/** Every point of a trace seen from the nearest place on a course. */
export interface Projection {
  /** Distance of the nearest place from the course's start, for each point. */
  readonly places: Float64Array;
  /** What is left between the point and its nearest place: one number a point in a plane, two in space. */
  readonly residuals: Float64Array;
  /** The directions in which those are counted, in the same order. */
  readonly directions: readonly Vector[];
  /** The sum of their squares, in mm2. */
  readonly squares: number;
}

/**
 * The nearest place on a course to each point, by Newton's rule from the places given.
 * Takes points in a plane (`across` 1) or in space (2).
 * @source plane geometry, docs/methods/curvature.md C4
 */
export function project(course: Course, points: readonly Vector[], across: 1 | 2, near: ArrayLike<number>): Projection {
  const places = new Float64Array(points.length);
  const residuals = new Float64Array(points.length * across);
  const directions: Vector[] = [];
  let squares = 0;
  for (let index = 0; index < points.length; index++) {
    const { place, left, tangent, normal } = nearest(course, points[index] ?? origin, near[index] ?? 0);
    places[index] = place;
    directions.push(normal);
    if (across === 2) directions.push(cross(tangent, normal));
    for (let at = index * across; at < directions.length; at++) {
      const residual = dot(left, directions[at] ?? origin);
      residuals[at] = residual;
      squares += residual * residual;
    }
  }
  return { places, residuals, directions, squares };
}

const origin: Vector = { x: 0, y: 0, z: 0 };

/** A step along the course below which its effect on what is left across it is of second order and too small to matter. */
const smallStepMm = 1e-5;

/** The nearest place on a course to one point, started from a guess. */
export function nearest(
  course: Course,
  point: Vector,
  guess: number,
): { place: number; left: Vector; tangent: Vector; normal: Vector } {
  let place = guess;
  for (let round = 1; ; round++) {
    const { place: foot, tangent, normal, curvature } = stateAt(course, place);
    const left = minus(point, foot);
    // Beyond the centre of a bend the rule would run away; half a step is taken there at most.
    const step = dot(left, tangent) / Math.max(0.5, 1 - curvature * dot(left, normal));
    place += step;
    if (Math.abs(step) < smallStepMm || round === 4) return { place, left, tangent, normal };
  }
}
