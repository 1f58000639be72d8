import { type CompareFilmsOutput, compareFilmsOutput } from "../core/radiograph/compare-films/compare-films-input.ts";
import type { Homography } from "../core/radiograph/compare-films/homography.ts";
import { laidOn } from "../core/radiograph/compare-films/matched-greys.ts";
import { type Picture, smoothed } from "../core/radiograph/compare-films/picture.ts";
import { compareFilmsTopic } from "../core/radiograph/compare-films-topic.ts";
import { type Outcome, outcomeOf } from "./derive-ledger.ts";

/** Two films as the sum takes them: grey in shares of the full range, larger brighter. */
export interface TwoFilms {
  readonly before: FilmGrey;
  readonly after: FilmGrey;
}

/** One film's grey, row by row. */
export interface FilmGrey {
  readonly columns: number;
  readonly rows: number;
  readonly grey: Float32Array;
}

/** What came of a comparison: what the ledger keeps, and the pictures that it does not. */
export interface ComparedFilms {
  readonly outcome: Outcome;
  /** The second film laid on the first; its greys matched where the films can be compared; NaN where it does not reach. */
  readonly laid?: Picture;
  /** The second less the first, a little smoothed so that grain weighs less; absent where the films can't be compared. */
  readonly difference?: Picture;
}

/**
 * Compares two films as an entry of the ledger asks: its input with films in the place of their hashes.
 * The same input and films give the same outcome and pictures, so that pictures can be made again whenever they are wanted.
 */
export function comparedFilms(input: unknown, { before, after }: TwoFilms): ComparedFilms {
  const asked = typeof input === "object" && input !== null ? input : {};
  const outcome = outcomeOf(compareFilmsTopic, { ...asked, before, after, wantsDifference: true });
  if (!("output" in outcome)) return { outcome };
  const { difference, ...output } = compareFilmsOutput.parse(outcome.output);
  const second = { columns: after.columns, rows: after.rows, values: after.grey };
  const laid = laidOn(before, second, flat(output.transform));
  if (difference === undefined) return { outcome: { output }, laid };
  return {
    outcome: { output: { ...output, notComputed: [...output.notComputed, notKept] } },
    laid: matched(laid, before, difference),
    difference: smoothed(difference),
  };
}

/** Why an entry holds no difference picture although there is one. */
const notKept = {
  name: "difference",
  why: "pictures are made again from the two films and are not part of the record",
};

/** The laid film with matched greys is the first film and what changed; where it does not reach, nothing. */
function matched(laid: Picture, first: FilmGrey, difference: Picture): Picture {
  const values = new Float64Array(laid.values.length);
  for (let at = 0; at < values.length; at++)
    values[at] = Number.isNaN(laid.values[at]) ? Number.NaN : (first.grey[at] ?? 0) + (difference.values[at] ?? 0);
  return { ...laid, values };
}

const flat = ([[a, b, c], [d, e, f], [g, h, i]]: CompareFilmsOutput["transform"]): Homography => [
  a,
  b,
  c,
  d,
  e,
  f,
  g,
  h,
  i,
];
