import { describe, expect, it } from "vitest";
import { normalShareBelow } from "./normal-share.ts";

describe("normalShareBelow", () => {
  // Abramowitz M, Stegun IA, Handbook of Mathematical Functions, 1964, table 26.1 (memory).
  it.each([
    [0, 0.5],
    [1, 0.841344746],
    [1.96, 0.975002105],
    [-1, 0.158655254],
    [-2.5, 0.006209665],
  ])("below %d lies %d", (z, share) => {
    expect(normalShareBelow(z)).toBeCloseTo(share, 8);
  });

  it("what lies below and what lies above are the whole", () => {
    for (const z of [0.1, 0.7, 2.2, 5]) expect(normalShareBelow(z) + normalShareBelow(-z)).toBeCloseTo(1, 12);
  });
});
