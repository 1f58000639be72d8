import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LightBoxDesign, lightBoxTrial, widthOf } from "../../../test/studies/curvature-light-box.ts";
import { type KnownStretch, knownCourse, lengthOf } from "../../../test/studies/known-canals.ts";
import { curvatureTopic } from "./curvature-topic.ts";

/** A finely followed course, gently bent or nearly straight, perhaps with a second, slight bend; noise alone or in runs. */
const followedCourse = fc
  .record({
    straight: fc.double({ min: 5, max: 8, noNaN: true }),
    turnDeg: fc.double({ min: 0, max: 15, noNaN: true }),
    radius: fc.double({ min: 15, max: 60, noNaN: true }),
    slightDeg: fc.constantFrom(0, 0, 3, 5),
    after: fc.double({ min: 2, max: 4, noNaN: true }),
    stepMm: fc.double({ min: 0.045, max: 0.1, noNaN: true }),
    sigmaMm: fc.double({ min: 0.02, max: 0.04, noNaN: true }),
    following: fc.constantFrom(0, Math.exp(-1 / 5), Math.exp(-1 / 10)),
    sigmaStated: fc.boolean(),
    seed: fc.integer({ min: 1, max: 100_000 }),
  })
  .map(({ straight, turnDeg, radius, slightDeg, after, ...noise }) => {
    const arc = (turn: number, r: number): KnownStretch => ({ lengthMm: turn * Math.abs(r), curvature: 1 / r });
    const stretches = [
      { lengthMm: straight, curvature: 0 },
      arc((turnDeg * Math.PI) / 180, radius),
      arc((slightDeg * Math.PI) / 180, -15),
      { lengthMm: after, curvature: 0 },
    ];
    return { stretches, ...noise };
  });

/** As many as a few seconds allow; more, the same ones first, with `CANALOG_SOAK_COURSES=100`. */
const courses = Number(process.env.CANALOG_SOAK_COURSES ?? 32);

describe("a finely followed course (C12)", () => {
  it(
    "gets intervals that hold its numbers and are no wider than its points allow",
    () => {
      fc.assert(
        fc.property(followedCourse, ({ seed, ...course }) => {
          const design: LightBoxDesign = { name: "", ...course };
          const found = lightBoxTrial(design, seed);
          for (const [name, { low, high }] of Object.entries(found.intervals)) {
            const value = Reflect.get(found, name);
            expect(low, name).toBeLessThanOrEqual(value);
            expect(high, name).toBeGreaterThanOrEqual(value);
          }
          const length = lengthOf(course.stretches);
          // Each end is unsure by sigma, the difference of two by 1.4 sigma, 95 % of it 5.5 sigma wide; half as much more for
          // where the ends of the fit lie, and twice as much for noise estimated from few points that say different things.
          const width = widthOf(found.intervals.lengthMm);
          expect(width).toBeLessThan(5.5 * course.sigmaMm * (course.sigmaStated ? 1.5 : 2) + 0.01 * length);
          expect(width).toBeLessThan(0.05 * length);
          expect(Math.abs((found.lengthMm ?? 0) - length)).toBeLessThan(6 * course.sigmaMm);
          expect(widthOf(found.intervals.chordMm)).toBeLessThan(0.05 * length);
          for (const name of ["schneiderDeg", "pruettDeg", "accessAngleDeg", "totalTurnDeg"]) {
            expect(found.intervals[name]?.low, name).toBeGreaterThanOrEqual(0);
            expect(found.intervals[name]?.high, name).toBeLessThan(90);
          }
        }),
        { numRuns: courses, seed: 20_261_125 },
      );
    },
    60_000 + courses * 2_000,
  );

  // The course that a least-cost path gave on a demo film: 7 mm straight along a column of pixels, a hook of two pixels at
  // its start, a slight bend towards the end; the clicks that set its ends are good to 1 px = 0.0225 mm.
  it("a hook of two pixels at the orifice does not make the length unsure", () => {
    const hooked = knownCourse(
      [
        { lengthMm: 0.8, curvature: -0.25 },
        { lengthMm: 6, curvature: 0 },
        { lengthMm: 2, curvature: 0.05 },
        { lengthMm: 2.7, curvature: 0 },
      ],
      0.067,
      { sigmaMm: 0.011, seed: 3, following: Math.exp(-1 / 7) },
    );
    const { lengthMm, intervals } = curvatureTopic.compute({ points: hooked, sigmaMm: 0.0225 });
    expect(lengthMm).toBeCloseTo(11.5, 1);
    expect(intervals.lengthMm?.low).toBeGreaterThan(11.35);
    expect(intervals.lengthMm?.high).toBeLessThan(11.65);
    expect(intervals.pruettDeg?.high).toBeLessThan(25);
  });
});

describe("a bend of 5 degrees and less (C18)", () => {
  const bent = (turnDeg: number) =>
    knownCourse(
      [
        { lengthMm: 5, curvature: 0 },
        { lengthMm: (40 * turnDeg * Math.PI) / 180, curvature: 1 / 40 },
        { lengthMm: 3, curvature: 0 },
      ],
      0.1,
    );

  it("is reported with its angle and without a radius, and the reason is named", () => {
    const found = curvatureTopic.compute({ points: bent(4.8), sigmaMm: 0.001 });
    expect(found.pruettDeg).toBeCloseTo(4.8, 1);
    expect(found.pruettRadiusMm).toBeUndefined();
    expect(found.minRadiusMm).toBeUndefined();
    expect(found.atMm).toBeUndefined();
    expect(found.bends[0]?.radiusMm).toBeUndefined();
    expect(found.intervals.pruettRadiusMm).toBeUndefined();
    expect(found.severity.map(({ by }) => by)).toEqual(["schneiderDeg"]);
    expect(found.notComputed.map(({ name }) => name)).toEqual(["pruettRadiusMm", "minRadiusMm", "atMm"]);
    expect(found.notComputed[0]?.why).toContain("5 degrees");
  });

  it("just above it the radius is given", () => {
    const found = curvatureTopic.compute({ points: bent(5.2), sigmaMm: 0.001 });
    expect(found.pruettRadiusMm).toBeCloseTo(40, 0);
    expect(found.bends[0]?.radiusMm).toBe(found.pruettRadiusMm);
    expect(found.notComputed).toEqual([]);
  });
});
