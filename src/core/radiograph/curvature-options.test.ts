import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { knownCanal, withNoise } from "../../../test/studies/known-canals.ts";
import { measured } from "./curvature/measured-for-tests.ts";

describe("properties", () => {
  const shape = { l1: 8, radius: 6, turnDeg: 40, l2: 3 };
  const points = withNoise(knownCanal(shape, 0.5), 0.03, 5);
  const reference = measured({ points, sigmaMm: 0.03 });

  it("moving and turning the points changes nothing", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3.1, max: 3.1, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (angle, shift) => {
          const moved = points.map(([x, y]) => [
            x * Math.cos(angle) - y * Math.sin(angle) + shift,
            x * Math.sin(angle) + y * Math.cos(angle) - shift,
          ]);
          const found = measured({ points: moved, sigmaMm: 0.03 });
          expect(found.schneiderDeg).toBeCloseTo(reference.schneiderDeg, 2);
          expect(found.pruettRadiusMm).toBeCloseTo(reference.pruettRadiusMm ?? 0, 2);
          expect(found.lengthMm).toBeCloseTo(reference.lengthMm, 3);
          expect(found.bends[0]?.side).toBe("right");
        },
      ),
      { numRuns: 12, seed: 3 },
    );
  });

  it("a mirror image turns to the other side, with the same angles", () => {
    const found = measured({ points: points.map(([x, y]) => [-x, y]), sigmaMm: 0.03 });
    expect(found.bends[0]?.side).toBe("left");
    expect(found.pruettDeg).toBeCloseTo(reference.pruettDeg, 2);
    expect(found.profile[20]?.curvaturePerMm).toBeCloseTo(-(reference.profile[20]?.curvaturePerMm ?? 0), 3);
  });

  it("scaling points and noise scales lengths and leaves angles", () => {
    const found = measured({ points: points.map(([x, y]) => [2 * x, 2 * y]), sigmaMm: 0.06 });
    expect(found.lengthMm).toBeCloseTo(2 * reference.lengthMm, 3);
    expect(found.pruettRadiusMm).toBeCloseTo(2 * (reference.pruettRadiusMm ?? 0), 2);
    expect(found.schneiderDeg).toBeCloseTo(reference.schneiderDeg, 2);
    expect(found.maxCurvaturePerMm).toBeCloseTo(reference.maxCurvaturePerMm / 2, 3);
  });

  it("read from the foramen, length, turn and radius stay and the bend lies on the other side", () => {
    const found = measured({ points: [...points].reverse(), sigmaMm: 0.03 });
    expect(found.lengthMm).toBeCloseTo(reference.lengthMm, 3);
    expect(found.pruettDeg).toBeCloseTo(reference.pruettDeg, 2);
    expect(found.pruettRadiusMm).toBeCloseTo(reference.pruettRadiusMm ?? 0, 2);
    expect(found.bends[0]?.side).toBe("left");
    // L1 and L2 have changed places: Schneider's angle from the other end is another one.
    expect(found.schneiderDeg).toBeGreaterThan(reference.schneiderDeg + 3);
  });

  it("the same points give the same answer", () => {
    expect(measured({ points, sigmaMm: 0.03 })).toEqual(reference);
  });
});

describe("options", () => {
  const points = withNoise(knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 2 }, 0.25), 0.05, 21);

  it("smoothing: auto is the default, a number is the penalty, and more of it gives a smoother profile", () => {
    const auto = measured({ points, sigmaMm: 0.05 });
    expect(measured({ points, sigmaMm: 0.05, smoothing: "auto" })).toEqual(auto);
    expect(auto.smoothing.chosenBy).toBe("stated noise");
    expect(measured({ points }).smoothing.chosenBy).toBe("estimated noise");
    const roughness = [0, 0.1, 1000].map((smoothing) => {
      const { profile, smoothing: used } = measured({ points, sigmaMm: 0.05, smoothing });
      expect(used).toEqual({ penalty: smoothing, chosenBy: "input" });
      return profile.reduce(
        (sum, one, index) => sum + Math.abs(one.curvaturePerMm - (profile[index - 1] ?? one).curvaturePerMm),
        0,
      );
    });
    expect(roughness[0]).toBeGreaterThan(roughness[1] ?? 0);
    expect(roughness[1]).toBeGreaterThan(roughness[2] ?? 0);
  });

  it("a larger stated noise widens the intervals", () => {
    const width = (sigmaMm: number) => {
      const { pruettDeg } = measured({ points, sigmaMm }).intervals;
      return (pruettDeg?.high ?? 0) - (pruettDeg?.low ?? 0);
    };
    expect(width(0.1)).toBeGreaterThan(1.5 * width(0.05));
  });

  it("noise of 0 is read as the finest that is believed, and points that scatter more are said to", () => {
    const exact = knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 2 }, 0.25);
    expect(measured({ points: exact, sigmaMm: 0 }).pruettRadiusMm).toBeCloseTo(5, 3);
    expect(measured({ points, sigmaMm: 0.01 }).cautions.join()).toContain("more than stated");
  });

  it("an unsure scale widens lengths and leaves angles", () => {
    const sure = measured({ points, sigmaMm: 0.05 }).intervals;
    const unsure = measured({ points, sigmaMm: 0.05, scaleRelativeSigma: 0.03 }).intervals;
    expect(unsure.schneiderDeg).toEqual(sure.schneiderDeg);
    // 3 % of about 14.9 mm, times 1.96 each way: about 1.75 mm between the ends.
    const width = (unsure.lengthMm?.high ?? 0) - (unsure.lengthMm?.low ?? 0);
    expect(width).toBeGreaterThan(1.5);
    expect(width).toBeLessThan(2.1);
  });
});
