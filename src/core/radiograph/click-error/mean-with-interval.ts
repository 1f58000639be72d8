import type { Interval } from "../../basis.ts";
import { studentReach } from "../../statistics/student-quantile.ts";
import { level } from "./dahlberg.ts";

/**
 * A mean and its interval by Student's t.
 * Takes at least 2 numbers in one unit.
 * @source data/bland-altman-1986 (seen); docs/methods/click-error C4
 */
export function meanWithInterval(values: readonly number[]): { readonly mean: number; readonly interval: Interval } {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const square = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  const half = studentReach(n - 1, level) * Math.sqrt(square / n);
  return { mean, interval: { low: mean - half, high: mean + half, level } };
}
