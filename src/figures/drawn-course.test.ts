import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CoursePoint, drawnCourse } from "./drawn-course.ts";

const box = { left: 10, right: 210, top: 20, bottom: 320 };
/** A straight part of 8 mm and an arc of radius 5 by a radian: 8 + 5 = 13 mm. */
const bent: CoursePoint[] = [
  ...Array.from({ length: 9 }, (_, at): CoursePoint => [0, at]),
  ...Array.from({ length: 10 }, (_, at): CoursePoint => {
    const turn = (at + 1) / 10;
    return [5 * (1 - Math.cos(turn)), 8 + 5 * Math.sin(turn)];
  }),
];
const far = (a: { x: number; y: number }, b: { x: number; y: number }): number => Math.hypot(a.x - b.x, a.y - b.y);

describe("drawnCourse", () => {
  it("is as long as the course, a straight part and an arc", () => {
    expect(drawnCourse(bent, box).lengthMm).toBeCloseTo(13, 2);
  });

  it("stands upright in its box at one scale however the course was turned, without being mirrored", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6.3, noNaN: true }), (turn) => {
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const turned = bent.map(([x, y]): CoursePoint => [c * x - s * y, s * x + c * y]);
        const [plain, other] = [drawnCourse(bent, box), drawnCourse(turned, box)];
        for (const depth of [0, 4, 9, 13]) expect(far(plain.at(depth), other.at(depth))).toBeLessThan(1e-6);
        expect(other.at(0).x).toBeCloseTo(other.at(13).x, 0);
        expect(other.at(0).y).toBeLessThan(other.at(13).y);
      }),
    );
  });

  it("sees a course in space square to its own plane: nothing of a bend is lost, and it bends to the right", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6.3, noNaN: true }), (turn) => {
        const turned = bent.map(([x, y]): CoursePoint => [x * Math.cos(turn), x * Math.sin(turn), y]);
        const [plain, inSpace] = [drawnCourse(bent, box), drawnCourse(turned, box)];
        expect(inSpace.perMm).toBeCloseTo(plain.perMm, 6);
        const bow = (course: typeof plain) => course.at(9).x - course.at(0).x;
        expect(bow(inSpace)).toBeCloseTo(Math.abs(bow(plain)), 6);
      }),
    );
  });

  it("measures depth and what lies beside it in its own mm", () => {
    const course = drawnCourse(bent, box);
    expect(far(course.at(2), course.at(6)) / course.perMm).toBeCloseTo(4, 2);
    expect(far(course.at(6), course.beside(6, 0.5)) / course.perMm).toBeCloseTo(0.5, 6);
    expect(far(course.spotOf([0, 3]), course.at(3))).toBeLessThan(0.1);
    expect(course.part(2, 6)[0]).toEqual(course.at(2));
    expect(course.part(2, 6).at(-1)).toEqual(course.at(6));
  });

  it("keeps inside its box for any course, and never gives a number that is none", () => {
    const place = fc.double({ min: -15, max: 15, noNaN: true });
    const point = fc.tuple(place, place, place);
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 12 }), (points) => {
        const course = drawnCourse(points, box);
        for (const { x, y } of course.part(0, course.lengthMm)) {
          expect(x >= box.left - 0.01 && x <= box.right + 0.01).toBe(true);
          expect(y >= box.top - 0.01 && y <= box.bottom + 0.01).toBe(true);
        }
      }),
    );
    const alike: CoursePoint[] = [
      [1, 1],
      [1, 1],
    ];
    expect(Number.isFinite(drawnCourse(alike, box).at(0).x)).toBe(true);
  });
});
