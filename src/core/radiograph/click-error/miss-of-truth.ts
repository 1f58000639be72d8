import type { ClickPair } from "./click-error-input.ts";

/** A pair whose true place is known. */
export type KnownPair = ClickPair & { readonly truth: readonly [number, number] };

/** Those of the pairs whose true place is known. */
export const knownPairs = (pairs: readonly ClickPair[]): readonly KnownPair[] =>
  pairs.flatMap((pair) => (pair.truth === undefined ? [] : [{ ...pair, truth: pair.truth }]));

/**
 * How far marks lie from the truth: the root mean square in each direction, px. It holds the click's error and what the
 * person, or the film, does the same way each time. Gives nothing where no truth is known.
 * @source docs/methods/click-error C5
 */
export function missOf(pairs: readonly ClickPair[]): number | undefined {
  const off = knownPairs(pairs).flatMap(({ first, second, truth }) =>
    [first, second].flatMap(([u, v]) => [u - truth[0], v - truth[1]]),
  );
  if (off.length === 0) return undefined;
  return Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
}

/** The middle of a pair's two marks less its true place, in one direction, pair by pair. */
export const offTruth = (pairs: readonly KnownPair[], direction: 0 | 1): number[] =>
  pairs.map(({ first, second, truth }) => (first[direction] + second[direction]) / 2 - truth[direction]);
