/**
 * How many standard errors to each side hold a stated share of Student's t distribution (level 0.95 gives 2.228 for 10
 * degrees of freedom).
 * Takes whole degrees of freedom, at least 1, and a level above 0 and below 1. Found by halving to the last digit.
 * @source Abramowitz M, Stegun IA, Handbook of Mathematical Functions, 1964, 26.7.3 and 26.7.4 (memory)
 */
export function studentReach(degreesOfFreedom: number, level: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degreesOfFreedom) < level) low = middle;
    else high = middle;
  }
  return Math.tan((low + high) / 2) * Math.sqrt(degreesOfFreedom);
}

/** The share within an angle whose tangent is t over the root of the degrees of freedom. */
function shareWithin(angle: number, degreesOfFreedom: number): number {
  const odd = degreesOfFreedom % 2 === 1;
  if (degreesOfFreedom === 1) return (2 * angle) / Math.PI;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  let term = odd ? cosine : 1;
  let sum = term;
  for (let k = odd ? 3 : 2; k <= degreesOfFreedom - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}
