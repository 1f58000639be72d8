import { Refusal } from "../core/refusal.ts";
import { windowOf } from "./auto-window.ts";
import type { FilmPixels, FilmWindow } from "./film-pixels.ts";
import { greyPng, type Packing } from "./grey-png.ts";
import { windowToGrey } from "./window-to-grey.ts";

/** A small picture of a film as it looks on the screen: 8-bit grey, larger is brighter. */
export interface FilmPreview {
  readonly columns: number;
  readonly rows: number;
  /** `rows * columns` grey levels, row by row. */
  readonly grey: Uint8Array;
}

/** How large a preview may be, and the window to use instead of the film's own. */
export interface PreviewOptions {
  /** The longer side in pixels, at least 1; a film that is smaller stays as it is. */
  readonly maxSide?: number;
  readonly window?: FilmWindow;
}

const usualSide = 512;

/**
 * A preview of a film: samples averaged over boxes, then windowed.
 * Takes the film and the options. Gives a picture whose longer side is at most `maxSide`, its proportions kept to the
 * nearest pixel.
 * @throws Refusal `input.impossible` for a side that is not a whole number of at least 1, or an impossible window.
 */
export function previewOf(film: FilmPixels, options: PreviewOptions = {}): FilmPreview {
  const maxSide = options.maxSide ?? usualSide;
  if (!Number.isInteger(maxSide) || maxSide < 1)
    throw new Refusal("input.impossible", `Cannot make a preview: its longer side can't be ${maxSide} pixels`);
  const shrink = Math.min(1, maxSide / Math.max(film.columns, film.rows));
  const columns = Math.max(1, Math.round(film.columns * shrink));
  const rows = Math.max(1, Math.round(film.rows * shrink));
  const table = windowToGrey(options.window ?? windowOf(film), film.photometric);
  const grey = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const [top, bottom] = [Math.floor((row * film.rows) / rows), Math.floor(((row + 1) * film.rows) / rows)];
    for (let column = 0; column < columns; column++) {
      const left = Math.floor((column * film.columns) / columns);
      const right = Math.floor(((column + 1) * film.columns) / columns);
      grey[row * columns + column] = table[boxMean(film, { left, right, top, bottom })] ?? 0;
    }
  }
  return { columns, rows, grey };
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boxMean({ columns, samples }: FilmPixels, { left, right, top, bottom }: Box): number {
  let sum = 0;
  for (let row = top; row < bottom; row++)
    for (let column = left; column < right; column++) sum += samples[row * columns + column] ?? 0;
  return Math.round(sum / ((right - left) * (bottom - top)));
}

/** A preview as an 8-bit grey PNG without any metadata. */
export const encodePreview = ({ columns, rows, grey }: FilmPreview, packing: Packing = "small"): Uint8Array =>
  greyPng({ columns, rows, depth: 8, bytes: grey }, [], packing);
