import { usualDetector } from "../exposure/detector.ts";
import { type ExposedFilm, exposeFilm } from "../exposure/expose-film.ts";
import { type DemoFilm, demoVoxelMm } from "./demo-film.ts";

/**
 * A film of the demo.
 * Takes a factor by which the film, and its voxels, are made coarser (1 gives the film as it is kept; 4 is a sixteenth of the work).
 */
export function makeDemoFilm(film: DemoFilm, coarser = 1, progress?: (part: number) => void): ExposedFilm {
  const { geometry } = film;
  return exposeFilm(film.jaw, {
    geometry: {
      ...geometry,
      columns: Math.round(geometry.columns / coarser),
      rows: Math.round(geometry.rows / coarser),
      spacingMm: geometry.spacingMm * coarser,
    },
    detector: usualDetector,
    voxelMm: { x: demoVoxelMm.x * coarser, y: demoVoxelMm.y * coarser, z: demoVoxelMm.z * coarser },
    seed: film.seed,
    ...(progress === undefined ? {} : { progress }),
  });
}
