/**
 * The natural logarithm of the gamma function.
 * Takes a number above 0. Right to 14 digits.
 * @source Lanczos C, A precision approximation of the gamma function, SIAM J Numer Anal, 1964;1:86-96 (memory), with the
 * nine coefficients for g = 7 that are in general use (memory)
 */
export function logGamma(x: number): number {
  // Below 1/2 the sum loses digits: gamma(x) gamma(1 - x) = pi / sin(pi x).
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const sum = lanczos.reduce((total, coefficient, at) => total + coefficient / (x - 1 + at + 1), first);
  const base = x - 0.5 + g;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(base) - base + Math.log(sum);
}

const g = 7;
const first = 0.99999999999980993;
const lanczos = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];
