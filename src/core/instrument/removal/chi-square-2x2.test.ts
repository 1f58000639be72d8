import { describe, expect, it } from "vitest";
import { chiSquare2x2 } from "./chi-square-2x2.ts";
import { seenAndHidden } from "./seen-and-hidden.ts";

describe("chi-square of two by two", () => {
  // Nevares 2012 (seen): 58 of 68 and 21 of 44; recomputed outside: 18.14, P = 2.1e-5, a difference of 37.6 points.
  it("of the seen and the hidden fragments is not what is printed (C7)", () => {
    const found = seenAndHidden();
    expect(found.chiSquare).toBeCloseTo(18.14, 2);
    expect(found.p).toBeCloseTo(2.1e-5, 6);
    expect(found.differencePoints).toBeCloseTo(37.6, 1);
    expect(found.printedP).toBe(0.0009);
  });

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
