import { betaShare } from "./beta-share.ts";

/**
 * The place below which a stated share of a beta distribution lies.
 * Takes the share, 0 to 1, and the two shapes, above 0 (n of N with the prior of Jeffreys: n + 1/2 and N - n + 1/2). Gives
 * a place, 0 to 1, found by halving.
 * @source plane arithmetic on the regularised incomplete beta function: beta-share.ts
 */
export function betaQuantile(share: number, a: number, b: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 1;
  let [low, high] = [0, 1];
  // A double near 0 has digits far below 1e-16: 200 halvings reach them, and the loop ends where no double lies between.
  for (let halving = 0; halving < 200; halving++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (betaShare(middle, a, b) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
