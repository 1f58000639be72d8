import { describe, expect, it } from "vitest";
import { chiSquare2x2 } from "./chi-square-2x2.ts";

describe("chi-square of two by two", () => {
  // The sum of (found - expected)^2 / expected over the four fields.
  it("is the sum over its four fields, and the same either way round", () => {
    const [one, other] = [
      { events: 7, n: 20 },
      { events: 15, n: 25 },
    ];
    const share = 22 / 45;
    const field = (found: number, expected: number) => (found - expected) ** 2 / expected;
    const known =
      field(7, 20 * share) + field(13, 20 * (1 - share)) + field(15, 25 * share) + field(10, 25 * (1 - share));
    expect(chiSquare2x2(one, other).chiSquare).toBeCloseTo(known, 9);
    expect(chiSquare2x2(other, one)).toEqual(chiSquare2x2(one, other));
    expect(chiSquare2x2(one, one)).toEqual({ chiSquare: 0, p: 1 });
  });
});
