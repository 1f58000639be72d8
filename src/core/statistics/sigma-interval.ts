import type { Interval } from "../basis.ts";
import { chiSquareTail } from "../radiograph/chi-square-tail.ts";

/**
 * The interval of a standard deviation from a sum of squares of normal errors.
 * Takes the sum of squares, its degrees of freedom (a whole number, at least 1) and the level. Gives the two ends in the
 * unit of the errors: 0 and 0 where the sum is 0.
 * @source chi-square distribution of a sum of squares: R. A. Fisher, Statistical methods for research workers, 1925
 * (memory); docs/methods/click-error C3
 */
export function sigmaInterval(sumOfSquares: number, degreesOfFreedom: number, level: number): Interval {
  const end = (tail: number): number => Math.sqrt(sumOfSquares / chiSquareWithTail(tail, degreesOfFreedom));
  return { low: end((1 - level) / 2), high: end((1 + level) / 2), level };
}

/** The value that chi-square exceeds with a stated chance, found by halving. */
function chiSquareWithTail(tail: number, degreesOfFreedom: number): number {
  let [low, high] = [0, degreesOfFreedom + 20 * Math.sqrt(2 * degreesOfFreedom) + 20];
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2;
    if (chiSquareTail(middle, degreesOfFreedom) > tail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
