import type { FilmTask } from "./film-slopes.ts";

/** A task of fewer sightings, and which of the whole ones they are. */
export interface ThinnedTask {
  readonly task: FilmTask;
  readonly kept: readonly number[];
}

/** The task with every so many-th sighting only, the first and the last among them, each as sure as those it stands for. */
export function thinnedTask(task: FilmTask, mostSeen: number): ThinnedTask {
  const { sightings, sigmaMm } = task;
  const step = Math.max(1, Math.ceil(sightings.reduce((sum, { seen }) => sum + seen.length, 0) / mostSeen));
  const last = sightings.length - 1;
  const kept = sightings.flatMap((_, index) => (index % step === 0 || index === last ? [index] : []));
  const few = kept.flatMap((index) => sightings[index] ?? []);
  return { kept, task: { ...task, sightings: few, sigmaMm: sigmaMm * Math.sqrt(few.length / sightings.length) } };
}
