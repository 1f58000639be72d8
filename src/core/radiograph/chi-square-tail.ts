/**
 * The chance that chi-square is at least as large as what was found.
 * Takes the value, 0 or more, and the degrees of freedom, a whole number of at least 1. Gives a probability, 0..1.
 * @source Abramowitz M, Stegun IA, Handbook of Mathematical Functions, 1964, 6.5.21, 7.1.5, 7.1.14 (memory)
 */
export function chiSquareTail(value: number, degreesOfFreedom: number): number {
  const x = value / 2;
  const odd = degreesOfFreedom % 2 === 1;
  let tail = odd ? tailOfNormal(x) : Math.exp(-x);
  // Q(a + 1, x) = Q(a, x) + x^a e^-x / gamma(a + 1), from a = 1/2 or 1 upward.
  let term = odd ? 2 * Math.sqrt(x / Math.PI) * Math.exp(-x) : x * Math.exp(-x);
  for (let a = odd ? 1.5 : 2; a <= degreesOfFreedom / 2; a += 1) {
    tail += term;
    term *= x / a;
  }
  return Math.min(1, Math.max(0, tail));
}

/** Q(1/2, x), the complementary error function of the root of x. */
function tailOfNormal(x: number): number {
  const z = Math.sqrt(x);
  if (z < 2) return 1 - erfBySeries(z);
  // A continued fraction, from its 60th level inward, converges fast where the series loses its digits.
  let fraction = z;
  for (let level = 60; level >= 1; level -= 1) fraction = z + level / 2 / fraction;
  return Math.exp(-x) / (fraction * Math.sqrt(Math.PI));
}

function erfBySeries(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 1; Math.abs(term) > 1e-17 && n < 200; n += 1) {
    term *= -(z * z) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}
