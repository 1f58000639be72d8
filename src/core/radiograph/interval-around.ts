import type { Interval } from "../basis.ts";

/** How many standard deviations a normal 95 % interval reaches to each side. */
export const reach95 = 1.959963984540054;

/**
 * The 95 % interval of a value with a normal error.
 * Takes the value and its standard deviation, 0 or more, in one unit. Gives the interval in that unit.
 * @source the normal distribution; docs/methods/working-length C3
 */
export const intervalAround = (value: number, sigma: number): Interval => ({
  low: value - reach95 * sigma,
  high: value + reach95 * sigma,
  level: 0.95,
});
