import type { CourseInTooth } from "./course-reading.ts";
import type { FilmTask } from "./film-slopes.ts";

/** A course that the films allow as well, and how much it counts. */
export interface DrawnCourse extends CourseInTooth {
  readonly counts: number;
  /** The setting's values under which it was drawn. */
  readonly setting: Float64Array;
}

/** The same before the counts of its family are shared out: the logarithm of what it counts beside the others. */
export type WeighedCourse = Omit<DrawnCourse, "counts"> & { readonly logarithm: number };

/** Where a course begins and ends, with the noise of the two end points along it. */
export function endsOf(
  task: FilmTask,
  { places, along }: { places: Float64Array; along: Float64Array },
  normal: () => number,
): [number, number] {
  const count = 2 * (task.sightings[0]?.seen.length ?? 1);
  const firm = (steps: Float64Array): number => Math.sqrt(steps.reduce((sum, one) => sum + one * one, 1e-9));
  return [
    (places[0] ?? 0) + (task.sigmaMm * normal()) / firm(along.subarray(0, count)),
    (places.at(-1) ?? 0) + (task.sigmaMm * normal()) / firm(along.subarray(along.length - count)),
  ];
}
