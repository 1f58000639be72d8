import { expect, it } from "vitest";
import { seededRandom } from "./seeded-random.ts";

it("the same seed gives the same stream, another seed another one", () => {
  const streams = [5, 5, 6].map((seed) => {
    const { uniform, normal } = seededRandom(seed);
    return [uniform(), normal(), normal(), uniform()];
  });
  expect(streams[0]).toEqual(streams[1]);
  expect(streams[0]).not.toEqual(streams[2]);
});

// Limits are four standard errors of 20 000 draws: a good stream misses one in 16 000 times, and the seeds are fixed.
it.each([1, 2, 77])("seed %d: even numbers have mean 1/2 and variance 1/12 and do not follow each other", (seed) => {
  const { uniform } = seededRandom(seed);
  const drawn = Array.from({ length: 20_000 }, uniform);
  expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...drawn)).toBeLessThan(1);
  expect(Math.abs(mean(drawn) - 0.5)).toBeLessThan(0.0082);
  expect(Math.abs(mean(drawn.map((u) => (u - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.0022);
  expect(Math.abs(mean(drawn.slice(1).map((u, at) => (u - 0.5) * ((drawn[at] ?? 0) - 0.5))))).toBeLessThan(0.0024);
});

it.each([1, 2, 77])("seed %d: normal numbers have mean 0, variance 1, fourth moment 3 and 5 %% beyond 1.96", (seed) => {
  const { normal } = seededRandom(seed);
  const drawn = Array.from({ length: 20_000 }, normal);
  expect(Math.abs(mean(drawn))).toBeLessThan(0.029);
  expect(Math.abs(mean(drawn.map((z) => z ** 2)) - 1)).toBeLessThan(0.04);
  expect(Math.abs(mean(drawn.map((z) => z ** 4)) - 3)).toBeLessThan(0.28);
  expect(Math.abs(mean(drawn.map((z) => (Math.abs(z) > 1.96 ? 1 : 0))) - 0.05)).toBeLessThan(0.0062);
});

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
