import { seededRandom } from "../../../../src/core/statistics/seeded-random.ts";

/** Everything that is drawn by lot in one invented case. */
export interface Dice {
  /** True in a share of throws, 0 to 1. */
  readonly chance: (share: number) => boolean;
  /** One of several, by weight. */
  readonly pick: <Thing>(weighted: readonly (readonly [Thing, number])[]) => Thing;
  /** An even number between two. */
  readonly between: (low: number, high: number) => number;
  /** A normal number, held inside a range. */
  readonly normal: (mean: number, deviation: number, range: readonly [number, number]) => number;
}

/** Dice that fall the same for the same seed. */
export function diceOf(seed: number): Dice {
  const random = seededRandom(seed);
  return {
    chance: (share) => random.uniform() < share,
    pick: (weighted) => pickFrom(weighted, random.uniform()),
    between: (low, high) => low + (high - low) * random.uniform(),
    normal: (mean, deviation, [low, high]) => Math.min(high, Math.max(low, mean + deviation * random.normal())),
  };
}

function pickFrom<Thing>(weighted: readonly (readonly [Thing, number])[], share: number): Thing {
  const [first] = weighted;
  if (first === undefined) throw new RangeError("Cannot pick: there is nothing to pick from");
  let left = share * weighted.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [thing, weight] of weighted) {
    left -= weight;
    if (left < 0) return thing;
  }
  return first[0];
}

/** Rounded to a step: 19.47 in steps of 0.5 is 19.5. */
export const inSteps = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2));
