import type { Interval } from "../../basis.ts";
import { betaQuantile } from "../../statistics/beta-quantile.ts";

const level = 0.95;

/**
 * The share of teeth that a published count stands for, with its 95 % interval.
 * Takes how many of how many. Gives the middle of Jeffreys' distribution and its two ends; 0 of N is not a certainty.
 * @source Brown LD, Cai TT, DasGupta A, Interval estimation for a binomial proportion, Stat Sci, 2001;16:101-133 (memory)
 */
export function shareOfSeries({ n, N }: { readonly n: number; readonly N: number }): {
  readonly mean: number;
  readonly interval: Interval;
} {
  const end = (part: number): number => betaQuantile(part, n + 0.5, N - n + 0.5);
  return { mean: (n + 0.5) / (N + 1), interval: { low: end((1 - level) / 2), high: end((1 + level) / 2), level } };
}
