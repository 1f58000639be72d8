import type { FilmPixels } from "./film-pixels.ts";

/**
 * The same film with larger samples brighter: those of a MONOCHROME1 film are counted from the other end.
 * Takes a film. Gives one that looks the same and is MONOCHROME2; its window is counted anew as well, and what a stored
 * 0 stood for is left out, since a sum can't say it any more.
 */
export function brightIsHigh(film: FilmPixels): FilmPixels {
  if (film.photometric === "MONOCHROME2") return film;
  const largest = 2 ** film.bitsStored - 1;
  const { window, signedOffset: _counted, ...technical } = film.technical;
  return {
    ...film,
    samples: film.samples.map((sample) => largest - sample),
    photometric: "MONOCHROME2",
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
