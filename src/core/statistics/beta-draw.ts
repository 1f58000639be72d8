import { gammaDraw } from "./gamma-draw.ts";
import type { SeededRandom } from "./seeded-random.ts";

/**
 * A draw from the beta distribution, as the share of one gamma draw in the sum of two.
 * Takes the stream and the two shapes, above 0 (n of N with the prior of Jeffreys: n + 1/2 and N - n + 1/2). Gives a share,
 * 0 to 1.
 * @source Devroye L, Non-uniform random variate generation, 1986, chapter IX.4 (memory)
 */
export function betaDraw(random: SeededRandom, a: number, b: number): number {
  const [first, second] = [gammaDraw(random, a), gammaDraw(random, b)];
  return first / (first + second);
}
