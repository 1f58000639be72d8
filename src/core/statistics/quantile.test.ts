import { expect, it } from "vitest";
import { quantile } from "./quantile.ts";

// By hand: the place is share * (n - 1), counted from 0.
it.each([
  [[1, 2, 3, 4], 0, 1],
  [[1, 2, 3, 4], 1, 4],
  [[1, 2, 3, 4], 0.5, 2.5],
  [[1, 2, 3, 4], 0.25, 1.75],
  [[10, 20, 30, 40, 50], 0.025, 11],
  [[7], 0.3, 7],
])("quantile of %j at %d is %d", (sorted, share, expected) => {
  expect(quantile(sorted, share)).toBeCloseTo(expected, 12);
});
