import { chiSquareTail } from "../radiograph/chi-square-tail.ts";

/**
 * The share of the normal distribution with mean 0 and standard deviation 1 that lies below a place.
 * Takes any number. Gives a share, 0 to 1: 0.975 at 1.96.
 * @source plane arithmetic on the tail of chi-square of one degree of freedom: chi-square-tail.ts
 */
export function normalShareBelow(z: number): number {
  const tail = chiSquareTail(z * z, 1) / 2;
  return z < 0 ? tail : 1 - tail;
}
