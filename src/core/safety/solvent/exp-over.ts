/**
 * The divided difference of the exponential function over two or three places, none above 0: (e^x - e^y) / (x - y) and the next one.
 * Smooth where places meet, so that equal rates of a room and of a source need no other formula.
 * Takes two or three numbers in any order.
 * Gives a number above 0, or 0 where it is too small to be written.
 * @source calculus; docs/methods/solvent.md C6
 */
export function expOver(x: number, y: number, z?: number): number {
  if (z === undefined) return pair(Math.min(x, y), Math.max(x, y));
  const least = Math.min(x, y, z);
  const most = Math.max(x, y, z);
  const middle = Math.max(Math.min(x, y), Math.min(Math.max(x, y), z));
  const spread = most - least;
  // Far apart the difference of two differences is as exact as they are; close by its digits would cancel.
  if (spread > 1) return (pair(middle, most) - pair(least, middle)) / spread;
  return Math.exp(most) * closeTriple(least - most, middle - most);
}

function pair(less: number, more: number): number {
  const apart = less - more;
  return Math.exp(more) * (apart === 0 ? 1 : Math.expm1(apart) / apart);
}

/** Over u, v and 0, both at most 1 below: the sum of their complete homogeneous polynomials over (k + 2)!. */
function closeTriple(u: number, v: number): number {
  let polynomial = 1;
  let power = 1;
  let factorial = 2;
  let sum = 0.5;
  for (let k = 1; k <= 20; k += 1) {
    power *= v;
    polynomial = u * polynomial + power;
    factorial *= k + 2;
    sum += polynomial / factorial;
  }
  return sum;
}
