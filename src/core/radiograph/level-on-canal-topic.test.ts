import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import {
  type At,
  bentCourse,
  bentLengthMm,
  halfOf95,
  onBentCourse,
  overClicks,
  refusalOf,
} from "./drawn-measures/bent-course-for-tests.ts";
import { levelOnCanalTopic } from "./level-on-canal-topic.ts";

const of = (at: At, rest: object = {}) =>
  answer(levelOnCanalTopic, { at, course: bentCourse, from: "orifice", ...rest });

describe("a level on a canal", () => {
  // Straight 10 mm, then an arc of radius 5 mm: distances along it in closed form; chords of 0.12 mm lose under 0.0001.
  it.each([
    [4, 0],
    [9, 0.4],
    [12, -0.5],
    [14.5, 0.3],
  ])("at %d mm and %d mm aside is so far from orifice and foramen (C1)", (along, aside) => {
    const found = of(onBentCourse(along, aside));
    expect(found.fromStartMm).toBeCloseTo(along, 2);
    expect(found.toForamenMm).toBeCloseTo(bentLengthMm - along, 2);
    expect(found.asideMm).toBeCloseTo(Math.abs(aside), 2);
    expect(found).toMatchObject({ startsAt: "orifice", intervals: {}, notComputed: [] });
    const [x, y] = onBentCourse(along);
    expect(Math.hypot(found.onCourse[0] - x, found.onCourse[1] - y)).toBeLessThan(0.01);
    const turn = Math.max(0, (along - 10) / 5);
    expect(found.direction[0]).toBeCloseTo(Math.sin(turn), 1);
    expect(found.direction[1]).toBeCloseTo(Math.cos(turn), 1);
  });

  it("beyond an end goes on straight, with a word (C1)", () => {
    expect(of([20.2, 4]).fromStartMm).toBeCloseTo(-1, 9);
    expect(of([20.2, 4]).asideMm).toBeCloseTo(0.2, 9);
    const [x, y] = onBentCourse(bentLengthMm);
    const beyond = of([x + Math.sin(Math.PI / 3), y + Math.cos(Math.PI / 3)]);
    // The last half millimetre leans 3 degrees less than the end itself: 1 mm more reads cos 3 degrees = 0.9986.
    expect(beyond.toForamenMm).toBeCloseTo(-1, 2);
    for (const { cautions } of [of([20, 4]), beyond]) expect(cautions.join()).toContain("beyond the end");
  });

  it("does not change when the film is moved, turned or mirrored, and grows with its scale (property)", () => {
    const number = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(
        number,
        number,
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.boolean(),
        (turn, by, k, mirrored) => {
          const moved = ([x, y]: At): At => [
            k * (Math.cos(turn) * x - Math.sin(turn) * y) * (mirrored ? -1 : 1) + by,
            k * (Math.sin(turn) * x + Math.cos(turn) * y),
          ];
          const found = answer(levelOnCanalTopic, {
            at: moved(onBentCourse(12, 0.2)),
            course: bentCourse.map(moved),
            from: "orifice",
          });
          expect(found.fromStartMm / of(onBentCourse(12, 0.2)).fromStartMm).toBeCloseTo(k, 6);
        },
      ),
      { numRuns: 30, seed: 3 },
    );
  });

  it("read from the other end has its two distances exchanged (property)", () => {
    const back = answer(levelOnCanalTopic, {
      at: onBentCourse(12),
      course: [...bentCourse].reverse(),
      from: "referencePoint",
    });
    expect(back.toForamenMm).toBeCloseTo(of(onBentCourse(12)).fromStartMm, 9);
    expect(back.startsAt).toBe("referencePoint");
  });

  // Level, end and the course as a whole each err by a click; the standard deviation of 4000 draws is known to 1.1 %.
  it("has intervals as wide as clicks make them (C3, Monte Carlo)", () => {
    const sigmaMm = 0.05;
    const drawn = overClicks(sigmaMm, (clicked) => {
      const [byX, byY] = clicked([0, 0]);
      const course = bentCourse.map(([x, y]): At => [x + byX, y + byY]);
      const [first = [0, 0]] = course;
      const found = answer(levelOnCanalTopic, { at: clicked(onBentCourse(14)), course, from: "orifice" });
      // The orifice is a click of its own, beside the course that was shifted as a whole: its place along that.
      return found.fromStartMm - (clicked(onBentCourse(0))[1] - first[1]);
    });
    const { low, high } = of(onBentCourse(14), { sigmaMm }).intervals.fromStartMm ?? { low: 0, high: 0 };
    expect((high - low) / 2 / halfOf95 / drawn.sigma).toBeCloseTo(1, 1);
    expect((low + high) / 2).toBeCloseTo(drawn.mean, 2);
  });

  it("an error of the scale widens them in proportion to the length (C3)", () => {
    const { intervals } = of(onBentCourse(10), { sigmaMm: 0, scaleRelativeSigma: 0.02 });
    expect(intervals.fromStartMm?.high).toBeCloseTo(10 + halfOf95 * 0.2, 3);
    expect(intervals.toForamenMm?.high).toBeCloseTo((bentLengthMm - 10) * (1 + halfOf95 * 0.02), 3);
  });

  it("far beside the course is said to be so (C4)", () => {
    expect(of(onBentCourse(5, 1.2)).cautions.join()).toContain("1.2 mm beside the course");
    expect(of(onBentCourse(5, 0.9)).cautions.join()).not.toContain("beside the course");
  });

  it("needs a course", () => {
    const course = [onBentCourse(1), onBentCourse(1)];
    expect(refusalOf(levelOnCanalTopic, { at: [0, 0], course, from: "orifice" })).toMatchObject({
      code: "trace.tooFewPoints",
      faults: [{ path: "course" }],
    });
    expect(refusalOf(levelOnCanalTopic, { at: [0, 0], course: bentCourse, from: "tip" }).code).toBe("input.invalid");
  });
});
