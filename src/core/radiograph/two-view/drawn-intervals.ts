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

/**
 * The interval of the angle between a plane and the film's, from the directions in which bends turn, in degrees: directions
 * go on through the film's plane and through the one square to it, where the angle itself turns back at 0 and at 90.
 */
export function planeInterval(drawn: readonly Counted[], towardsDeg: number): Interval {
  const about = drawn.map(({ value, counts }) => ({ counts, value: wrapped(value - towardsDeg) + towardsDeg }));
  const { low, high } = drawnInterval(about, towardsDeg);
  const ends = [low, high].map(toPlane);
  const passes = (angleDeg: number): boolean =>
    Math.floor((high - angleDeg) / 180) > Math.floor((low - angleDeg) / 180);
  return {
    low: passes(0) ? 0 : Math.min(...ends),
    high: passes(90) ? 90 : Math.max(...ends),
    level,
  };
}

const wrapped = (angleDeg: number): number => angleDeg - 360 * Math.round(angleDeg / 360);
/** The angle to the film's plane, 0 to 90, of a direction. */
const toPlane = (angleDeg: number): number => Math.abs(angleDeg - 180 * Math.round(angleDeg / 180));

/** The smallest interval that holds both. */
export const hullOf = (a: Interval, b: Interval): Interval => ({
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
  level,
});
