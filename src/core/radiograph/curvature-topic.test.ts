import { describe, expect, it } from "vitest";
import { courseOfCurvature, knownCanal, withNoise } from "../../../test/studies/known-canals.ts";
import { measured } from "./curvature/measured-for-tests.ts";

/**
 * Worked canals by plane geometry (constructed point by point, not by this code): L1, R, t, L2; then angle of Schneider,
 * access angle, height and its distance, largest height, length, chord.
 */
const worked: readonly (readonly number[])[] = [
  [10, 5, 60, 0, 30.0, 9.896091, 1.718619, 9.851211, 1.793014, 15.235988, 14.546565],
  [10, 5, 60, 3, 41.167636, 17.851101, 3.065444, 9.518564, 3.306162, 18.235988, 16.630794],
  [8, 10, 30, 0, 15.0, 5.883981, 0.820115, 7.957852, 0.8728, 13.235988, 13.068853],
  [8, 10, 30, 4, 21.533088, 11.466868, 1.59041, 7.840319, 1.790012, 17.235988, 16.799421],
  [9, 2, 45, 0, 22.5, 3.219423, 0.50544, 8.985796, 0.508596, 10.570796, 10.430675],
  [0, 5, 60, 0, 30.0, 30.0, 0.0, 0.0, 0.669873, 5.235988, 5.0],
  [12, 6.17, 59.04, 0, 29.52, 9.829742, 2.048652, 11.823833, 2.139231, 18.35783, 17.548563],
  [10, 5, 90, 0, 45.0, 18.434949, 3.162278, 9.486833, 3.418861, 17.853982, 15.811388],
  [10, 15, 27, 0, 13.5, 5.555032, 0.968018, 9.953037, 1.038463, 17.068583, 16.889174],
  [10, 13, 35, 0, 17.5, 7.670385, 1.33474, 9.910523, 1.451059, 17.941248, 17.614099],
];

describe("closed forms (C7 to C11)", () => {
  // Noiseless points carry rounding only, so that the fit finds the exact family: 1e-3 is far above its step.
  it.each(worked.flatMap((row, index) => [[0.1, 0.37, 0.5][index % 3] ?? 0.5, 1].map((step) => [step, ...row])))(
    "a point every %d mm, L1 %d R %d t %d L2 %d",
    (step, l1 = 0, radius = 0, turnDeg = 0, l2 = 0, ...expected) => {
      const found = measured({ points: knownCanal({ l1, radius, turnDeg, l2 }, step) });
      expect(found.pruettDeg).toBeCloseTo(turnDeg, 3);
      expect(found.pruettRadiusMm).toBeCloseTo(radius, 3);
      expect(found.totalTurnDeg).toBeCloseTo(turnDeg, 3);
      expect(found.maxCurvaturePerMm).toBeCloseTo(1 / radius, 4);
      const order = [
        "schneiderDeg",
        "accessAngleDeg",
        "heightMm",
        "heightDistanceMm",
        "heightMaxMm",
        "lengthMm",
      ] as const;
      order.forEach((name, index) => {
        expect(found[name], name).toBeCloseTo(expected[index] ?? Number.NaN, 3);
      });
      expect(found.chordMm).toBeCloseTo(expected[6] ?? Number.NaN, 3);
      for (const [name, { low, high }] of Object.entries(found.intervals)) {
        const value = found[name as "lengthMm"];
        expect(low, name).toBeLessThanOrEqual(value);
        expect(high, name).toBeGreaterThanOrEqual(value);
      }
    },
  );

  it("five points tell a straight part and an arc without an apical straight part", () => {
    // Chords and tangents drawn by hand: L1 10, R 5, t 60, so S = 30, and tan a = 2.5 / 14.330127.
    const found = measured({
      points: [
        [0, 0],
        [0, 5],
        [0, 10],
        [0.669873, 12.5],
        [2.5, 14.330127],
      ],
    });
    expect(found.fit).toBe("straight-arc");
    expect(found.schneiderDeg).toBeCloseTo(30, 2);
    expect(found.pruettDeg).toBeCloseTo(60, 2);
    expect(found.pruettRadiusMm).toBeCloseTo(5, 3);
    expect(found.accessAngleDeg).toBeCloseTo(9.896, 2);
    expect(found.bends).toHaveLength(1);
    expect(found.bends[0]?.side).toBe("right");
  });

  // t - s/(2R) by hand for R 5, t 60; with L2 3 the chord of 2 mm is straight, of 4 mm reaches 1 mm into the arc:
  // q = 1/5, atan2(5(1-cos q), 5 sin q + 3) = 1.429708 degrees.
  it.each([
    [0, 1, 54.270422],
    [0, 2, 48.540844],
    [0, 3, 42.811266],
    [3, 2, 60],
    [3, 4, 58.570292],
  ])("Weine with L2 %d and s %d", (l2, weineLengthMm, expected) => {
    const points = knownCanal({ l1: 10, radius: 5, turnDeg: 60, l2 }, 0.5);
    expect(measured({ points, weineLengthMm }).weineDeg).toBeCloseTo(expected, 3);
  });

  it("takes 2 mm for Weine's line where no length is given, and says so where the canal is too short for it", () => {
    const points = knownCanal({ l1: 2, radius: 5, turnDeg: 60, l2: 0 }, 0.25);
    expect(measured({ points }).weineDeg).toBeCloseTo(measured({ points, weineLengthMm: 2 }).weineDeg ?? 0, 9);
    const found = measured({ points, weineLengthMm: 12 });
    expect(found.weineDeg).toBeUndefined();
    expect(found.notComputed.map(({ name }) => name)).toEqual(["weineDeg"]);
  });

  it("of a ramped bend the circle of Pruett touches both tangents and the tightest radius is smaller", () => {
    // Curvature rises to 1/4 over 2 mm, stays 2 mm, falls over 2 mm: t = (2 + 2) / 4 = 1 rad.
    const points = courseOfCurvature((s) => Math.min(0.25, Math.max(0, Math.min(s - 6, 12 - s) / 8)), 15, 0.25);
    const found = measured({ points });
    expect(found.fit).toBe("straight-ramped bend-straight");
    expect(found.pruettDeg).toBeCloseTo(57.2958, 1);
    expect(found.minRadiusMm).toBeCloseTo(4, 1);
    expect(found.pruettRadiusMm ?? 0).toBeGreaterThan(5);
    // By the construction: T = distance from departure to the crossing of the tangents, here by symmetry
    // half the chord over cos(t/2).
    const [a, b] = [points[24], points[48]];
    const chord = Math.hypot((b?.[0] ?? 0) - (a?.[0] ?? 0), (b?.[1] ?? 0) - (a?.[1] ?? 0));
    expect(found.pruettRadiusMm).toBeCloseTo(chord / 2 / Math.cos(0.5) / Math.tan(0.5), 1);
  });
});

describe("S-shaped courses (C6)", () => {
  const opposite = courseOfCurvature((s) => (s > 4 && s < 7 ? 0.2 : s > 9 && s < 12 ? -0.25 : 0), 14, 0.25);

  it("two bends to opposite sides are two bends and never one cancelled angle", () => {
    const { bends, ...found } = measured({ points: opposite });
    expect(bends.map(({ side }) => side)).toEqual(["right", "left"]);
    // 3 mm at 1/5 and at 1/4: 0.6 and 0.75 rad.
    expect(bends[0]?.angleDeg).toBeCloseTo(34.377, 1);
    expect(bends[1]?.angleDeg).toBeCloseTo(42.972, 1);
    expect(bends[0]?.radiusMm).toBeCloseTo(5, 1);
    expect(bends[1]?.radiusMm).toBeCloseTo(4, 1);
    expect(found.pruettDeg).toBeCloseTo(42.972, 1);
    expect(found.totalTurnDeg).toBeCloseTo(77.349, 1);
    expect(found.cautions.join()).toContain("more than one bend");
    // Each bend by its own closed form: t/2 raised by a straight part of 2 mm after it.
    const schneider = (r: number, t: number) =>
      (Math.atan2(r * (1 - Math.cos(t)) + 2 * Math.sin(t), r * Math.sin(t) + 2 * Math.cos(t)) * 180) / Math.PI;
    expect(bends[0]?.schneiderDeg).toBeCloseTo(schneider(5, 0.6), 1);
    expect(found.schneiderDeg).toBeCloseTo(schneider(4, 0.75), 1);
  });

  it("with noise both bends stay, with their sides", () => {
    const { bends, intervals } = measured({ points: withNoise(opposite, 0.05, 11), sigmaMm: 0.05 });
    expect(bends.map(({ side }) => side)).toEqual(["right", "left"]);
    expect(intervals.pruettDeg?.low).toBeLessThan(42.97);
    expect(intervals.pruettDeg?.high).toBeGreaterThan(42.97);
    expect(Math.abs((bends[0]?.angleDeg ?? 0) - 34.4)).toBeLessThan(10);
  });

  it("two bends that touch, and two to the same side, are told apart", () => {
    const touching = courseOfCurvature((s) => (s > 4 && s < 7 ? 0.2 : s >= 7 && s < 10 ? -0.2 : 0), 13, 0.25);
    expect(measured({ points: touching }).bends.map(({ side }) => side)).toEqual(["right", "left"]);
    const same = courseOfCurvature((s) => (s > 3 && s < 5 ? 0.2 : s > 9 && s < 11 ? 0.3 : 0), 13, 0.25);
    const found = measured({ points: same });
    expect(found.bends.map(({ side }) => side)).toEqual(["right", "right"]);
    expect(found.profile.some(({ curvaturePerMm }) => curvaturePerMm < -0.05)).toBe(false);
  });

  it("the profile of an S changes its sign between the bends", () => {
    const { profile } = measured({ points: opposite });
    const at = (s: number) =>
      profile.reduce((best, one) => (Math.abs(one.sMm - s) < Math.abs(best.sMm - s) ? one : best));
    expect(at(5.5).curvaturePerMm).toBeCloseTo(0.2, 1);
    expect(at(10.5).curvaturePerMm).toBeCloseTo(-0.25, 1);
  });
});

describe("a straight course (C17)", () => {
  it.each([
    ["a vertical line", [0, 1, 2, 4, 9].map((y) => [0, y])],
    ["an oblique line", [0, 1, 2, 3, 4, 5].map((s) => [3 + 0.6 * s, 2 - 0.8 * s])],
  ])("%s has no radius and says why", (_, points) => {
    const found = measured({ points });
    expect(found.fit).toBe("straight");
    expect([found.schneiderDeg, found.pruettDeg, found.accessAngleDeg, found.totalTurnDeg]).toEqual([0, 0, 0, 0]);
    expect(found.pruettRadiusMm).toBeUndefined();
    expect(found.minRadiusMm).toBeUndefined();
    expect(found.bends).toEqual([]);
    expect(found.notComputed.map(({ name }) => name)).toContain("pruettRadiusMm");
    expect(found.severity).toHaveLength(1);
    expect(found.severity[0]?.class).toBe("straight");
    expect(JSON.stringify(found)).not.toMatch(/null|Infinity|NaN/);
  });

  it("with noise stays straight in nearly every trial, and its interval allows a little bend", () => {
    const line = Array.from({ length: 60 }, (_, index): [number, number] => [0, index * 0.25]);
    const found = [1, 2, 3, 4, 5, 6].map((seed) => measured({ points: withNoise(line, 0.05, seed), sigmaMm: 0.05 }));
    expect(found.filter(({ fit }) => fit === "straight").length).toBeGreaterThanOrEqual(5);
    for (const { intervals } of found) expect(intervals.pruettDeg?.high).toBeLessThan(30);
  });
});
