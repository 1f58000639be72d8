import type { FilmPixels } from "../../imaging/film-pixels.ts";
import type { ExposedFilm } from "./expose-film.ts";

/** The factor by which the film shows things in the plane of the tooth's axis larger than they are. */
export const magnificationOf = (film: ExposedFilm): number => {
  const { sourceToToothMm, toothToDetectorMm } = film.projection.geometry;
  return (sourceToToothMm + toothToDetectorMm) / sourceToToothMm;
};

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
      magnification: magnificationOf(film),
      wasColour: false,
      lossy: false,
    },
  };
}
