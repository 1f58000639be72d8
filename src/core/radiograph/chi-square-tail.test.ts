import { describe, expect, it } from "vitest";
import { chiSquareTail } from "./chi-square-tail.ts";

describe("chiSquareTail", () => {
  // Critical values of the printed tables, to the digits printed there (Abramowitz & Stegun 1964, table 26.8, memory).
  it.each([
    [3.84146, 1, 0.05],
    [10.8276, 1, 0.001],
    [5.99146, 2, 0.05],
    [7.81473, 3, 0.05],
    [13.2767, 4, 0.01],
    [11.0705, 5, 0.05],
    [18.307, 10, 0.05],
  ])("of %d with %d degrees of freedom is %d", (value, degreesOfFreedom, p) => {
    expect(chiSquareTail(value, degreesOfFreedom) / p).toBeCloseTo(1, 4);
  });

  it("keeps its digits far out: erfc(5)", () => {
    // Abramowitz & Stegun 1964, table 7.3: erfc(5) = 1.5374597944e-12.
    expect(chiSquareTail(50, 1) / 1.5374597944e-12).toBeCloseTo(1, 9);
  });

  it("is 1 at 0 and joins its two ways of computing without a step", () => {
    expect(chiSquareTail(0, 1)).toBe(1);
    expect(chiSquareTail(0, 3)).toBe(1);
    const below = chiSquareTail(8 - 1e-9, 1);
    const above = chiSquareTail(8 + 1e-9, 1);
    expect(below).toBeGreaterThan(above);
    expect(below - above).toBeLessThan(1e-10);
  });

  it("falls as the value rises, rises with the degrees of freedom", () => {
    for (let value = 0.5; value < 40; value += 0.5)
      for (let freedom = 1; freedom < 12; freedom += 1) {
        expect(chiSquareTail(value + 0.5, freedom)).toBeLessThan(chiSquareTail(value, freedom));
        expect(chiSquareTail(value, freedom + 1)).toBeGreaterThan(chiSquareTail(value, freedom));
      }
  });
});
