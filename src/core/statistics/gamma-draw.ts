import type { SeededRandom } from "./seeded-random.ts";

/**
 * A draw from the gamma distribution of scale 1.
 * Takes the stream and the shape, above 0. Gives a number above 0.
 * @source Marsaglia G, Tsang WW, "A simple method for generating gamma variables", ACM Trans Math Softw 2000;26:363-372,
 * with their step for shapes below 1 (memory)
 */
export function gammaDraw(random: SeededRandom, shape: number): number {
  // A draw of 0 would leave a share of nothing in nothing: 1 - u is never 0.
  if (shape < 1) return gammaDraw(random, shape + 1) * (1 - random.uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    const u = 1 - random.uniform();
    if (v > 0 && Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
