import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wilsonInterval } from "./wilson-interval.ts";

describe("Wilson's interval of a share", () => {
  // Newcombe 1998, Table I (recalled; four digits are printed).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("of %i in %i is as Newcombe prints it", (events, n, low, high) => {
    const found = wilsonInterval(events, n);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  // Answers of the R package binom, kept as reference values of an open statistics library (read): all printed digits.
  it.each([
    [18, 20, 0.6989663547716, 0.9721335187862],
    [4, 20, 0.0806576626, 0.4160174323],
    [4, 200, 0.0078044264, 0.0502870869],
    [19, 38, 0.348499283643951, 0.651500716356049],
    [0, 30, 0, 0.1135133932],
  ])("of %i in %i is as R gives it", (events, n, low, high) => {
    const found = wilsonInterval(events, n);
    expect(found.low).toBeCloseTo(low, 9);
    expect(found.high).toBeCloseTo(high, 9);
  });

  it("holds the share, stays within 0 and 1, and is turned over with it (property)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2_000_000 }), fc.double({ min: 0, max: 1, noNaN: true }), (n, part) => {
        const events = Math.round(part * n);
        const { low, high } = wilsonInterval(events, n);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(events / n + 1e-12);
        expect(high).toBeGreaterThanOrEqual(events / n - 1e-12);
        expect(wilsonInterval(n - events, n).high).toBeCloseTo(1 - low, 10);
      }),
      { numRuns: 200, seed: 4 },
    );
  });
});
