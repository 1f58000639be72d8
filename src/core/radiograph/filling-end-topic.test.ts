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
import { fillingEndTopic } from "./filling-end-topic.ts";

const apex = onBentCourse(bentLengthMm);
const of = (end: At, rest: object = {}) => answer(fillingEndTopic, { end, apex, course: bentCourse, ...rest });

describe("the end of a filling", () => {
  // Closed form: the arc of radius 5 mm; a chord of 3 mm on it would read 2.955.
  it.each([0, 0.5, 1.2, 3])("%d mm before the apex along a bent canal reads so (C1)", (short) => {
    const found = of(onBentCourse(bentLengthMm - short, 0.2));
    expect(found.shortMm).toBeCloseTo(short, 2);
    expect(found.distanceMm).toBeCloseTo(short, 2);
    expect(found.asideMm).toBeCloseTo(0.2, 2);
    expect(found.readAlong).toBe("course");
    const steps = found.way
      .slice(1)
      .map(([x, y], at) => Math.hypot(x - (found.way[at]?.[0] ?? 0), y - (found.way[at]?.[1] ?? 0)));
    // The way begins at the mark, 0.2 mm beside the course: a little longer than along it.
    expect(steps.reduce((sum, step) => sum + step, 0)).toBeLessThan(short + 0.21);
    expect(steps.reduce((sum, step) => sum + step, 0)).toBeGreaterThan(short - 0.01);
    expect(found.way.at(-1)).toEqual(apex);
  });

  it("beyond the apex reads below 0 (C1)", () => {
    const beyond: At = [apex[0] + 0.8 * Math.sin(Math.PI / 3), apex[1] + 0.8 * Math.cos(Math.PI / 3)];
    expect(of(beyond)).toMatchObject({ lies: "beyond", shortMm: expect.closeTo(-0.8, 2), way: [beyond, apex] });
  });

  it("is read straight where the course ends before the apex, its last direction telling the side (C2)", () => {
    const course = bentCourse.filter(([, y]) => y < 15);
    const short = of([20, 14.9], { course });
    expect(short).toMatchObject({ readAlong: "straight", lies: "short" });
    expect(short.shortMm).toBeCloseTo(Math.hypot(apex[0] - 20, apex[1] - 14.9), 12);
    expect(of([20, apex[1] + 3], { course })).toMatchObject({ lies: "beyond" });
  });

  it("without a course takes the side that is said, or tells the distance alone (C2)", () => {
    const bare = { course: undefined };
    const end: At = [apex[0], apex[1] - 1.5];
    expect(of(end, { ...bare, lies: "short" }).shortMm).toBeCloseTo(1.5, 12);
    expect(of(end, { ...bare, lies: "beyond" }).shortMm).toBeCloseTo(-1.5, 12);
    const neither = of(end, bare);
    expect(neither.distanceMm).toBeCloseTo(1.5, 12);
    expect(neither.notComputed.map(({ name }) => name)).toEqual(["shortMm", "lies"]);
    expect(neither.classes).toEqual([]);
    expect(of(apex, bare)).toMatchObject({ shortMm: 0, lies: "short" });
  });

  it("does not change when the film is mirrored or scaled (property)", () => {
    for (const [kx, ky] of [
      [-1, 1],
      [2, 2],
    ] as const) {
      const moved = ([x, y]: At): At => [kx * x, ky * y];
      const end = onBentCourse(14);
      const found = answer(fillingEndTopic, { end: moved(end), apex: moved(apex), course: bentCourse.map(moved) });
      expect(found.shortMm).toBeCloseTo(ky * (of(end).shortMm ?? 0), 9);
    }
  });

  // End, apex and the course as a whole each err by a click; 4000 draws know the deviation to 1.1 %.
  it("has an interval as wide as clicks make it (C3, Monte Carlo)", () => {
    const sigmaMm = 0.05;
    const end = onBentCourse(bentLengthMm - 1.5);
    const drawn = overClicks(sigmaMm, (clicked) => {
      const [byX, byY] = clicked([0, 0]);
      const course = bentCourse.map(([x, y]): At => [x + byX, y + byY]);
      return answer(fillingEndTopic, { end: clicked(end), apex: clicked(apex), course }).shortMm ?? 0;
    });
    const { low, high } = of(end, { sigmaMm }).intervals.shortMm ?? { low: 0, high: 0 };
    expect((high - low) / 2 / halfOf95 / drawn.sigma).toBeCloseTo(1, 1);
  });

  it("adds the error of the scale by its share (C3)", () => {
    const { intervals } = of(onBentCourse(bentLengthMm - 2), { sigmaMm: 0, scaleRelativeSigma: 0.1 });
    expect(intervals.shortMm?.high).toBeCloseTo(2 + halfOf95 * 0.2, 2);
  });

  it("is not decided where the interval holds 0 (C4)", () => {
    const near = of(onBentCourse(bentLengthMm - 0.1), { sigmaMm: 0.1 });
    expect(near).toMatchObject({ lies: "notDecided" });
    expect(near.intervals.distanceMm?.low).toBe(0);
    expect(near.cautions.join()).toContain("does not decide");
  });

  // Table 1 of the status scale (seen): exactly 2.0 mm is L1, 2.01 is L2, any length beyond is L3.
  it.each([
    [0, "L1", "0 to 1 mm short"],
    [1, "L1", "0 to 1 mm short"],
    [1.01, "L1", "1 to 3 mm short"],
    [2, "L1", "1 to 3 mm short"],
    [2.01, "L2", "1 to 3 mm short"],
    [3.01, "L2", "shorter than the groups compared"],
    [-0.01, "L3", "beyond the apex"],
  ])("%d mm short is of the published classes %s and %s (C5)", (short, status, group) => {
    const found = answer(fillingEndTopic, {
      end: [0, 0],
      apex: [Math.abs(short), 0],
      lies: short < 0 ? "beyond" : "short",
    });
    expect(found.classes).toMatchObject([
      { source: "pess-2020", class: expect.stringMatching(new RegExp(`^${status}, `)) },
      { source: "schaeffer-2005", class: group },
    ]);
  });

  it("names every class that the interval reaches (C5)", () => {
    const input = { end: [0, 0], apex: [1.5, 0], lies: "short", sigmaMm: 0.7 };
    // 1.5 -/+ 1.96 sqrt 2 * 0.7: -0.44 to 3.44.
    const [status, group] = answer(fillingEndTopic, input).classes;
    expect(status?.within).toHaveLength(3);
    expect(group?.within).toHaveLength(4);
  });

  it("far beside the course is said to be so, of end and of apex (C4)", () => {
    expect(of(onBentCourse(13, 1.3)).cautions.join()).toContain("1.3 mm beside the course: is it the end");
    const far = { apex: onBentCourse(bentLengthMm - 0.1, -1.4) };
    expect(of(onBentCourse(13), far).cautions.join()).toContain("The apex lies 1.4 mm beside the course");
  });

  it("refuses a course of one place", () => {
    const input = { end: [0, 0], apex: [1, 0], course: [[0, 0]] };
    expect(refusalOf(fillingEndTopic, input)).toMatchObject({
      code: "trace.tooFewPoints",
      faults: [{ path: "course" }],
    });
    expect(refusalOf(fillingEndTopic, { end: [0, 0] })).toMatchObject({ code: "input.invalid" });
  });
});
