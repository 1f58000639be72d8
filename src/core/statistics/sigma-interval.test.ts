import { describe, expect, it } from "vitest";
import { seededRandom } from "./seeded-random.ts";
import { sigmaInterval } from "./sigma-interval.ts";

describe("sigmaInterval", () => {
  // Abramowitz & Stegun 1964, table 26.8 (memory): 2.5 % and 97.5 % points of chi-square.
  it.each([
    [5, 0.831211, 12.8325],
    [10, 3.24697, 20.4832],
    [40, 24.4331, 59.3417],
    [100, 74.2219, 129.561],
  ])("with %d degrees of freedom has the printed points %d and %d", (freedom, low, high) => {
    const interval = sigmaInterval(1, freedom, 0.95);
    expect(interval.high).toBeCloseTo(Math.sqrt(1 / low), 5);
    expect(interval.low).toBeCloseTo(Math.sqrt(1 / high), 5);
    expect(interval.level).toBe(0.95);
  });

  it("grows with the errors as they grow, and is 0 where there are none", () => {
    const [one, three] = [sigmaInterval(7, 24, 0.95), sigmaInterval(63, 24, 0.95)];
    expect(three.low / one.low).toBeCloseTo(3, 12);
    expect(three.high / one.high).toBeCloseTo(3, 12);
    expect(sigmaInterval(0, 24, 0.95)).toEqual({ low: 0, high: 0, level: 0.95 });
  });

  it("holds the true sigma in 95 % of 2 000 seeded samples, at few and at many degrees of freedom", () => {
    const { normal } = seededRandom(41);
    for (const freedom of [10, 120, 800]) {
      const held = Array.from({ length: 2_000 }, () => {
        let sum = 0;
        for (let draw = 0; draw < freedom; draw++) sum += (0.8 * normal()) ** 2;
        const { low, high } = sigmaInterval(sum, freedom, 0.95);
        return low <= 0.8 && 0.8 <= high;
      }).filter(Boolean).length;
      // Three standard errors of a share of 95 % in 2 000.
      expect(Math.abs(held / 2_000 - 0.95)).toBeLessThan(0.0147);
    }
  });
});
