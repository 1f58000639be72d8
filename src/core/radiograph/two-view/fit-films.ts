import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { type Course, placeAt } from "../curvature/course.ts";
import { type Family, parameterKinds } from "../curvature/family.ts";
import { isCourse } from "../curvature/fit-family.ts";
import { courseOf } from "../curvature/shape-of.ts";
import type { Trace } from "../curvature/trace.ts";
import type { Setting } from "./setting.ts";
import type { Sighting } from "./sightings.ts";
import { type Standing, standingOf } from "./standing.ts";

/** What a family is fitted to: the films' sightings, what is unknown of the films, and the start trace that anchors it. */
export interface FilmTask {
  readonly sightings: readonly Sighting[];
  readonly setting: Setting;
  readonly trace: Trace;
  /** Standard deviation of a point on a film, in mm. */
  readonly sigmaMm: number;
}

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

interface Position {
  readonly values: Float64Array;
  readonly course: Course;
  readonly standing: Standing;
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

const shapeOf = ({ setting }: FilmTask, values: Float64Array): Float64Array =>
  values.subarray(0, values.length - setting.size);
const settingValues = ({ setting }: FilmTask, values: Float64Array): Float64Array =>
  values.subarray(values.length - setting.size);

function prior({ setting }: FilmTask, values: Float64Array): number {
  let sum = 0;
  const first = values.length - setting.size;
  setting.sigmas.forEach((sigma, index) => {
    sum += ((values[first + index] ?? 0) / sigma) ** 2;
  });
  return sum;
}

interface Slopes {
  readonly information: Float64Array;
  readonly gradient: Float64Array;
}

/** J'J and J'r by forward differences; a shift of an image along the course's own image says nothing and is taken out. */
function slopesAt(family: Family, task: FilmTask, { values, course, standing }: Position): Slopes {
  const size = values.length;
  const weight = 1 / task.sigmaMm ** 2;
  const base = imagesOf(course, task, settingValues(task, values), standing.places);
  const columns = stepsOf(family, task).map((step, index) => {
    const moved = Float64Array.from(values);
    moved[index] = (moved[index] ?? 0) + step;
    const changed =
      index < size - task.setting.size ? courseOf(family, task.trace.anchor, shapeOf(task, moved)) : course;
    const images = imagesOf(changed, task, settingValues(task, moved), standing.places);
    return acrossOnly(ratesOf(images, base, step), task.sightings, standing.along);
  });
  const information = new Float64Array(size * size);
  const gradient = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    const column = columns[row] ?? base;
    gradient[row] = weight * product(column, standing.left);
    for (let other = 0; other <= row; other++) {
      const sum = weight * product(column, columns[other] ?? base);
      information[row * size + other] = sum;
      information[other * size + row] = sum;
    }
  }
  const first = size - task.setting.size;
  task.setting.sigmas.forEach((sigma, index) => {
    const at = first + index;
    information[at * size + at] = (information[at * size + at] ?? 0) + sigma ** -2;
    gradient[at] = (gradient[at] ?? 0) - (values[at] ?? 0) / sigma ** 2;
  });
  return { information, gradient };
}

/** How fast images move, written over the moved ones: fits spend their time here. */
function ratesOf(moved: Float64Array, base: Float64Array, step: number): Float64Array {
  for (let at = 0; at < moved.length; at++) moved[at] = ((moved[at] ?? 0) - (base[at] ?? 0)) / step;
  return moved;
}

function stepsOf(family: Family, { trace, setting }: FilmTask): number[] {
  const shape = parameterKinds(family, 2).map((kind) => {
    if (kind === "offset" || kind === "position") return 1e-6 * trace.lengthMm;
    return kind === "curvature" ? 1e-6 / trace.lengthMm : 1e-6;
  });
  return [...shape, ...Array<number>(setting.size).fill(1e-6)];
}

function imagesOf(
  course: Course,
  { setting, sightings }: FilmTask,
  values: Float64Array,
  places: Float64Array,
): Float64Array {
  const cameras = setting.cameras(values);
  const images = new Float64Array(2 * sightings.reduce((sum, { seen }) => sum + seen.length, 0));
  let next = 0;
  sightings.forEach(({ seen }, index) => {
    const place = placeAt(course, places[index] ?? 0);
    for (const { film } of seen) {
      const image = cameras[film]?.(place);
      images[next++] = image?.u ?? 0;
      images[next++] = image?.v ?? 0;
    }
  });
  return images;
}

function acrossOnly(column: Float64Array, sightings: readonly Sighting[], along: Float64Array): Float64Array {
  let from = 0;
  for (const { seen } of sightings) {
    const end = from + 2 * seen.length;
    let rise = 0;
    let square = 1e-12;
    for (let at = from; at < end; at++) {
      rise += (column[at] ?? 0) * (along[at] ?? 0);
      square += (along[at] ?? 0) ** 2;
    }
    for (let at = from; at < end; at++) column[at] = (column[at] ?? 0) - (rise / square) * (along[at] ?? 0);
    from = end;
  }
  return column;
}

function dampedStep({ information, gradient }: Slopes, damping: number): Float64Array | undefined {
  const size = gradient.length;
  const damped = Float64Array.from(information);
  for (let at = 0; at < size; at++) damped[at * size + at] = (damped[at * size + at] ?? 0) * (1 + damping) + 1e-12;
  const lower = cholesky(damped, size);
  return lower && solveCholesky(lower, gradient);
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index++) sum += (a[index] ?? 0) * (b[index] ?? 0);
  return sum;
}
