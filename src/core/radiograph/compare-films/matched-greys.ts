import type { Homography } from "./homography.ts";
import { greyAt, type Picture } from "./picture.ts";
import type { Region } from "./region.ts";

/** Steps that the range of grey, 0 to 1, is counted in: finer than any film's. */
const steps = 65_535;

/** What grey of the second film becomes on the first. */
export type GreyMatch = (grey: number) => number;

/**
 * The change of grey that gives the second film the first one's histogram in a region that has not changed.
 * Takes the second film's greys laid on the first, the first film, and the pixels that count. Gives a change that never
 * falls; it undoes any change of contrast that keeps the order of greys, down to the steps of the film. Only the order of
 * greys is used, so that a small place that did change moves little.
 * @source U. E. Ruttimann, R. L. Webber, E. Schmidt, J Periodont Res 1986;21:486-495 (seen): from cumulative histograms
 */
export function greyMatch(laid: Picture, first: Picture, region: Region): GreyMatch {
  const [from, to] = [new Float64Array(steps + 1), new Float64Array(steps + 1)];
  for (let at = 0; at < region.counts.length; at++) {
    const grey = laid.values[at] ?? Number.NaN;
    if (region.counts[at] !== 1 || Number.isNaN(grey)) continue;
    count(from, grey);
    count(to, first.values[at] ?? 0);
  }
  const known = knotsOf(from, to);
  return (grey) => between(known, Math.min(steps, Math.max(0, grey * steps))) / steps;
}

function count(histogram: Float64Array, grey: number): void {
  const step = Math.round(Math.min(1, Math.max(0, grey)) * steps);
  histogram[step] = (histogram[step] ?? 0) + 1;
}

interface Knots {
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** For each step of the range, which knot is the last at or before it; -1 before the first. */
  readonly lastAt: Int32Array;
}

/** For each grey of the one histogram, the mean grey that holds the same ranks in the other. */
function knotsOf(from: Float64Array, to: Float64Array): Knots {
  const [greys, means]: [number[], number[]] = [[], []];
  let [step, left] = [0, to[0] ?? 0];
  from.forEach((wanted, grey) => {
    if (wanted === 0) return;
    let [missing, sum] = [wanted, 0];
    while (missing > 0 && step <= steps) {
      const taken = Math.min(missing, left);
      sum += taken * step;
      missing -= taken;
      left -= taken;
      if (left === 0) {
        step += 1;
        left = to[step] ?? 0;
      }
    }
    greys.push(grey);
    means.push(sum / wanted);
  });
  return { from: Float64Array.from(greys), to: Float64Array.from(means), lastAt: lastKnots(greys) };
}

/** Knots stand at whole steps, so the last one before any grey is the last one before its step. */
function lastKnots(greys: readonly number[]): Int32Array {
  const lastAt = new Int32Array(steps + 1);
  let knot = -1;
  for (let step = 0; step <= steps; step++) {
    if (greys[knot + 1] === step) knot += 1;
    lastAt[step] = knot;
  }
  return lastAt;
}

/** The value between two knots; beyond the ends the change of the end goes on. */
function between({ from, to, lastAt }: Knots, grey: number): number {
  const last = from.length - 1;
  if (last < 0) return grey;
  if (grey <= (from[0] ?? 0)) return (to[0] ?? 0) + grey - (from[0] ?? 0);
  if (grey >= (from[last] ?? 0)) return (to[last] ?? 0) + grey - (from[last] ?? 0);
  const low = lastAt[Math.floor(grey)] ?? 0;
  const high = low + 1;
  const share = (grey - (from[low] ?? 0)) / ((from[high] ?? 0) - (from[low] ?? 0));
  return (to[low] ?? 0) + share * ((to[high] ?? 0) - (to[low] ?? 0));
}

/** The second film laid on the first under a map: its grey for each pixel of the first, NaN where it does not reach. */
export function laidOn(size: { columns: number; rows: number }, second: Picture, map: Homography): Picture {
  const { columns, rows } = size;
  const [a, b, c, d, e, f, g, h, i] = map;
  const values = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const depth = g * column + h * row + i;
      const grey = greyAt(second, (a * column + b * row + c) / depth, (d * column + e * row + f) / depth);
      values[row * columns + column] = grey ?? Number.NaN;
    }
  return { columns, rows, values };
}
