import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { gaussianHalf, type Plane, smoothedAcross } from "./gaussian-rows.ts";

/** What lines to look for, and how. */
export interface RidgeOptions {
  /** Whether the line looks darker than what is beside it, as a canal does, or brighter, as an instrument does. */
  readonly line: "dark" | "bright";
  /** Widths to look at, as the Gaussian's standard deviation in pixels, each 0.5 to 64: half the width of the line. */
  readonly scalesPx?: readonly number[];
  /** The rows to answer for; all unless given. Rows given one by one are the same as all at once. */
  readonly rows?: { readonly from: number; readonly to: number };
  /** Told after each scale which share of the work is done, 0..1. */
  readonly onProgress?: (done: number) => void;
}

/** Canals on films of 20 to 40 pixels a millimetre are 4 to 25 pixels wide. */
const usualScalesPx: readonly number[] = [2, 4, 8];
/** A film whose strongest line bends less than this share of the full range holds no line but noise. */
const faintest = 0.001;

/**
 * How much each pixel lies on a line, from the strongest line of the film downwards.
 * Takes the film and the options. Gives one number 0..1 a pixel of the rows asked for, row by row; 0 everywhere on a
 * level or evenly sloping film. For a film in parts, put the parts of {@link ridgeStrength} together and give them to
 * {@link ridgeOfStrength}.
 * @throws Refusal `input.impossible` as {@link ridgeStrength}.
 */
export const ridge = (film: FilmPixels, options: RidgeOptions): Float32Array =>
  ridgeOfStrength(ridgeStrength(film, options));

/** Strengths of a whole film as shares of its strongest, 0..1. */
export function ridgeOfStrength(strength: Float32Array): Float32Array {
  const strongest = strength.reduce((most, value) => Math.max(most, value), faintest);
  return strength.map((value) => value / strongest);
}

/**
 * How sharply the grey bends across a line through each pixel, at the scale where it bends most: the larger eigenvalue
 * of the Hessian of the smoothed film times sigma squared, as a share of the film's full range.
 * Takes the film and the options. Gives one number a pixel of the rows asked for, 0 to below 1; a bar of width w and of
 * the full range has 0.484 on its middle at sigma w/2, and less at every other scale.
 * @throws Refusal `input.impossible` for no scale, a scale outside 0.5..64, or rows outside the film.
 * @source Y. Sato and others, Three-dimensional multi-scale line filter, Medical Image Analysis 1998;2:143-168, in two
 * dimensions (memory); T. Lindeberg, Scale-space for discrete signals, IEEE Transactions on Pattern Analysis and
 * Machine Intelligence 1990;12:234-254: derivatives as differences of the smoothed signal (memory)
 */
export function ridgeStrength(film: FilmPixels, options: RidgeOptions): Float32Array {
  const { scalesPx = usualScalesPx, rows = { from: 0, to: film.rows }, onProgress } = options;
  checkOptions(film, scalesPx, rows);
  const looksDark = (options.line === "dark") === (film.photometric === "MONOCHROME2");
  const strength = new Float32Array((rows.to - rows.from) * film.columns);
  for (const [index, sigmaPx] of scalesPx.entries()) {
    const half = gaussianHalf(sigmaPx);
    const part = planeOf(film, rows, half.length + 1);
    const smooth = smoothedAcross(smoothedAcross(part.plane, half), half);
    const weight = (sigmaPx ** 2 / (2 ** film.bitsStored - 1)) * (looksDark ? 1 : -1);
    keepStronger(strength, smooth, { weight, firstRow: rows.from - part.from });
    onProgress?.((index + 1) / scalesPx.length);
  }
  return strength;
}

function checkOptions(film: FilmPixels, scalesPx: readonly number[], rows: { from: number; to: number }): void {
  const refuse = (state: string) => new Refusal("input.impossible", `Cannot look for lines: ${state}`);
  if (scalesPx.length === 0) throw refuse("no scale is given");
  const wrong = scalesPx.find((scale) => !(scale >= 0.5 && scale <= 64));
  if (wrong !== undefined) throw refuse(`a scale of ${wrong} pixels is outside 0.5 to 64`);
  const isInside = Number.isInteger(rows.from) && Number.isInteger(rows.to) && rows.from >= 0 && rows.to <= film.rows;
  if (!isInside || rows.from >= rows.to)
    throw refuse(`rows ${rows.from} to ${rows.to} are not within the ${film.rows} of the film`);
}

/** The rows asked for with as many beside them as smoothing and differences reach, and where they begin. */
function planeOf(film: FilmPixels, rows: { from: number; to: number }, margin: number): { plane: Plane; from: number } {
  const from = Math.max(0, rows.from - margin);
  const to = Math.min(film.rows, rows.to + margin);
  const values = new Float64Array(film.samples.subarray(from * film.columns, to * film.columns));
  return { plane: { columns: film.columns, rows: to - from, values }, from };
}

/** Raises each strength to that of this scale where it is larger. */
function keepStronger(strength: Float32Array, smooth: Plane, how: { weight: number; firstRow: number }): void {
  const { columns, rows, values } = smooth;
  // No line fits into less than three pixels.
  if (columns < 3 || rows < 3) return;
  const count = strength.length / columns;
  for (let row = 0; row < count; row++) {
    // On the border the bend of the next row or column stands for its own.
    const line = clamped(row + how.firstRow, rows) * columns;
    for (let column = 0; column < columns; column++) {
      const found = bendAt(values, line + clamped(column, columns), columns, how.weight);
      const index = row * columns + column;
      if (found > (strength[index] ?? 0)) strength[index] = found;
    }
  }
}

const clamped = (at: number, count: number): number => Math.max(1, Math.min(at, count - 2));

/** The larger eigenvalue of the weighted Hessian at a place, from differences over one pixel. */
function bendAt(values: Float64Array, at: number, columns: number, weight: number): number {
  const middle = 2 * (values[at] ?? 0);
  const across = (values[at - 1] ?? 0) - middle + (values[at + 1] ?? 0);
  const along = (values[at - columns] ?? 0) - middle + (values[at + columns] ?? 0);
  const falling = (values[at + columns + 1] ?? 0) + (values[at - columns - 1] ?? 0);
  const rising = (values[at + columns - 1] ?? 0) + (values[at - columns + 1] ?? 0);
  const [difference, mixed] = [(across - along) / 2, (falling - rising) / 4];
  return (weight * (across + along)) / 2 + Math.abs(weight) * Math.sqrt(difference * difference + mixed * mixed);
}

/** The ridge at which a pixel costs half of one that lies on no line: a faint canal beside a filling still counts. */
const halfway = 0.05;

/**
 * What a path over each pixel costs, for following lines: little on a ridge, 1 beside it.
 * Takes a ridge (0..1 a pixel). Gives costs from 1/21 to 1: 0.05 / (0.05 + ridge).
 */
export const ridgeCost = (ridge: Float32Array): Float32Array => ridge.map((value) => halfway / (halfway + value));
