import { describe, expect, it } from "vitest";
import { seededRandom } from "./seeded-random.ts";
import { smoothingSpline } from "./smoothing-spline.ts";

const places = Array.from({ length: 81 }, (_, index) => index / 8);

describe("smoothingSpline", () => {
  it.each([0.001, 1, 1e5])("keeps a parabola whatever the penalty (%d): its third differences are 0", (penalty) => {
    const values = [places.map((s) => 2 - s + 0.3 * s * s)];
    const spline = smoothingSpline({ places, values, by: { penalty } });
    for (const s of [0, 0.33, 5, 9.99]) {
      const [line] = spline.at(s);
      expect(line?.value).toBeCloseTo(2 - s + 0.3 * s * s, 5);
      expect(line?.first).toBeCloseTo(-1 + 0.6 * s, 4);
      expect(line?.second).toBeCloseTo(0.6, 4);
    }
  });

  it("a heavy penalty leaves the three coefficients of a parabola, none of it nearly one for each knot", () => {
    const values = [places.map((s) => Math.sin(s))];
    expect(smoothingSpline({ places, values, by: { penalty: 1e9 } }).effective).toBeCloseTo(3, 1);
    expect(smoothingSpline({ places, values, by: { penalty: 0 } }).effective).toBeGreaterThan(33);
  });

  it("told the noise, comes nearer to a sine wave and its bending than the points themselves", () => {
    const { normal } = seededRandom(3);
    const values = [places.map((s) => Math.sin(s) + 0.1 * normal())];
    const spline = smoothingSpline({ places, values, by: { variance: 0.01, noisyValues: 1 } });
    const error = (of: (s: number) => number) =>
      Math.sqrt(places.reduce((sum, s) => sum + of(s) ** 2, 0) / places.length);
    expect(error((s) => (spline.at(s)[0]?.value ?? 0) - Math.sin(s))).toBeLessThan(0.05);
    const inner = places.filter((s) => s > 1 && s < 9);
    const bends = inner.map((s) => ((spline.at(s)[0]?.second ?? 0) + Math.sin(s)) ** 2);
    expect(Math.sqrt(bends.reduce((sum, one) => sum + one, 0) / inner.length)).toBeLessThan(0.3);
  });

  it("more noise told means more penalty", () => {
    const { normal } = seededRandom(4);
    const values = [places.map((s) => Math.sin(s) + 0.05 * normal())];
    const penalty = (variance: number) => smoothingSpline({ places, values, by: { variance, noisyValues: 1 } }).penalty;
    expect(penalty(0.04)).toBeGreaterThan(penalty(0.0025));
  });
});
