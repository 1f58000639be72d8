import { expect, it } from "vitest";
import { chiSquareQuantile } from "./chi-square-quantile.ts";

// Printed tables of the chi-square distribution: 5 %, 50 % and 95 % points.
it.each([
  [10, -1.644854, 3.94],
  [10, 0, 9.342],
  [10, 1.644854, 18.307],
  [30, -1.644854, 18.493],
  [30, 1.644854, 43.773],
  [55, -1.644854, 38.958],
])("%d degrees of freedom at z %d: %d", (freedom, z, expected) => {
  expect(chiSquareQuantile(freedom, z) / expected).toBeCloseTo(1, 2);
});

it("stays positive with one degree of freedom, where the approximation is coarse", () => {
  expect(chiSquareQuantile(1, -6)).toBeGreaterThan(0);
  // Table: 3.841 at 95 %.
  expect(Math.abs(chiSquareQuantile(1, 1.644854) - 3.841)).toBeLessThan(0.15);
});
