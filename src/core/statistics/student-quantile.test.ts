import { describe, expect, it } from "vitest";
import { studentReach } from "./student-quantile.ts";

describe("studentReach", () => {
  // The printed table: Abramowitz & Stegun 1964, table 26.10 (memory), to the digits printed there.
  it.each([
    [1, 0.95, 12.706],
    [2, 0.95, 4.303],
    [3, 0.95, 3.182],
    [4, 0.95, 2.776],
    [5, 0.95, 2.571],
    [10, 0.95, 2.228],
    [16, 0.95, 2.12],
    [30, 0.95, 2.042],
    [120, 0.95, 1.98],
    [5, 0.99, 4.032],
    [10, 0.5, 0.7],
  ])("with %d degrees of freedom at level %d is %d", (freedom, level, reach) => {
    expect(studentReach(freedom, level)).toBeCloseTo(reach, 3);
  });

  it("comes down to the normal distribution's 1.96, and never below", () => {
    let before = Number.POSITIVE_INFINITY;
    for (const freedom of [1, 2, 3, 5, 8, 13, 60, 200, 799]) {
      const reach = studentReach(freedom, 0.95);
      expect(reach).toBeLessThan(before);
      expect(reach).toBeGreaterThan(1.959964);
      before = reach;
    }
    expect(before).toBeCloseTo(1.963, 3);
  });
});
