import type { FilmPixels } from "./film-pixels.ts";

/**
 * The same film with its samples counted from the other end: what was the largest becomes 0.
 * Takes a film. Gives one that looks the same, MONOCHROME1 become MONOCHROME2 or the other way round; a window is
 * counted anew as well.
 */
export function invertFilm(film: FilmPixels): FilmPixels {
  const largest = 2 ** film.bitsStored - 1;
  const { window, signedOffset: _offset, ...technical } = film.technical;
  return {
    ...film,
    samples: film.samples.map((sample) => largest - sample),
    photometric: film.photometric === "MONOCHROME1" ? "MONOCHROME2" : "MONOCHROME1",
    technical: window === undefined ? technical : { ...technical, window: invertedWindow(window, largest) },
  };
}

/** The linear formula counts from half a step below its centre; counted from the other end that is half a step above. */
function invertedWindow(
  window: NonNullable<FilmPixels["technical"]["window"]>,
  largest: number,
): NonNullable<FilmPixels["technical"]["window"]> {
  const center = largest - window.center;
  return { ...window, center: window.function === "linear" ? center + 1 : center };
}
