import type { Interval } from "../../basis.ts";
import { quantile } from "../../statistics/quantile.ts";

/** A mean with the interval of its draws. */
export interface Estimate {
  readonly mean: number;
  readonly interval: Interval;
}

/** The middle 95 % of some draws. Takes at least one. */
export function drawnInterval(draws: readonly number[]): Interval {
  const sorted = [...draws].sort((a, b) => a - b);
  return { low: quantile(sorted, 0.025), high: quantile(sorted, 0.975), level: 0.95 };
}
