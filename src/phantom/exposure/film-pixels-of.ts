import type { FilmPixels } from "../../imaging/film-pixels.ts";
import type { ExposedFilm } from "./expose-film.ts";
import { magnificationOf } from "./projection.ts";

/** A film of the phantom as every room reads films: 12 bits, brighter where less came through, spacing at the receptor. */
export function filmPixelsOf(film: ExposedFilm): FilmPixels {
  const { spacingMm } = film.projection.geometry;
  return {
    columns: film.columns,
    rows: film.rows,
    bitsStored: 12,
    samples: film.samples,
    photometric: "MONOCHROME2",
    technical: {
      sourceFormat: "png",
      detectorSpacingMm: [spacingMm, spacingMm],
      magnification: magnificationOf(film.projection.geometry),
      wasColour: false,
      lossy: false,
    },
  };
}
