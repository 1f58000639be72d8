import { demoVoxelMm } from "../cases/demo-film.ts";
import { type ExposedFilm, exposeFilm } from "../exposure/expose-film.ts";
import type { CalibrationFilm } from "./calibration-film.ts";

/**
 * A film of the exercise.
 * Takes a factor by which the film, and its voxels, are made coarser (1 gives the film as it is kept).
 */
export function makeCalibrationFilm({ jaw, geometry, detector, seed }: CalibrationFilm, coarser = 1): ExposedFilm {
  return exposeFilm(jaw, {
    geometry: {
      ...geometry,
      columns: Math.round(geometry.columns / coarser),
      rows: Math.round(geometry.rows / coarser),
      spacingMm: geometry.spacingMm * coarser,
    },
    detector,
    voxelMm: { x: demoVoxelMm.x * coarser, y: demoVoxelMm.y * coarser, z: demoVoxelMm.z * coarser },
    seed,
  });
}
