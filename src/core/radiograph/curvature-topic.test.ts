import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { knownCanal } from "../../../test/studies/known-canals.ts";
import { Refusal } from "../refusal.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import { curvatureTopic } from "./curvature-topic.ts";

const measured = (raw: unknown) => answer(curvatureTopic, raw);

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
    const points = integrated((s) => Math.min(0.25, Math.max(0, Math.min(s - 6, 12 - s) / 8)), 15, 0.25);
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
  const opposite = integrated((s) => (s > 4 && s < 7 ? 0.2 : s > 9 && s < 12 ? -0.25 : 0), 14, 0.25);

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
    const { bends, intervals } = measured({ points: noisy(opposite, 0.05, 11), sigmaMm: 0.05 });
    expect(bends.map(({ side }) => side)).toEqual(["right", "left"]);
    expect(intervals.pruettDeg?.low).toBeLessThan(42.97);
    expect(intervals.pruettDeg?.high).toBeGreaterThan(42.97);
    expect(Math.abs((bends[0]?.angleDeg ?? 0) - 34.4)).toBeLessThan(10);
  });

  it("two bends that touch, and two to the same side, are told apart", () => {
    const touching = integrated((s) => (s > 4 && s < 7 ? 0.2 : s >= 7 && s < 10 ? -0.2 : 0), 13, 0.25);
    expect(measured({ points: touching }).bends.map(({ side }) => side)).toEqual(["right", "left"]);
    const same = integrated((s) => (s > 3 && s < 5 ? 0.2 : s > 9 && s < 11 ? 0.3 : 0), 13, 0.25);
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
    const found = [1, 2, 3, 4, 5, 6].map((seed) => measured({ points: noisy(line, 0.05, seed), sigmaMm: 0.05 }));
    expect(found.filter(({ fit }) => fit === "straight").length).toBeGreaterThanOrEqual(5);
    for (const { intervals } of found) expect(intervals.pruettDeg?.high).toBeLessThan(30);
  });
});

describe("properties", () => {
  const shape = { l1: 8, radius: 6, turnDeg: 40, l2: 3 };
  const points = noisy(knownCanal(shape, 0.5), 0.03, 5);
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
  const points = noisy(knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 2 }, 0.25), 0.05, 21);

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

describe("cautions", () => {
  it("says where noise hides whether the canal is straight at its end", () => {
    const points = noisy(knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 1 }, 0.25), 0.05, 3);
    const found = measured({ points, sigmaMm: 0.05 });
    expect(found.fitQuality.others.length).toBeGreaterThan(0);
    expect(found.cautions.join()).toContain("do not decide whether the canal is straight at its end");
    expect(found.intervals.pruettDeg?.low).toBeLessThan(45);
    expect(found.intervals.pruettDeg?.high).toBeGreaterThan(45);
    const long = measured({ points: knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 4 }, 0.25), sigmaMm: 0.05 });
    expect(long.cautions.join()).not.toContain("straight at its end");
  });

  it("repeated points are left out and counted, a doubled foramen too", () => {
    const points = knownCanal({ l1: 10, radius: 5, turnDeg: 60, l2: 0 }, 1);
    const doubled = points.flatMap((point, index) =>
      index % 5 === 0 || index === points.length - 1 ? [point, point] : [point],
    );
    const found = measured({ points: doubled });
    expect(found.cautions[0]).toBe("5 point(s) in the same place as the point before were left out.");
    expect(found.schneiderDeg).toBeCloseTo(30, 3);
  });

  it("points out of order are noticed", () => {
    const points = knownCanal({ l1: 10, radius: 5, turnDeg: 60, l2: 0 }, 1);
    const swapped = points.map((point, index) => (index === 4 ? points[6] : index === 6 ? points[4] : point));
    expect(measured({ points: swapped }).cautions.join()).toContain("backwards");
    expect(measured({ points }).cautions.join()).not.toContain("backwards");
  });

  it("a course as long as a list of pixels is questioned", () => {
    const points = knownCanal({ l1: 300, radius: 150, turnDeg: 60, l2: 0 }, 10);
    expect(measured({ points }).cautions.join()).toContain("are the points in mm");
  });

  it("a kink is a bend whose radius the points cannot show", () => {
    const kink = Array.from({ length: 40 }, (_, index): [number, number] =>
      index < 25 ? [0, index * 0.25] : [(index - 24) * 0.125, 6 + (index - 24) * 0.2165],
    );
    const found = measured({ points: kink });
    expect(found.cautions.join()).toContain("fewer than 3 points");
    expect(found.pruettDeg).toBeCloseTo(30, 0);
  });

  it("a shape of no family is said to be one, and the intervals reach to the spline (C16)", () => {
    // Three bends; no family has more than two.
    const points = integrated((s) => 0.35 * Math.sin((2 * Math.PI * s) / 6), 18, 0.2);
    const found = measured({ points });
    expect(found.fitQuality.fits).toBe(false);
    expect(found.cautions.join()).toContain("No family of courses fits");
    expect(found.lengthMm).toBeCloseTo(18, 1);
    // The turn of each half wave is 0.35 * 6 / pi rad, and there are six.
    expect(Math.abs(found.totalTurnDeg - (6 * 0.35 * 6 * 180) / Math.PI ** 2)).toBeLessThan(6);
    expect(Math.abs(found.maxCurvaturePerMm - 0.35)).toBeLessThan(0.04);
  });
});

describe("refusals", () => {
  const refusalOf = (raw: unknown): Refusal => {
    try {
      measured(raw);
    } catch (error) {
      if (error instanceof Refusal) return error;
    }
    throw new Error("nothing was refused");
  };

  it.each([
    [
      "three points",
      [
        [0, 0],
        [0, 1],
        [0, 2],
      ],
    ],
    ["none", []],
    [
      "four points of which two are one",
      [
        [0, 0],
        [0, 1],
        [0, 1],
        [0, 2],
      ],
    ],
  ])("%s are too few", (_, points) => {
    const refusal = refusalOf({ points });
    expect(refusal.code).toBe("trace.tooFewPoints");
    expect(refusal.faults[0]?.path).toBe("points");
  });

  it("plane and space are not mixed; every odd point is named", () => {
    const refusal = refusalOf({
      points: [
        [0, 0, 0],
        [0, 1],
        [0, 2, 0],
        [0, 3],
        [0, 4, 1],
      ],
    });
    expect(refusal.code).toBe("input.impossible");
    expect(refusal.faults.map(({ path }) => path)).toEqual(["points[1]", "points[3]"]);
  });

  it.each([
    ["a zigzag", Array.from({ length: 8 }, (_, index) => [index % 2, 0])],
    [
      "a closed square",
      [
        [0, 0],
        [5, 0],
        [5, 5],
        [0, 5],
        [0, 0],
      ],
    ],
    [
      "there and back",
      [
        [0, 0],
        [0, 5],
        [0, 1],
        [0, 6],
        [0, 0],
      ],
    ],
  ])("%s is no course", (_, points) => {
    const refusal = refusalOf({ points });
    expect(refusal.code).toBe("input.impossible");
    expect(refusal.faults[0]?.says).toContain("to and fro");
  });

  it("whatever the points are, the answer is finite or a refusal, and quick", () => {
    const { uniform, normal } = seededRandom(99);
    let answered = 0;
    for (let trial = 0; trial < 24; trial++) {
      const scale = 10 ** (6 * uniform() - 3);
      const across = trial % 2 === 0 ? 2 : 3;
      const drift = trial % 3;
      const place = [0, 0, 0].slice(0, across);
      const points = Array.from({ length: 4 + Math.floor(30 * uniform()) }, () => {
        place.forEach((value, axis) => {
          place[axis] = value + scale * (normal() + (axis === 1 ? drift : 0));
        });
        return [...place];
      });
      try {
        const found = measured({ points, ...(trial % 4 === 0 ? { smoothing: 0, sigmaMm: 0 } : {}) });
        answered++;
        expect(JSON.stringify(found)).not.toContain("null");
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal);
      }
    }
    expect(answered).toBeGreaterThan(6);
  });

  const line = [0, 1, 2, 3].map((y) => [0, y]);
  it.each([
    ["sigmaMm", { points: line, sigmaMm: -0.1 }],
    ["smoothing", { points: line, smoothing: -1 }],
    ["smoothing", { points: line, smoothing: "more" }],
    ["weineLengthMm", { points: line, weineLengthMm: 0 }],
    ["scaleRelativeSigma", { points: line, scaleRelativeSigma: 2 }],
    [
      "points[0][1]",
      {
        points: [
          [0, "1"],
          [0, 1],
          [0, 2],
          [0, 3],
        ],
      },
    ],
    ["colour", { points: line, colour: 1 }],
  ])("a fault at %s", (path, raw) => {
    const refusal = refusalOf(raw);
    expect(refusal.code).toBe("input.invalid");
    expect(refusal.faults.map((fault) => fault.path)).toContain(path);
  });
});

/** Points of a course of a given curvature (positive to the right), by fine summation: no code of the tested modules. */
function integrated(curvature: (s: number) => number, length: number, step: number): [number, number][] {
  const fine = 400;
  let [x, y, heading] = [0, 0, 0];
  const points: [number, number][] = [[0, 0]];
  for (let index = 1; index <= Math.round(length / step); index++) {
    for (let part = 0; part < fine; part++) {
      const s = (index - 1 + (part + 0.5) / fine) * step;
      const half = (curvature(s) * step) / fine / 2;
      heading += half;
      x += (Math.sin(heading) * step) / fine;
      y += (Math.cos(heading) * step) / fine;
      heading += half;
    }
    points.push([x, y]);
  }
  return points;
}

/** The points with normal noise of a seed. */
function noisy(points: readonly [number, number][], sigma: number, seed: number): [number, number][] {
  const { normal } = seededRandom(seed);
  return points.map(([x, y]) => [x + sigma * normal(), y + sigma * normal()]);
}
