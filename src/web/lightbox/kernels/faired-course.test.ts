import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distancesAlong } from "../../../core/geometry/course-of-path.ts";
import { type Course, pointsOfCourse, segmentBetween } from "./course-segments.ts";
import { fairedCourse, innerAnchors } from "./faired-course.ts";
import { filmPoint, pixelsBetween } from "./film-point.ts";

/** Straight pieces from anchor to anchor, drawn as if they followed a ridge. */
function courseThrough(rows: readonly number[], drawn: "free" | "snapped" = "snapped"): Course {
  const anchors = rows.map((row, index) => filmPoint(index * 120, row));
  const segments = anchors.slice(1).map((to, index) => {
    const { points = [] } = segmentBetween(anchors[index] ?? to, to, "free", () => undefined);
    return { drawn, points };
  });
  return { anchors, segments };
}

const sharpest = (course: Course): number => {
  const points = pointsOfCourse(course);
  const turns = points.slice(1, -1).map((at, index) => {
    const [before, after] = [points[index] ?? at, points[index + 2] ?? at];
    const a = Math.atan2(at.row - before.row, at.column - before.column);
    const b = Math.atan2(after.row - at.row, after.column - at.column);
    return Math.abs(b - a);
  });
  return Math.max(...turns);
};

describe("a course without kinks at its anchors", () => {
  it("turns less sharply where an anchor was put beside the line, and moves it by less than it was off", () => {
    const kinked = courseThrough([100, 103, 100]);
    const fair = fairedCourse(kinked, innerAnchors(kinked));
    expect(sharpest(fair)).toBeLessThan(sharpest(kinked) / 3);
    expect(pixelsBetween(fair.anchors[1] ?? filmPoint(0, 0), filmPoint(120, 103))).toBeLessThan(1);
  });

  it("keeps its ends, its number of points and its anchors on the line", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 2, maxLength: 6 }), (rows) => {
        const course = courseThrough(rows);
        const fair = fairedCourse(course, innerAnchors(course));
        expect(fair.anchors[0]).toEqual(course.anchors[0]);
        expect(fair.anchors.at(-1)).toEqual(course.anchors.at(-1));
        expect(pointsOfCourse(fair)).toHaveLength(pointsOfCourse(course).length);
        fair.segments.forEach(({ points }, index) => {
          expect(points?.[0]).toEqual(fair.anchors[index]);
          expect(points?.at(-1)).toEqual(fair.anchors[index + 1]);
        });
        const length = (one: Course) => distancesAlong(pointsOfCourse(one)).at(-1) ?? 0;
        expect(length(fair)).toBeLessThanOrEqual(length(course) + 1e-6);
      }),
    );
  });

  it("leaves a straight course and a corner between free pieces as they are", () => {
    const straight = courseThrough([100, 100, 100]);
    pointsOfCourse(fairedCourse(straight, [1])).forEach((at, index) => {
      expect(pixelsBetween(at, pointsOfCourse(straight)[index] ?? filmPoint(0, 0))).toBeLessThan(1e-6);
    });
    const corner = courseThrough([100, 200, 100], "free");
    expect(pointsOfCourse(fairedCourse(corner, [1]))).toEqual(pointsOfCourse(corner));
  });

  it("evens out only around the anchors that are named", () => {
    const course = courseThrough([100, 140, 100, 140]);
    const fair = fairedCourse(course, [1]);
    expect(fair.anchors[2]).toEqual(course.anchors[2]);
    expect(fair.anchors[1]).not.toEqual(course.anchors[1]);
  });
});
