import { Refusal } from "../core/refusal.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { gaussianHalf, type Plane, smoothedAcross } from "./gaussian-rows.ts";

/** What lines to look for, and how. */
export interface RidgeOptions {
  /** Whether the line looks darker than what is beside it, as a canal does, or brighter, as an instrument does. */
  readonly line: "dark" | "bright";
  /**
   * Widths to look at, as the Gaussian's standard deviation in pixels, each 0.5 to 64: half the width of the line. Unless
   * given 2, 4 and 8, and half of them on a film whose shorter side has less than 500 pixels.
   */
  readonly scalesPx?: readonly number[];
  /** The rows to answer for; all unless given. Rows given one by one are the same as all at once. */
  readonly rows?: { readonly from: number; readonly to: number };
  /** Told after each scale which share of the work is done, 0..1. */
  readonly onProgress?: (done: number) => void;
}

/** Canals on films of 20 to 40 pixels a millimetre are 4 to 25 pixels wide; on a small picture they are half as wide. */
const usualScalesPx = (film: FilmPixels): readonly number[] =>
  Math.min(film.columns, film.rows) < smallSidePx ? [1, 2, 4] : [2, 4, 8];
const smallSidePx = 500;
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
 * of the Hessian of the smoothed film times sigma squared, as a share of the film's full range, times how evenly the grey
 * rises to both sides (two sigma away: the smaller rise over the mean of both). At the foot of an edge the grey bends as
 * it does on a line, but rises to one side alone: there it is 0.
 * Takes the film and the options. Gives one number a pixel of the rows asked for, 0 to below 1; a bar of width w and of
 * the full range has 0.484 on its middle at sigma w/2, and less at every other scale.
 * @throws Refusal `input.impossible` for no scale, a scale outside 0.5..64, or rows outside the film.
 * @source Y. Sato and others, Three-dimensional multi-scale line filter, Medical Image Analysis 1998;2:143-168, in two
 * dimensions (memory); T. Lindeberg, Scale-space for discrete signals, IEEE Transactions on Pattern Analysis and
 * Machine Intelligence 1990;12:234-254: derivatives as differences of the smoothed signal (memory)
 * @source T. M. Koller and others, Multiscale detection of curvilinear structures in 2-D and 3-D image data, International
 * Conference on Computer Vision 1995;864-869: both sides of a line must answer, as the smaller of two (memory); the share
 * of the mean: own rule
 */
export function ridgeStrength(film: FilmPixels, options: RidgeOptions): Float32Array {
  const { scalesPx = usualScalesPx(film), rows = { from: 0, to: film.rows }, onProgress } = options;
  checkOptions(film, scalesPx, rows);
  const looksDark = (options.line === "dark") === (film.photometric === "MONOCHROME2");
  const strength = new Float32Array((rows.to - rows.from) * film.columns);
  for (const [index, sigmaPx] of scalesPx.entries()) {
    const half = gaussianHalf(sigmaPx);
    const aside = Math.max(1, Math.round(2 * sigmaPx));
    const part = planeOf(film, rows, half.length + aside + 1);
    const smooth = smoothedAcross(smoothedAcross(part.plane, half), half);
    const weight = (sigmaPx ** 2 / (2 ** film.bitsStored - 1)) * (looksDark ? 1 : -1);
    keepStronger(strength, smooth, { weight, aside, firstRow: rows.from - part.from });
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

interface Look {
  /** What a bend counts: sigma squared over the full range, below 0 for bright lines. */
  readonly weight: number;
  /** How far aside of a line the grey must have risen, in pixels. */
  readonly aside: number;
  readonly firstRow: number;
}

/** Raises each strength to that of this scale where it is larger. */
function keepStronger(strength: Float32Array, smooth: Plane, look: Look): void {
  const { columns, rows } = smooth;
  // No line fits into less than three pixels.
  if (columns < 3 || rows < 3) return;
  const count = strength.length / columns;
  for (let row = 0; row < count; row++) {
    // On the border the bend of the next row or column stands for its own.
    const line = clamped(row + look.firstRow, 1, rows - 2) * columns;
    for (let column = 0; column < columns; column++) {
      const index = row * columns + column;
      const known = strength[index] ?? 0;
      const found = lineAt(smooth, line + clamped(column, 1, columns - 2), look, known);
      if (found > known) strength[index] = found;
    }
  }
}

const clamped = (at: number, least: number, most: number): number => Math.max(least, Math.min(at, most));

/**
 * The larger eigenvalue of the weighted Hessian at a place, from differences over one pixel, times how evenly the grey
 * rises to both sides; 0 where the eigenvalue alone is not above what is known.
 */
function lineAt({ columns, rows, values }: Plane, at: number, { weight, aside }: Look, known: number): number {
  const here = values[at] ?? 0;
  const across = weight * ((values[at - 1] ?? 0) - 2 * here + (values[at + 1] ?? 0));
  const along = weight * ((values[at - columns] ?? 0) - 2 * here + (values[at + columns] ?? 0));
  const falling = (values[at + columns + 1] ?? 0) + (values[at - columns - 1] ?? 0);
  const rising = (values[at + columns - 1] ?? 0) + (values[at - columns + 1] ?? 0);
  const mixed = (weight * (falling - rising)) / 4;
  const difference = (across - along) / 2;
  const mean = (across + along) / 2;
  // Most places end here, before any root is drawn.
  if (mean + Math.abs(difference) + Math.abs(mixed) <= known) return 0;
  const turned = Math.sqrt(difference * difference + mixed * mixed);
  const bend = mean + turned;
  if (bend <= known) return 0;
  // The direction of the larger eigenvalue, from whichever of its two forms is the longer.
  const right = difference >= 0 ? difference + turned : mixed;
  const down = difference >= 0 ? mixed : turned - difference;
  const step = aside / (Math.sqrt(right * right + down * down) || 1);
  const stepRight = Math.round(step * right);
  const stepDown = Math.round(step * down);
  const row = (at / columns) | 0;
  const column = at - row * columns;
  const oneSide =
    values[clamped(row + stepDown, 0, rows - 1) * columns + clamped(column + stepRight, 0, columns - 1)] ?? 0;
  const otherSide =
    values[clamped(row - stepDown, 0, rows - 1) * columns + clamped(column - stepRight, 0, columns - 1)] ?? 0;
  return bend * evenness((oneSide - here) * weight, (otherSide - here) * weight);
}

/** 1 where the grey rises to both sides alike, 0 where it rises to one alone. */
function evenness(oneSide: number, otherSide: number): number {
  const smaller = Math.min(oneSide, otherSide);
  return smaller > 0 ? (2 * smaller) / (oneSide + otherSide) : 0;
}

/**
 * The ridge at which a pixel costs half of one that lies on no line. Chosen among 0.02 to 0.4 on the courses of the demo's
 * films, which are known: below 0.15 grain and trabeculae draw the path away from a canal.
 */
const halfway = 0.25;

/**
 * What a path over each pixel costs, for following lines: little on a ridge, 1 beside it.
 * Takes a ridge (0..1 a pixel). Gives costs from 1/5 to 1: 0.25 / (0.25 + ridge).
 */
export const ridgeCost = (ridge: Float32Array): Float32Array => ridge.map((value) => halfway / (halfway + value));
