import { describe, expect, it } from "vitest";
import { betaDraw } from "./beta-draw.ts";
import { gammaDraw } from "./gamma-draw.ts";
import { quantile } from "./quantile.ts";
import { seededRandom } from "./seeded-random.ts";

const many = 20_000;
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const drawn = (seed: number, draw: (random: ReturnType<typeof seededRandom>) => number): number[] => {
  const random = seededRandom(seed);
  return Array.from({ length: many }, () => draw(random));
};

describe("gammaDraw", () => {
  // The gamma distribution of scale 1 has mean and variance equal to its shape. Limits are four standard errors: the
  // variance of a squared deviation is 2 k^2 + 6 k.
  it.each([0.5, 1, 2.5, 40.5])("of shape %d has its mean and variance", (shape) => {
    const values = drawn(3, (random) => gammaDraw(random, shape));
    expect(Math.min(...values)).toBeGreaterThan(0);
    expect(Math.abs(mean(values) - shape)).toBeLessThan(4 * Math.sqrt(shape / many));
    const spread = mean(values.map((value) => (value - shape) ** 2));
    expect(Math.abs(spread - shape)).toBeLessThan(4 * Math.sqrt((2 * shape ** 2 + 6 * shape) / many));
  });

  it("of shape 1 is the exponential distribution: 1 - exp(-x) lies below x", () => {
    const values = drawn(5, (random) => gammaDraw(random, 1)).sort((a, b) => a - b);
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      const place = -Math.log(1 - share);
      const error = Math.sqrt((share * (1 - share)) / many) / (1 - share);
      expect(Math.abs(quantile(values, share) - place)).toBeLessThan(4 * error);
    }
  });
});

describe("betaDraw", () => {
  // Mean a/(a+b), variance ab/((a+b)^2 (a+b+1)); limits four standard errors of the mean, 6 % for the variance.
  it.each([
    [0.5, 0.5],
    [60.5, 0.5],
    [5, 2],
    [318, 40],
  ])("of %d and %d has its mean and variance", (a, b) => {
    const values = drawn(7, (random) => betaDraw(random, a, b));
    const variance = (a * b) / ((a + b) ** 2 * (a + b + 1));
    expect(Math.abs(mean(values) - a / (a + b))).toBeLessThan(4 * Math.sqrt(variance / many));
    expect(mean(values.map((value) => (value - a / (a + b)) ** 2)) / variance).toBeGreaterThan(0.94);
    expect(mean(values.map((value) => (value - a / (a + b)) ** 2)) / variance).toBeLessThan(1.06);
    expect(values.every((value) => value >= 0 && value <= 1)).toBe(true);
  });

  // Closed forms: Beta(1,1) is even, Beta(3,1) has x^3 below x, Beta(1/2,1/2) has (2/pi) asin sqrt x.
  it.each([
    [1, 1, (share: number) => share],
    [3, 1, (share: number) => Math.cbrt(share)],
    [0.5, 0.5, (share: number) => Math.sin((share * Math.PI) / 2) ** 2],
  ])("of %d and %d has the quantiles of its closed form", (a, b, place) => {
    const values = drawn(11, (random) => betaDraw(random, a, b)).sort((x, y) => x - y);
    for (const share of [0.025, 0.25, 0.5, 0.75, 0.975])
      expect(Math.abs(quantile(values, share) - place(share))).toBeLessThan(0.015);
  });

  it("mirrored shapes are mirrored shares: the means add up to 1", () => {
    const [one, other] = [drawn(13, (r) => betaDraw(r, 4, 9)), drawn(17, (r) => betaDraw(r, 9, 4))];
    expect(mean(one) + mean(other)).toBeCloseTo(1, 2);
  });

  it("the same seed gives the same draws", () => {
    expect(drawn(1, (r) => betaDraw(r, 2, 3)).slice(0, 5)).toEqual(drawn(1, (r) => betaDraw(r, 2, 3)).slice(0, 5));
  });
});
