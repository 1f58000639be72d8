import type { Interval } from "../../basis.ts";
import { sigmaInterval } from "../../statistics/sigma-interval.ts";
import type { ClickPair } from "./click-error-input.ts";

/** The level of every interval of this topic. */
export const level = 0.95;

/** A standard deviation of one click with what it rests on. */
export interface ClickSigma {
  /** Pairs. */
  readonly n: number;
  readonly sigmaPx: number;
  readonly interval: Interval;
}

/** Second mark less first, in pixels. */
export const stepOf = ({ first, second }: ClickPair): readonly [number, number] => [
  second[0] - first[0],
  second[1] - first[1],
];

/**
 * Dahlberg's error of one mark in each direction: the root of the squared differences of pairs over twice their number.
 * Takes pairs, at least one, and the directions that count. Gives px, and the interval of chi-square with one degree of
 * freedom for each difference.
 * @source data/dahlberg-1940 (memory); docs/methods/click-error C1-C3
 */
export function dahlberg(pairs: readonly ClickPair[], directions: readonly (0 | 1)[] = [0, 1]): ClickSigma {
  const differences = pairs.flatMap((pair) => directions.map((direction) => stepOf(pair)[direction]));
  // A difference of two marks has twice the variance of one: half of its square is one degree of freedom.
  const sum = differences.reduce((squares, difference) => squares + (difference * difference) / 2, 0);
  return {
    n: pairs.length,
    sigmaPx: Math.sqrt(sum / differences.length),
    interval: sigmaInterval(sum, differences.length, level),
  };
}
