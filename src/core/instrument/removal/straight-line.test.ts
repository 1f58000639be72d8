import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coursePlaces } from "./course-places.ts";
import { lineOffsets } from "./straight-line.ts";

const arc = (radiusMm: number, turnDeg: number, startMm = 0, lengthMm = 20) =>
  coursePlaces({ radiusMm, turnDeg, startMm, lengthMm });
const largest = (offsets: readonly { innerMm: number }[]) => Math.max(...offsets.map(({ innerMm }) => innerMm));

describe("the straight line's distance from the canal", () => {
  // Plane geometry: an arc of radius R that turns by t lies R (1 - cos(t / 2)) off its chord at its middle.
  it.each([
    [10, 60],
    [5, 90],
    [20, 30],
  ])("of an arc of radius %d mm and %d degrees is its sagitta, at its middle (C1)", (radius, turn) => {
    const t = (turn * Math.PI) / 180;
    const offsets = lineOffsets(arc(radius, turn), radius * t)(0);
    expect(largest(offsets)).toBeCloseTo(radius * (1 - Math.cos(t / 2)), 5);
    const middle = offsets.find(({ innerMm }) => innerMm === largest(offsets));
    expect(middle?.atMm).toBeCloseTo((radius * t) / 2, 6);
    expect(offsets.every(({ acrossMm }) => acrossMm < 1e-9)).toBe(true);
  });

  it("agrees with every point of the course held against the chord by areas (C1)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        (radiusMm, startMm, shiftMm) => {
          const course = arc(radiusMm, 40, startMm, 45);
          const depth = startMm + 0.5 * radiusMm;
          const head = course.placeAt(depth);
          // The arc turns to the right: the inner side lies to the right of the line down to the head.
          const size = Math.hypot(head.x, head.y);
          const orifice = { x: (-shiftMm * head.y) / size, y: (shiftMm * head.x) / size };
          const [dx, dy] = [head.x - orifice.x, head.y - orifice.y];
          for (const { atMm, innerMm, acrossMm } of lineOffsets(course, depth)(shiftMm)) {
            const place = course.placeAt(atMm);
            const area = dx * (place.y - orifice.y) - dy * (place.x - orifice.x);
            expect(Math.hypot(innerMm, acrossMm)).toBeCloseTo(Math.abs(area) / Math.hypot(dx, dy), 6);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it("of a straight canal is that of the shifted orifice alone (C2)", () => {
    const straight = lineOffsets(arc(10, 0), 12);
    expect(largest(straight(0))).toBe(0);
    const distances = straight(1.5).map(({ innerMm, acrossMm }) => Math.hypot(innerMm, acrossMm));
    expect(Math.max(...distances)).toBeCloseTo((1.5 * 12) / Math.hypot(1.5, 12), 9);
    expect(distances.at(-1)).toBeCloseTo(0, 9);
  });

  it("of a straight canal in space that runs off the film's plane is that of the shift as well (C2)", () => {
    const along = { lengthMm: 10, placeAt: (s: number) => ({ x: 0, y: 0, z: s }) };
    const [first] = lineOffsets(along, 10)(1);
    expect(Math.hypot(first?.innerMm ?? 0, first?.acrossMm ?? 0)).toBeCloseTo(10 / Math.hypot(1, 10), 9);
  });

  it("shrinks at the bend and grows at the orifice as that is moved away (C2)", () => {
    const line = lineOffsets(arc(10, 40, 3), 10);
    const [none, one] = [line(0), line(1)];
    expect(largest(one)).toBeLessThan(largest(none));
    expect(one[0]?.innerMm).toBeLessThan(-0.9);
  });

  it("of points is that of the arc that they lie on, turned and moved as it may be (C1)", () => {
    const t = Math.PI / 3;
    const turned = Array.from({ length: 60 }, (_, index) => {
      const at = (index / 59) * t;
      const [x, y] = [10 * (1 - Math.cos(at)), 10 * Math.sin(at)];
      return [7 + 0.6 * x - 0.8 * y, 3 + 0.8 * x + 0.6 * y] as [number, number];
    });
    const course = coursePlaces({ points: turned, sigmaMm: 0.02 });
    expect(course.lengthMm).toBeCloseTo(10 * t, 2);
    expect(largest(lineOffsets(course, course.lengthMm)(0))).toBeCloseTo(10 * (1 - Math.cos(t / 2)), 2);
  });
});

describe("the places of a course", () => {
  it("follow the spline where no family of courses fits the points", () => {
    // Three bends to and fro, more than any family has.
    const points = Array.from({ length: 90 }, (_, index) => {
      const y = (index / 89) * 18;
      return [1.2 * Math.sin((y / 18) * 5 * Math.PI), y] as [number, number];
    });
    const course = coursePlaces({ points, sigmaMm: 0.01 });
    const end = course.placeAt(course.lengthMm + 5);
    expect(Math.hypot(end.x - (points.at(-1)?.[0] ?? 0), end.y - 18)).toBeLessThan(0.1);
    expect(largest(lineOffsets(course, course.lengthMm)(0))).toBeGreaterThan(1);
  });
});
