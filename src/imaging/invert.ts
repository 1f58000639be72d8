import type { FilmPixels } from "./film-pixels.ts";

/**
 * A film with bright and dark exchanged, for one that came in the wrong way round.
 * Takes a film. Gives one with the same samples, of which MONOCHROME1 and MONOCHROME2 are said the other way round; to
 * have larger samples brighter, see brightIsHigh.
 */
export const invertFilm = (film: FilmPixels): FilmPixels => ({
  ...film,
  photometric: film.photometric === "MONOCHROME1" ? "MONOCHROME2" : "MONOCHROME1",
});
