import type { Interval } from "../../basis.ts";
import { reach95 } from "../../radiograph/interval-around.ts";
import { betaQuantile } from "../../statistics/beta-quantile.ts";

/** The four cells of a test against the state of the pulp; positive points to a non-vital one. */
export interface Counts {
  readonly truePositive: number;
  readonly falsePositive: number;
  readonly falseNegative: number;
  readonly trueNegative: number;
}

/** How often a test is right: its two shares, and the counts behind them where they are known. */
export interface Accuracy {
  readonly sensitivity: number;
  readonly specificity: number;
  readonly counts: Counts | undefined;
  /** Printed by the source, derived from what it prints, or given in the input. */
  readonly countsAre: "printed" | "derived" | "given" | undefined;
}

/** The level of every interval of this topic. */
export const level = 0.95;

/** Added to both cells of a share: the prior of Jeffreys. */
export const half = 0.5;

/**
 * The interval of a share by the prior of Jeffreys.
 * Takes how often it was met and how often it was not.
 * @source Brown LD, Cai TT, DasGupta A, Interval estimation for a binomial proportion, Stat Sci 2001;16:101-133 (memory)
 */
export function shareInterval(met: number, not: number): Interval {
  const end = (share: number): number => betaQuantile(share, met + half, not + half);
  // Nothing met leaves 0 inside, and nothing missed 1, as the same paper has it.
  const [low, high] = [met === 0 ? 0 : end((1 - level) / 2), not === 0 ? 1 : end((1 + level) / 2)];
  return { low, high, level };
}

/** A likelihood ratio with its interval; either is absent where it has no finite value. */
export interface Ratio {
  readonly value?: number;
  readonly interval?: Interval;
}

/**
 * Both likelihood ratios of a test, LR+ = sens / (1 - spec) and LR- = (1 - sens) / spec, from the counts where they are
 * known, with intervals on the scale of the logarithm where all four cells hold a tooth.
 * @source Simel DL, Samsa GP, Matchar DB, J Clin Epidemiol 1991;44:763-770 (memory); docs/methods/test-strength C1, C3
 */
export function likelihoodRatios({ sensitivity, specificity, counts }: Accuracy): { positive: Ratio; negative: Ratio } {
  if (counts === undefined)
    return { positive: ratioOf(sensitivity, 1 - specificity), negative: ratioOf(1 - sensitivity, specificity) };
  const { truePositive: a, falsePositive: b, falseNegative: c, trueNegative: d } = counts;
  return {
    positive: ratioOf(a / (a + c), b / (b + d), 1 / a - 1 / (a + c) + 1 / b - 1 / (b + d)),
    negative: ratioOf(c / (a + c), d / (b + d), 1 / c - 1 / (a + c) + 1 / d - 1 / (b + d)),
  };
}

function ratioOf(above: number, below: number, variance = Number.POSITIVE_INFINITY): Ratio {
  if (below === 0) return {};
  const value = above / below;
  // Without counts, or with an empty cell, the variance is not finite.
  if (!Number.isFinite(variance)) return { value };
  const reach = Math.exp(reach95 * Math.sqrt(variance));
  return { value, interval: { low: value / reach, high: value * reach, level } };
}
