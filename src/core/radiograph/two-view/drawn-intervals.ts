import type { Interval } from "../../basis.ts";
import { withoutSignOfZero } from "./without-sign-of-zero.ts";

const level = 0.95;

/** One value of a drawn course and how much it counts. */
export interface Counted {
  readonly value: number;
  readonly counts: number;
}

/** The interval that holds 95 % of what is drawn, reaching to the value itself. */
export function drawnInterval(drawn: readonly Counted[], value: number): Interval {
  const sorted = [...drawn].sort((a, b) => a.value - b.value);
  const low = weightedQuantile(sorted, (1 - level) / 2) ?? value;
  const high = weightedQuantile(sorted, (1 + level) / 2) ?? value;
  return {
    low: withoutSignOfZero(Math.min(low, value)),
    high: withoutSignOfZero(Math.max(high, value)),
    level,
  };
}

function weightedQuantile(sorted: readonly Counted[], share: number): number | undefined {
  const total = sorted.reduce((sum, { counts }) => sum + counts, 0);
  let reached = 0;
  for (const { value, counts } of sorted) {
    reached += counts;
    if (reached >= share * total) return value;
  }
  return sorted.at(-1)?.value;
}

/** The smallest interval that holds both. */
export const hullOf = (a: Interval, b: Interval): Interval => ({
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
  level,
});
