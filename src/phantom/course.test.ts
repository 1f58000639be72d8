import { describe, expect, it } from "vitest";
import { courseOfPolyline, courseThrough, directionAt, partOf, placeAt } from "./course.ts";
import { distanceMm, toothPoint } from "./tooth-point.ts";

const arc = (radius: number, degrees: number, count: number) =>
  Array.from({ length: count + 1 }, (_, i) => {
    const turn = (degrees * Math.PI * i) / (180 * count);
    return toothPoint(radius * (1 - Math.cos(turn)), 0, radius * Math.sin(turn));
  });

describe("courseThrough", () => {
  it("has the length of an arc of 45 degrees at radius 10 mm: 7.85398 mm (r times the angle)", () => {
    // 8 points on the arc; a Catmull-Rom curve leaves the circle by less than 1e-3 of its length.
    expect(courseThrough(arc(10, 45, 8)).lengthMm).toBeCloseTo(7.85398, 2);
  });
  it("passes through every point it was given", () => {
    const given = arc(5, 60, 5);
    const { points } = courseThrough(given);
    for (const point of given) expect(Math.min(...points.map((other) => distanceMm(point, other)))).toBeLessThan(0.011);
  });
  it("gives points at equal steps", () => {
    const { points, stepMm } = courseThrough(arc(5, 60, 5));
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1], points[i]];
      if (a && b) expect(distanceMm(a, b)).toBeCloseTo(stepMm, 4);
    }
  });
  it("grows with the scale of its points", () => {
    const small = courseThrough(arc(5, 60, 5)).lengthMm;
    expect(courseThrough(arc(15, 60, 5)).lengthMm / small).toBeCloseTo(3, 3);
  });
  it("refuses a single point", () => {
    expect(() => courseThrough([toothPoint(0, 0, 0)])).toThrow(/at least 2 points/);
    expect(() => courseOfPolyline([toothPoint(0, 0, 0)])).toThrow(/at least 2 points/);
  });
});

describe("places on a course", () => {
  const line = courseOfPolyline([toothPoint(0, 0, 0), toothPoint(3, 0, 4)]);
  it("is halfway after half the length", () => {
    const half = placeAt(line, 2.5);
    expect([half.x, half.y, half.z]).toEqual([expect.closeTo(1.5, 6), 0, expect.closeTo(2, 6)]);
  });
  it("holds its ends", () => {
    expect(placeAt(line, -1).z).toBe(0);
    expect(placeAt(line, 99).z).toBeCloseTo(4, 9);
  });
  it("runs in the line's direction, at the ends too", () => {
    for (const at of [0, 2.5, 5])
      expect(directionAt(line, at)).toEqual({ x: expect.closeTo(0.6, 6), y: 0, z: expect.closeTo(0.8, 6) });
  });
  it("has parts of the stated length", () => expect(partOf(line, 1, 3.5).lengthMm).toBeCloseTo(2.5, 6));
});
