import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveAngle } from "./solve-angle.ts";

const radians = (value: number): number => (value * Math.PI) / 180;
const sure = { buccalSigmaMm: 0.1, sigmaMm: 0.02 };

describe("an angle from two landmarks of known buccolingual separation (C12)", () => {
  it("is found again among at most two, for both kinds of receptor", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(-10, 10), number(-55, 55), number(-6, 6), number(3, 8), (first, second, x, y) => {
        for (const receptor of ["turnsWithBeam", "fixed"] as const) {
          const on = (angle: number): number =>
            receptor === "fixed" ? x + y * Math.tan(angle) : x * Math.cos(angle) + y * Math.sin(angle);
          const seen = {
            angle: radians(first),
            firstMm: on(radians(first)),
            secondMm: on(radians(second)),
            buccalMm: y,
            ...sure,
          };
          const found = solveAngle(seen, receptor).map(({ angle }) => (angle * 180) / Math.PI);
          expect(found.length).toBeLessThanOrEqual(2);
          expect(Math.min(...found.map((one) => Math.abs(one - second)))).toBeLessThan(1e-4);
        }
      }),
    );
  });

  it("is none where the landmarks are not apart in depth, or farther apart on the film than in truth", () => {
    const seen = { angle: 0, firstMm: 2, secondMm: 3, ...sure };
    expect(solveAngle({ ...seen, buccalMm: 0 }, "turnsWithBeam")).toEqual([]);
    expect(solveAngle({ ...seen, secondMm: 9, buccalMm: 3 }, "turnsWithBeam")).toEqual([]);
    expect(solveAngle({ ...seen, secondMm: 30, buccalMm: 3 }, "fixed")).toEqual([]);
  });

  it("is as unsure as small changes of what is seen move it", () => {
    for (const receptor of ["turnsWithBeam", "fixed"] as const) {
      const at = (change: Partial<Record<"firstMm" | "secondMm" | "buccalMm", number>>): number => {
        const seen = { angle: radians(5), firstMm: 2, secondMm: 3.6, buccalMm: 4, ...sure, ...change };
        return Math.min(...solveAngle(seen, receptor).map(({ angle }) => angle));
      };
      const moved = (of: number, size: number): number => ((of - at({})) / 1e-6) * size;
      const clicks = Math.SQRT2 * sure.sigmaMm;
      const parts = [
        moved(at({ firstMm: 2 + 1e-6 }), clicks),
        moved(at({ secondMm: 3.6 + 1e-6 }), clicks),
        moved(at({ buccalMm: 4 + 1e-6 }), sure.buccalSigmaMm),
      ];
      const found = solveAngle({ angle: radians(5), firstMm: 2, secondMm: 3.6, buccalMm: 4, ...sure }, receptor);
      expect(found.find(({ angle }) => angle === at({}))?.sigma).toBeCloseTo(Math.hypot(...parts), 4);
    }
  });
});
