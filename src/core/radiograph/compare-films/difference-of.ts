import { type GreyMatch, greyMatch } from "./matched-greys.ts";
import type { Picture } from "./picture.ts";
import type { Region } from "./region.ts";

/** What changed between two films, on the first film's pixels. */
export interface FilmDifference {
  /** The second less the first in shares of the full range, 0 where they do not overlap. */
  readonly values: Float64Array;
  /** Standard deviation of the difference in the region: what grain and small shifts leave. */
  readonly sigma: number;
}

/**
 * The second film's matched greys less the first's.
 * Takes the second film laid on the first, the first, and the pixels that count for the match of greys.
 * @source docs/methods/compare-films C3
 */
export function differenceOf(laid: Picture, first: Picture, region: Region): FilmDifference {
  const match: GreyMatch = greyMatch(laid, first, region);
  const values = new Float64Array(first.values.length);
  let [count, squares] = [0, 0];
  for (let at = 0; at < values.length; at++) {
    const grey = laid.values[at] ?? Number.NaN;
    if (Number.isNaN(grey)) continue;
    const difference = match(grey) - (first.values[at] ?? 0);
    values[at] = difference;
    if (region.counts[at] !== 1) continue;
    count += 1;
    squares += difference * difference;
  }
  return { values, sigma: count === 0 ? 0 : Math.sqrt(squares / count) };
}

/** A difference of more than this many usual ones is a change, not grain. */
const usualOnes = 4;
/** Half of all normal errors are below this many standard deviations. */
const halfBelow = 0.6745;

/**
 * A region without what changed between two films: fillings put in, caries taken out.
 * Takes the second film laid on the first, the first, and the region. Gives the pixels whose difference is not far beyond
 * the usual one, told by its median, which changes in less than half of the pixels don't move.
 * @source own rule; docs/methods/compare-films C2
 */
export function unchanged(laid: Picture, first: Picture, region: Region): Region {
  const { values } = differenceOf(laid, first, region);
  const seen = values
    .filter((_, at) => region.counts[at] === 1 && at % 7 === 0)
    .map(Math.abs)
    .sort();
  const sigma = (seen[seen.length >> 1] ?? 0) / halfBelow;
  const limit = Math.max(usualOnes * sigma, 1e-4);
  const counts = new Uint8Array(region.counts.length);
  for (let at = 0; at < counts.length; at++)
    counts[at] = Math.abs(values[at] ?? 0) <= limit ? (region.counts[at] ?? 0) : 0;
  return { ...region, counts };
}

/** The share of the first film that the second one covers, 0 to 1. */
export function overlapOf({ values }: Picture): number {
  let covered = 0;
  for (const grey of values) if (!Number.isNaN(grey)) covered += 1;
  return covered / values.length;
}
