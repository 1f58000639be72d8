import { crowdedBetween, turnBetween } from "./first-time.ts";

/** A smooth quantity over time and its slope. */
export interface Sloped {
  readonly valueAt: (atMin: number) => number;
  readonly slopeAt: (atMin: number) => number;
}

/**
 * The largest value between two times, and where: at an end, or where the slope turns from rising to falling.
 * @source places crowded towards both ends, each turn found by halving; docs/methods/solvent.md C8
 */
export function largestOver(fromMin: number, toMin: number, { valueAt, slopeAt }: Sloped) {
  const places = crowdedBetween(fromMin, toMin);
  const rising = places.map((at) => slopeAt(at) > 0);
  const falls = (at: number) => slopeAt(at) <= 0;
  const turns = places.flatMap((at, index) => {
    const next = places[index + 1];
    return next !== undefined && rising[index] && !rising[index + 1] ? [turnBetween(at, next, falls)] : [];
  });
  // Beyond the outermost places a turn may still hide beside an end.
  const first = places[0];
  const last = places.at(-1);
  if (first !== undefined && !rising[0]) turns.push(first);
  if (last !== undefined && rising.at(-1)) turns.push(last);
  return highest([fromMin, toMin, ...turns].map((atMin) => ({ atMin, value: valueAt(atMin) })));
}

/** The highest of some; the first of equals. */
export function highest(found: readonly { readonly atMin: number; readonly value: number }[]) {
  return found.reduce((best, one) => (one.value > best.value ? one : best), found[0] ?? { atMin: 0, value: 0 });
}
