import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expOver } from "./exp-over.ts";

const place = fc.double({ min: -60, max: 0, noNaN: true });

describe("the divided difference of exp", () => {
  // By hand: where places meet it is the derivative, of three of them half the second.
  it.each([
    [[0, 0], 1],
    [[-1, -1], Math.exp(-1)],
    [[0, -1], 1 - Math.exp(-1)],
    [[-2, 0], (1 - Math.exp(-2)) / 2],
  ] as [[number, number], number][])("over %j is %d", (places, known) => {
    expect(expOver(...places)).toBeCloseTo(known, 15);
  });

  it.each([
    [[0, 0, 0], 0.5],
    [[-1, -1, -1], Math.exp(-1) / 2],
    // (x - 1 + e^-x) / x^2 at x = 0.5, 2 and 1000.
    [[0, -0.5, 0], (0.5 - 1 + Math.exp(-0.5)) / 0.25],
    [[0, 0, -2], (2 - 1 + Math.exp(-2)) / 4],
    [[-1000, 0, 0], 999 / 1e6],
    // ((1 - e^-1) - (e^-1 - e^-2)) / 2.
    [[-2, -1, 0], (1 - Math.exp(-1)) ** 2 / 2],
  ] as [[number, number, number], number][])("over %j is %d", (places, known) => {
    expect(expOver(...places) / known).toBeCloseTo(1, 13);
  });

  it("over three is the difference of those over two (property)", () => {
    fc.assert(
      fc.property(place, place, place, (x, y, z) => {
        const whole = expOver(x, y, z) * (z - x);
        const parts = expOver(y, z) - expOver(x, y);
        expect(Math.abs(whole - parts)).toBeLessThanOrEqual(1e-14 * Math.max(expOver(y, z), expOver(x, y)) * 4);
      }),
    );
  });

  it("does not depend on the order of its places, nor jump where the way of computing changes (property)", () => {
    fc.assert(
      fc.property(place, place, place, (x, y, z) => {
        expect(expOver(z, x, y)).toBe(expOver(x, y, z));
        expect(expOver(y, x)).toBe(expOver(x, y));
      }),
    );
    for (const inner of [0, -0.25, -0.5, -1])
      expect(expOver(0, inner, -1 + 1e-13) / expOver(0, inner, -1 - 1e-13)).toBeCloseTo(1, 11);
  });
});
