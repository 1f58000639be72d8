import { describe, expect, it } from "vitest";
import { courseOfCurvature, knownCanal, withNoise } from "../../../test/studies/known-canals.ts";
import { Refusal } from "../refusal.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { measured } from "./curvature/measured-for-tests.ts";

describe("cautions", () => {
  it("says where noise hides whether the canal is straight at its end", () => {
    const points = withNoise(knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 1 }, 0.25), 0.05, 3);
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
    const points = courseOfCurvature((s) => 0.35 * Math.sin((2 * Math.PI * s) / 6), 18, 0.2);
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
