import { type Course, placeAt } from "../curvature/course.ts";
import { type Family, parameterKinds } from "../curvature/family.ts";
import { courseOf } from "../curvature/shape-of.ts";
import type { Trace } from "../curvature/trace.ts";
import type { Setting } from "./setting.ts";
import type { Sighting } from "./sightings.ts";
import type { Standing } from "./standing.ts";

/** What a family is fitted to: the films' sightings, what is unknown of the films, and the start trace that anchors it. */
export interface FilmTask {
  readonly sightings: readonly Sighting[];
  readonly setting: Setting;
  readonly trace: Trace;
  /** Standard deviation of a point on a film, in mm. */
  readonly sigmaMm: number;
}

/** A course of given values, and how it stands on the films. */
export interface Placed {
  /** The family's parameters, then the setting's values. */
  readonly values: Float64Array;
  readonly course: Course;
  readonly standing: Standing;
}

/** The family's parameters among the values of a fit. */
export const shapeOf = ({ setting }: FilmTask, values: Float64Array): Float64Array =>
  values.subarray(0, values.length - setting.size);
/** The setting's values among those of a fit. */
export const settingValues = ({ setting }: FilmTask, values: Float64Array): Float64Array =>
  values.subarray(values.length - setting.size);

/** What the films say about the values of a fit. */
export interface Slopes {
  /** J'J row by row, in units of the noise. */
  readonly information: Float64Array;
  /** J'r. */
  readonly gradient: Float64Array;
}

/** J'J and J'r by forward differences; a shift of an image along the course's own image says nothing and is taken out. */
export function slopesAt(family: Family, task: FilmTask, { values, course, standing }: Placed): Slopes {
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

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index++) sum += (a[index] ?? 0) * (b[index] ?? 0);
  return sum;
}
