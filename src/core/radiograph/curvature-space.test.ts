import { describe, expect, it } from "vitest";
import { knownCanal } from "../../../test/studies/known-canals.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { measured } from "./curvature/measured-for-tests.ts";

type Place = [number, number, number];

/** A place of the x-y plane laid into a plane that is turned about y by 53.13 degrees and then about x by 36.87. */
function laidOut([x, y]: readonly [number, number]): Place {
  const [a, b] = [0.6 * x, 0.8 * x];
  return [a, 0.8 * y - 0.6 * b, 0.6 * y + 0.8 * b];
}

describe("a plane course in space (C14)", () => {
  const flat = knownCanal({ l1: 9, radius: 5, turnDeg: 45, l2: 2 }, 0.25);

  it("measures the same as in its plane", () => {
    const found = measured({ points: flat.map(laidOut) });
    const inPlane = measured({ points: flat });
    for (const name of [
      "schneiderDeg",
      "weineDeg",
      "pruettDeg",
      "pruettRadiusMm",
      "accessAngleDeg",
      "lengthMm",
    ] as const)
      expect(found[name], name).toBeCloseTo(inPlane[name] ?? Number.NaN, 3);
    expect(found.bends.map(({ side }) => side)).toEqual(["reference"]);
  });

  it("is planar, and the plane's normal is the one it was laid out with; in a plane there is no planarity", () => {
    const { planarity } = measured({ points: flat.map(laidOut) });
    expect(planarity?.planar).toBe(true);
    expect(planarity?.largestMm).toBeLessThan(1e-3);
    // (0.6, -0.48, 0.64) x (0, 0.8, 0.6) by hand: (-0.8, -0.36, 0.48).
    const [x = 0, y = 0, z = 0] = planarity?.normal ?? [];
    expect(Math.abs(-0.8 * x - 0.36 * y + 0.48 * z)).toBeCloseTo(1, 6);
    expect(measured({ points: flat }).planarity).toBeUndefined();
  });

  it("with noise in every direction stays near the truth and is called planar", () => {
    const { normal } = seededRandom(8);
    const points = flat.map(laidOut).map((place) => place.map((value) => value + 0.05 * normal()));
    const { intervals, planarity, pruettDeg } = measured({ points, sigmaMm: 0.05 });
    expect(planarity?.planar).toBe(true);
    expect(Math.abs(pruettDeg - 45)).toBeLessThan(5);
    expect(intervals.pruettRadiusMm?.low).toBeLessThan(5);
    expect(intervals.pruettRadiusMm?.high).toBeGreaterThan(5);
  });
});

describe("two bends in different planes (C2, C6)", () => {
  // Along z for 4 mm, a quarter of a circle of R 4 towards +x, 3 mm along x, then 60 degrees of R 3 towards +y.
  const points = Array.from({ length: 81 }, (_, index): Place => {
    const s = (index * (4 + 2 * Math.PI + 3 + Math.PI + 2)) / 80;
    if (s < 4) return [0, 0, s];
    const first = Math.min((s - 4) / 4, Math.PI / 2);
    const straight = Math.min(Math.max(s - 4 - 2 * Math.PI, 0), 3);
    const second = Math.min(Math.max((s - 7 - 2 * Math.PI) / 3, 0), Math.PI / 3);
    const rest = Math.max(s - 7 - 3 * Math.PI, 0);
    return [
      4 * (1 - Math.cos(first)) + straight + 3 * Math.sin(second) + rest * 0.5,
      3 * (1 - Math.cos(second)) + (rest * Math.sqrt(3)) / 2,
      4 + 4 * Math.sin(first),
    ];
  });
  const found = measured({ points });

  it("each is found with its angle and radius, and the planes stand at right angles", () => {
    expect(found.bends).toHaveLength(2);
    expect(found.bends[0]?.angleDeg).toBeCloseTo(90, 1);
    expect(found.bends[0]?.radiusMm).toBeCloseTo(4, 2);
    expect(found.bends[1]?.angleDeg).toBeCloseTo(60, 1);
    expect(found.bends[1]?.radiusMm).toBeCloseTo(3, 2);
    expect(found.bends.map(({ side }) => side)).toEqual(["reference", "across"]);
    expect(found.bends[1]?.planeFromFirstDeg).toBeCloseTo(90, 1);
    expect(found.totalTurnDeg).toBeCloseTo(150, 1);
  });

  it("is not planar", () => {
    expect(found.planarity?.planar).toBe(false);
  });
});

describe("a helix: no family, so the spline answers (C13, C16)", () => {
  // Frenet: radius a 3, rise b 2.5 for each radian: curvature a / (a2 + b2), length sqrt(a2 + b2) for each radian.
  const points = Array.from({ length: 80 }, (_, index): Place => {
    const angle = index * 0.05;
    return [3 * Math.cos(angle), 3 * Math.sin(angle), 2.5 * angle];
  });
  const found = measured({ points });
  const curvature = 3 / 15.25;
  const length = 79 * 0.05 * Math.sqrt(15.25);

  it("has its length, curvature and total turn", () => {
    expect(found.fitQuality.fits).toBe(false);
    expect(found.lengthMm).toBeCloseTo(length, 1);
    expect(found.maxCurvaturePerMm).toBeCloseTo(curvature, 2);
    expect(found.totalTurnDeg).toBeCloseTo((curvature * length * 180) / Math.PI, 0);
    const middle = found.profile[Math.floor(found.profile.length / 2)];
    expect(middle?.curvaturePerMm).toBeCloseTo(curvature, 3);
  });

  it("is not planar, and its intervals hold the true numbers", () => {
    expect(found.planarity?.planar).toBe(false);
    const { lengthMm, totalTurnDeg } = found.intervals;
    expect(lengthMm?.low).toBeLessThan(length + 0.01);
    expect(lengthMm?.high).toBeGreaterThan(length - 0.01);
    expect(totalTurnDeg?.high).toBeGreaterThan(173);
  });
});

it("a straight course in space is straight and planar", () => {
  const found = measured({ points: [0, 1, 2, 3, 4, 5].map((s) => [s, 2 * s, -s]) });
  expect(found.fit).toBe("straight");
  expect(found.planarity?.planar).toBe(true);
  expect(found.bends).toEqual([]);
});
