import { Refusal } from "../core/refusal.ts";
import type { FilmPixels, FilmWindow } from "./film-pixels.ts";

/** Shares of the samples below which all is black, and up to which grey reaches. */
export interface WindowShares {
  readonly dark: number;
  readonly bright: number;
}

/** One pixel in two hundred at either end: lettering and unexposed borders do not decide on the grey of the tooth. */
const usualShares: WindowShares = { dark: 0.005, bright: 0.995 };

/**
 * A window for a film that brings none: grey spans what lies between two shares of its samples.
 * Takes the film and the shares (0 <= dark < bright <= 1). Gives a linear window, at least 1 wide.
 * @throws Refusal `input.impossible` for shares out of order.
 */
export function autoWindow(film: FilmPixels, shares: WindowShares = usualShares): FilmWindow {
  if (!(shares.dark >= 0 && shares.bright <= 1 && shares.dark < shares.bright))
    throw new Refusal(
      "input.impossible",
      `Cannot choose a window: shares ${shares.dark} and ${shares.bright} are not in order within 0 and 1`,
    );
  const counts = new Uint32Array(2 ** film.bitsStored);
  for (const sample of film.samples) counts[sample] = (counts[sample] ?? 0) + 1;
  const lowest = sampleAtShare(counts, shares.dark * film.samples.length);
  const highest = sampleAtShare(counts, shares.bright * film.samples.length);
  // With these the linear formula gives 0 just at the lowest and 255 just at the highest sample.
  return { center: (lowest + highest + 1) / 2, width: highest - lowest + 1, function: "linear" };
}

/** The smallest sample that together with all below makes up the wanted count, and at least one pixel. */
function sampleAtShare(counts: Uint32Array, wanted: number): number {
  const needed = Math.max(1, wanted);
  let sum = 0;
  for (let sample = 0; sample < counts.length; sample++) {
    sum += counts[sample] ?? 0;
    if (sum >= needed) return sample;
  }
  return counts.length - 1;
}

/** The window to show a film with: its own, or one chosen from its samples. */
export const windowOf = (film: FilmPixels): FilmWindow => film.technical.window ?? autoWindow(film);
