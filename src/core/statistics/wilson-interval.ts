import type { Interval } from "../basis.ts";
import { reach95 } from "../radiograph/interval-around.ts";

/**
 * The 95 % interval of a share that was counted, by Wilson's score.
 * Takes how many had it and of how many: whole numbers, 0 <= events <= n, n at least 1.
 * Gives two shares within 0 and 1.
 * @source Wilson EB, Probable inference, the law of succession, and statistical inference, J Am Stat Assoc, 1927, 209-212 (memory); Newcombe RG, Two-sided confidence intervals for the single proportion: comparison of seven methods, Stat Med, 1998, 857-872 (memory)
 */
export function wilsonInterval(events: number, n: number): Interval {
  const share = events / n;
  const z2 = reach95 * reach95;
  const middle = share + z2 / (2 * n);
  const half = reach95 * Math.sqrt((share * (1 - share)) / n + z2 / (4 * n * n));
  const whole = 1 + z2 / n;
  return { low: Math.max(0, (middle - half) / whole), high: Math.min(1, (middle + half) / whole), level: 0.95 };
}
