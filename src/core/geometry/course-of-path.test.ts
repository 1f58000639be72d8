import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ImagePoint, px } from "../units.ts";
import { courseOfPath, courseStepPx, distancesAlong, evenlySpaced, pointAt, straightCourse } from "./course-of-path.ts";

const filmPoint = (column: number, row: number): ImagePoint => ({ column: px(column), row: px(row) });
const pixelsBetween = (a: ImagePoint, b: ImagePoint): number => Math.hypot(a.column - b.column, a.row - b.row);

const point = fc
  .tuple(fc.double({ min: 0, max: 1500, noNaN: true }), fc.double({ min: 0, max: 1200, noNaN: true }))
  .map(([column, row]) => filmPoint(column, row));

/** Neighbouring pixels along an arc of a circle, as a least-cost path gives them. */
function pixelsOfArc(radius: number, fromDeg: number, toDeg: number) {
  const fine = Array.from({ length: 4000 }, (_, index) => {
    const angle = ((fromDeg + ((toDeg - fromDeg) * index) / 3999) * Math.PI) / 180;
    return filmPoint(Math.round(500 + radius * Math.cos(angle)), Math.round(500 + radius * Math.sin(angle)));
  });
  return fine.filter((at, index) => index === 0 || pixelsBetween(at, fine[index - 1] ?? at) > 0);
}

describe("a course from a chain of pixels", () => {
  it("lies on the arc that the pixels were taken from, within half a pixel", () => {
    const [radius, path] = [180, pixelsOfArc(180, 10, 80)];
    const [from, to] = [path[0] ?? filmPoint(0, 0), path.at(-1) ?? filmPoint(0, 0)];
    for (const at of courseOfPath(path, from, to))
      expect(Math.abs(pixelsBetween(at, filmPoint(500, 500)) - radius)).toBeLessThan(0.5);
  });

  it("has the arc's length within 1 %, where the stair of pixels is up to 8 % too long", () => {
    const path = pixelsOfArc(180, 10, 80);
    const [from, to] = [path[0] ?? filmPoint(0, 0), path.at(-1) ?? filmPoint(0, 0)];
    const length = distancesAlong(courseOfPath(path, from, to)).at(-1) ?? 0;
    const truth = (180 * 70 * Math.PI) / 180;
    expect(Math.abs(length - truth) / truth).toBeLessThan(0.01);
  });

  it("begins and ends exactly at the anchors, also between pixels", () => {
    const path = pixelsOfArc(100, 0, 60);
    const [from, to] = [filmPoint(599.7, 500.2), filmPoint(550.25, 586.4)];
    const course = courseOfPath(path, from, to);
    expect(course[0]).toEqual(from);
    expect(course.at(-1)).toEqual(to);
  });
});

describe("points at even distances", () => {
  it("keep both ends and lie as near to the wanted step as the length allows", () => {
    fc.assert(
      fc.property(point, point, (from, to) => {
        fc.pre(pixelsBetween(from, to) > 2);
        const line = straightCourse(from, to);
        expect(line[0]).toEqual(from);
        expect(line.at(-1)).toEqual(to);
        const steps = line.slice(1).map((at, index) => pixelsBetween(line[index] ?? at, at));
        for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 6);
        expect(steps[0]).toBeLessThanOrEqual(courseStepPx * 1.5);
      }),
    );
  });

  it("never make a line longer", () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 30 }), (line) => {
        const before = distancesAlong(line).at(-1) ?? 0;
        const after = distancesAlong(evenlySpaced(line, courseStepPx)).at(-1) ?? 0;
        expect(after).toBeLessThanOrEqual(before + 1e-6);
      }),
    );
  });

  it("are none for no line and one for one place", () => {
    expect(evenlySpaced([], 3)).toEqual([]);
    expect(evenlySpaced([filmPoint(4, 4), filmPoint(4, 4)], 3)).toEqual([filmPoint(4, 4)]);
  });

  it("give the place at a distance along the line", () => {
    const line = [filmPoint(0, 0), filmPoint(10, 0), filmPoint(10, 10)];
    expect(pointAt(line, distancesAlong(line), 0)).toEqual(filmPoint(0, 0));
    expect(pointAt(line, distancesAlong(line), 12)).toEqual(filmPoint(10, 2));
    expect(pointAt(line, distancesAlong(line), 99)).toEqual(filmPoint(10, 10));
  });
});
