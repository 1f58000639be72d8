import { describe, expect, it } from "vitest";
import { seenAndHidden } from "./seen-and-hidden.ts";

describe("seen against hidden", () => {
  // Nevares 2012 (seen): 58 of 68 and 21 of 44; recomputed outside: 18.14, P = 2.1e-5, a difference of 37.6 points.
  it("of the seen and the hidden fragments is not what is printed (C7)", () => {
    const found = seenAndHidden();
    expect(found.chiSquare).toBeCloseTo(18.14, 2);
    expect(found.p).toBeCloseTo(2.1e-5, 6);
    expect(found.differencePoints).toBeCloseTo(37.6, 1);
    expect(found.printedP).toBe(0.0009);
  });
});
