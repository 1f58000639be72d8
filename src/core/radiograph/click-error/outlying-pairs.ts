import { quantile } from "../../statistics/quantile.ts";
import type { ClickPair } from "./click-error-input.ts";
import { stepOf } from "./dahlberg.ts";

/** A kind with fewer pairs than this is judged by the scale of all kinds together. */
const enoughForOwnScale = 10;
/** With a known scale the rule would name a pair in this share of exercises; the median's own error makes it 2 to 7 %. */
const falseShare = 0.01;

/** A pair that lies farther apart than the rule expects of any. */
export interface OutlyingPair {
  readonly pair: ClickPair;
  readonly apartPx: number;
  /** The rule's bound. */
  readonly expectedPx: number;
}

/**
 * The pairs that are too far apart to be click error, by a scale that they themselves can't move.
 * The scale of a kind is the median distance of its pairs; the squared distance of a pair over four times the variance
 * of one mark is exponential, with a median of ln 2, and passes ln(n / 0.01) in one exercise of a hundred.
 * Takes all pairs. Gives none where half of the pairs or more are of distance 0.
 * @source docs/methods/click-error C6
 */
export function outlyingPairs(pairs: readonly ClickPair[]): OutlyingPair[] {
  const bound = Math.sqrt(Math.log(pairs.length / falseShare) / Math.LN2);
  const all = medianApart(pairs);
  return pairs.flatMap((pair) => {
    const alike = pairs.filter(({ name }) => name === pair.name);
    const scale = alike.length >= enoughForOwnScale ? medianApart(alike) : all;
    const [apartPx, expectedPx] = [apartOf(pair), scale * bound];
    return scale > 0 && apartPx > expectedPx ? [{ pair, apartPx, expectedPx }] : [];
  });
}

const apartOf = (pair: ClickPair): number => Math.hypot(...stepOf(pair));

const medianApart = (pairs: readonly ClickPair[]): number =>
  quantile(
    pairs.map(apartOf).sort((a, b) => a - b),
    0.5,
  );
