import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import type { Course } from "../curvature/course.ts";
import type { Family } from "../curvature/family.ts";
import { isCourse } from "../curvature/fit-family.ts";
import { courseOf } from "../curvature/shape-of.ts";
import { type FilmTask, type Placed, type Slopes, settingValues, shapeOf, slopesAt } from "./film-slopes.ts";
import { type Standing, standingOf } from "./standing.ts";

/** A family of courses in space laid through the films by least squares. */
export interface FilmFit {
  readonly family: Family;
  /** The family's parameters, then the setting's values. */
  readonly values: Float64Array;
  readonly course: Course;
  readonly standing: Standing;
  /** Squares in units of the noise, with those of the setting's values. */
  readonly chiSquare: number;
  /** J'J row by row, in units of the noise. */
  readonly information: Float64Array;
}

interface Position extends Placed {
  readonly chiSquare: number;
}

/**
 * The course of a family, and the setting of the films, with the least sum of squares on the films, by the method of
 * Levenberg and Marquardt from one start; undefined where the start is no course of that family.
 * @source D. W. Marquardt, J Soc Ind Appl Math 1963;11:431-441 (memory); docs/methods/two-view.md C7
 */
export function fitFilms(family: Family, task: FilmTask, start: Float64Array, rounds: number): FilmFit | undefined {
  const { lengthMm } = task.trace;
  const begin = positionAt(
    family,
    task,
    start,
    task.sightings.map(({ share }) => share * lengthMm),
  );
  if (begin === undefined) return undefined;
  let position = begin;
  let damping = 1e-3;
  let slope = slopesAt(family, task, position);
  for (let round = 0; round < rounds; round++) {
    const step = dampedStep(slope, damping);
    const values = step && position.values.map((value, index) => value + (step[index] ?? 0));
    const next = values && positionAt(family, task, values, position.standing.places);
    if (next === undefined || next.chiSquare > position.chiSquare) {
      if (damping > 1e8) break;
      damping *= 6;
      continue;
    }
    const gain = position.chiSquare - next.chiSquare;
    position = next;
    slope = slopesAt(family, task, position);
    damping = Math.max(damping / 6, 1e-12);
    if (gain <= 1e-5 * (1 + 1e-3 * position.chiSquare)) break;
  }
  return { family, ...position, information: slope.information };
}

/** Whether two courses of one family are compared on the same footing: how a course of given values stands. */
export function positionAt(
  family: Family,
  task: FilmTask,
  values: Float64Array,
  near: ArrayLike<number>,
): Position | undefined {
  if (!isCourse(family, task.trace, shapeOf(task, values))) return undefined;
  const course = courseOf(family, task.trace.anchor, shapeOf(task, values));
  const standing = standingOf(course, task.setting.cameras(settingValues(task, values)), task.sightings, near);
  return { values, course, standing, chiSquare: standing.squares / task.sigmaMm ** 2 + prior(task, values) };
}

function prior({ setting }: FilmTask, values: Float64Array): number {
  let sum = 0;
  const first = values.length - setting.size;
  setting.sigmas.forEach((sigma, index) => {
    sum += ((values[first + index] ?? 0) / sigma) ** 2;
  });
  return sum;
}

function dampedStep({ information, gradient }: Slopes, damping: number): Float64Array | undefined {
  const size = gradient.length;
  const damped = Float64Array.from(information);
  for (let at = 0; at < size; at++) damped[at * size + at] = (damped[at * size + at] ?? 0) * (1 + damping) + 1e-12;
  const lower = cholesky(damped, size);
  return lower && solveCholesky(lower, gradient);
}
