import { betaDraw } from "../../statistics/beta-draw.ts";
import type { SeededRandom } from "../../statistics/seeded-random.ts";

/** A share that is not known exactly: its mean, and how to draw it. */
export interface UncertainShare {
  readonly mean: number;
  readonly draw: (random: SeededRandom) => number;
}

/**
 * A share that was counted: a beta distribution with the prior of Jeffreys.
 * Takes how many had it and of how many, whole numbers. Gives the mean (events + 1/2) / (n + 1).
 * @source Brown LD, Cai TT, DasGupta A, Interval estimation for a binomial proportion, Stat Sci 2001;16:101-133 (memory)
 */
export function countedShare({ events, n }: { events: number; n: number }): UncertainShare {
  const [a, b] = [events + 0.5, n - events + 0.5];
  return { mean: a / (a + b), draw: (random) => betaDraw(random, a, b) };
}

/** One of several, each as likely as the others. Takes at least one. */
export function oneOf(shares: readonly UncertainShare[]): UncertainShare {
  return {
    mean: shares.reduce((sum, { mean }) => sum + mean, 0) / shares.length,
    draw: (random) => picked(shares, random).draw(random),
  };
}

/** One of several, each as likely as the others. Takes at least one. */
export function picked<Item>(items: readonly Item[], random: SeededRandom): Item {
  const item = items[Math.floor(random.uniform() * items.length)];
  if (item === undefined) throw new RangeError("there is nothing to draw from");
  return item;
}

/** Anything from 0 to 1, all of it as likely: what nothing is known of. */
export const unknownShare: UncertainShare = { mean: 0.5, draw: (random) => random.uniform() };
