import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ImagePoint } from "../../../core/units.ts";
import {
  appended,
  type Course,
  completed,
  courseOf,
  isComplete,
  type PathFinder,
  pointsOfCourse,
  shortened,
  startsWanted,
  withAnchorAt,
  withAnchorIn,
  withoutAnchor,
} from "./course-segments.ts";
import { filmPoint, isSamePoint } from "./film-point.ts";

const notYet: PathFinder = () => undefined;
/** A course that goes around a corner, so that it can be told from a straight one. */
const corner: PathFinder = (from, to) => [from, filmPoint(to.column, from.row), to];
const whole = fc.integer({ min: 0, max: 900 });
const place = fc.tuple(whole, whole).map(([column, row]) => filmPoint(column, row));
const places = fc.uniqueArray(place, { minLength: 2, maxLength: 8, selector: ({ column, row }) => `${column} ${row}` });
const courseThrough = (anchors: readonly ImagePoint[], find: PathFinder): Course =>
  anchors.reduce<Course>((course, at) => appended(course, at, "snapped", find), { anchors: [], segments: [] });

function expectWhole(course: Course) {
  expect(course.segments).toHaveLength(Math.max(0, course.anchors.length - 1));
  course.segments.forEach(({ points }, index) => {
    expect(points?.[0]).toEqual(course.anchors[index]);
    expect(points?.at(-1)).toEqual(course.anchors[index + 1]);
  });
}

describe("a course of anchors and segments", () => {
  it("hangs together whatever is appended, moved, put in or taken out", () => {
    fc.assert(
      fc.property(places, place, fc.nat(), fc.nat(), (anchors, to, one, other) => {
        const course = courseThrough(anchors, corner);
        expectWhole(course);
        expectWhole(withAnchorAt(course, one % anchors.length, to, corner));
        const segment = other % course.segments.length;
        expectWhole(withAnchorIn(course, segment, 1));
        expectWhole(withoutAnchor(course, one % anchors.length, corner));
        expectWhole(shortened(course));
      }),
    );
  });

  it("does not change its points when an anchor is put in", () => {
    fc.assert(
      fc.property(places, fc.nat(), (anchors, which) => {
        const course = courseThrough(anchors, corner);
        const more = withAnchorIn(course, which % course.segments.length, 1);
        expect(pointsOfCourse(more)).toEqual(pointsOfCourse(course));
      }),
    );
  });

  it("is the same after an anchor was put in and taken out again", () => {
    const course = courseThrough([filmPoint(0, 0), filmPoint(30, 40)], corner);
    const back = withoutAnchor(withAnchorIn(course, 0, 1), 1, corner);
    expect(back).toEqual(course);
  });

  it("asks for the paths that are missing and is complete once they are there", () => {
    const course = courseThrough([filmPoint(0, 0), filmPoint(9, 3), filmPoint(20, 20)], notYet);
    expect(isComplete(course)).toBe(false);
    expect(startsWanted(course)).toEqual([filmPoint(0, 0), filmPoint(9, 3)]);
    expect(pointsOfCourse(course)).toEqual(course.anchors);
    const filled = completed(course, corner);
    expect(isComplete(filled)).toBe(true);
    expect(startsWanted(filled)).toEqual([]);
    expectWhole(filled);
  });

  it("draws a free segment straight without asking for a path", () => {
    const course = appended(courseThrough([filmPoint(0, 0)], notYet), filmPoint(30, 0), "free", notYet);
    expect(isComplete(course)).toBe(true);
    for (const { row } of pointsOfCourse(course)) expect(row).toBe(0);
  });

  it("keeps two anchors at least", () => {
    const course = courseThrough([filmPoint(0, 0), filmPoint(9, 3)], corner);
    expect(withoutAnchor(course, 0, corner)).toBe(course);
  });

  it("becomes shorter when its first or last anchor is taken out", () => {
    const course = courseThrough([filmPoint(0, 0), filmPoint(9, 3), filmPoint(20, 20)], corner);
    expect(withoutAnchor(course, 0, corner).anchors).toEqual([filmPoint(9, 3), filmPoint(20, 20)]);
    expect(withoutAnchor(course, 2, corner).anchors).toEqual([filmPoint(0, 0), filmPoint(9, 3)]);
  });

  it("is cut at its anchors again from what the record keeps", () => {
    fc.assert(
      fc.property(places, (anchors) => {
        const course = courseThrough(anchors, corner);
        const again = courseOf(course.anchors, pointsOfCourse(course));
        expectWhole(again);
        expect(pointsOfCourse(again).every((at, index) => isSamePoint(at, pointsOfCourse(course)[index] ?? at))).toBe(
          true,
        );
      }),
    );
  });

  it("knows a straight piece from one that follows the ridge", () => {
    const first = appended(courseThrough([filmPoint(0, 0)], corner), filmPoint(30, 41), "free", corner);
    const course = appended(first, filmPoint(80, 90), "snapped", corner);
    const again = courseOf(course.anchors, pointsOfCourse(course));
    expect(again.segments.map(({ drawn }) => drawn)).toEqual(["free", "snapped"]);
  });
});
