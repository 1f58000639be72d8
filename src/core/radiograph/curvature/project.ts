import { cross, dot, minus, norm, plus, unit, type Vector } from "../../geometry/vector.ts";
import { type Course, stateAt } from "./course.ts";

/** Every point of a trace seen from the nearest place on a course. */
export interface Projection {
  /** Distance of the nearest place from the course's start, for each point. */
  readonly places: readonly number[];
  /** What is left between the point and its nearest place: one number a point in a plane, two in space. */
  readonly residuals: readonly number[];
  /** The directions in which those are counted, in the same order. */
  readonly directions: readonly Vector[];
  /** The sum of their squares, in mm2. */
  readonly squares: number;
}

/**
 * The nearest place on a course to each point, by Newton's rule from the places given.
 * @source plane geometry, docs/methods/curvature.md C4
 */
export function project(course: Course, points: readonly Vector[], across: 1 | 2, near: readonly number[]): Projection {
  const places: number[] = [];
  const residuals: number[] = [];
  const directions: Vector[] = [];
  let squares = 0;
  points.forEach((point, index) => {
    const found = nearest(course, point, near[index] ?? 0);
    const { normal, tangent, left } = found;
    places.push(found.place);
    directions.push(normal);
    residuals.push(dot(left, normal));
    if (across === 2) {
      const second = cross(tangent, normal);
      directions.push(second);
      residuals.push(dot(left, second));
    }
  });
  for (const residual of residuals) squares += residual * residual;
  return { places, residuals, directions, squares };
}

/** The nearest place on a course to one point, started from a guess. */
export function nearest(
  course: Course,
  point: Vector,
  guess: number,
): { place: number; left: Vector; tangent: Vector; normal: Vector } {
  let place = guess;
  for (let round = 0; round < 2; round++) {
    const state = stateAt(course, place);
    const left = minus(point, state.place);
    // Beyond the centre of a bend the rule would run away; half a step is taken there at most.
    const narrowing = Math.max(0.5, 1 - state.curvature * dot(left, state.normal));
    place += dot(left, state.tangent) / narrowing;
  }
  const { place: foot, tangent, normal } = stateAt(course, place);
  return { place, left: minus(point, foot), tangent, normal };
}

/** The part of a difference that lies across a direction; its length. */
export const acrossOf = (left: Vector, tangent: Vector): number =>
  norm(plus(left, unit(tangent), -dot(left, unit(tangent))));
