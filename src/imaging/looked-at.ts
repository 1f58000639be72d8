import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";

/** How a film is looked at beside its window: for the eye alone, never in its pixels. */
export interface FilmLook {
  /** Brightness of what lies between black and white, 0.25 to 4; above 1 brighter, 1 as the window has it. */
  readonly gamma: number;
  /** How much of the contrast of each region is evened out, 0 to 1. */
  readonly localContrast: number;
  /** How much of what is finer than the radius is added once more, 0 to 4, and that radius in pixels. */
  readonly sharpening: { readonly amount: number; readonly radiusPx: number };
}

/** What {@link lookedAt} draws on; each is made once for a film and kept while amounts change. */
export interface LookPlanes {
  /** The film with its contrast evened out locally; needed where any of it is asked for. */
  readonly even?: Float32Array | undefined;
  /** The film smoothed at the radius of the sharpening; needed where sharpening is asked for. */
  readonly smooth?: Float32Array | undefined;
}

/**
 * The samples of a film as they are looked at: local contrast as a share of the way to the evened film, sharpening as an
 * unsharp mask (the film less itself smoothed, added as often as its amount says). Gamma is not here: it belongs to the
 * table from samples to grey.
 * Takes the film, the look and the planes it needs. Gives samples as large as the film's, rounded, never outside what its
 * bits hold; the film's own for a look that changes nothing.
 * @throws Refusal `input.impossible` for an amount outside its range or a plane that is missing.
 * @source R. C. Gonzalez, R. E. Woods, Digital Image Processing, 4th edition, Pearson 2018, chapter 3, unsharp masking (memory)
 */
export function lookedAt(film: FilmPixels, look: FilmLook, planes: LookPlanes): Uint16Array {
  const { localContrast: share, sharpening } = look;
  if (!(share >= 0 && share <= 1 && sharpening.amount >= 0 && sharpening.amount <= 4)) throw notALook(look);
  if (share === 0 && sharpening.amount === 0) return film.samples;
  const even = share === 0 ? film.samples : planes.even;
  const smooth = sharpening.amount === 0 ? film.samples : planes.smooth;
  if (even === undefined || smooth === undefined) throw notALook(look);
  return added(film, { even, smooth, share, amount: sharpening.amount });
}

type Plane = Float32Array | Uint16Array;

function added(
  { samples, bitsStored }: FilmPixels,
  { even, smooth, share, amount }: { even: Plane; smooth: Plane; share: number; amount: number },
): Uint16Array {
  const most = 2 ** bitsStored - 1;
  const seen = new Uint16Array(samples.length);
  for (let at = 0; at < samples.length; at++) {
    const own = samples[at] ?? 0;
    const value = own + share * ((even[at] ?? 0) - own) + amount * (own - (smooth[at] ?? 0));
    seen[at] = value <= 0 ? 0 : value >= most ? most : value + 0.5;
  }
  return seen;
}

function notALook({ localContrast: share, sharpening }: FilmLook): Refusal {
  const says = `Cannot show the film so: local contrast ${share} and sharpening ${sharpening.amount} with what is made for them`;
  return new Refusal("input.impossible", says, { localContrast: share, sharpening: sharpening.amount });
}
