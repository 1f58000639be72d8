import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { crownRootTopic } from "./crown-root-topic.ts";
import { type At, halfOf95, overClicks, refusalOf } from "./drawn-measures/bent-course-for-tests.ts";

const of = (crown: At, level: At, apex: At, rest: object = {}) =>
  answer(crownRootTopic, { crown, level, apex, levelIs: "boneCrest", ...rest });

describe("the ratio of crown to root", () => {
  it("parts the line from cusp to apex at the foot of the level (C1)", () => {
    const found = of([10, 5], [12, 13], [10, 25]);
    expect(found).toMatchObject({ crownMm: 8, rootMm: 12, kind: "clinical", foot: [10, 13], notComputed: [] });
    expect(found.crownToRoot).toBeCloseTo(2 / 3, 12);
    expect(of([10, 5], [12, 13], [10, 25], { levelIs: "cementoEnamelJunction" }).kind).toBe("anatomical");
  });

  // Mean lengths of an upper central incisor in a teaching table: crown 10.5, root 13 mm (seen): ratio 0.808.
  it("of an upper central incisor's mean lengths is 0.81", () => {
    expect(of([0, 0], [0, 10.5], [0, 23.5]).crownToRoot).toBeCloseTo(0.808, 3);
  });

  it("does not change with scale, place and turn, and is turned over where the ends are exchanged (property)", () => {
    const number = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.double({ min: 0.2, max: 5, noNaN: true }), (turn, by, k) => {
        const moved = ([x, y]: At): At => [
          k * (Math.cos(turn) * x - Math.sin(turn) * y) + by,
          k * (Math.sin(turn) * x + Math.cos(turn) * y),
        ];
        const [crown, level, apex] = [moved([10, 5]), moved([11, 13]), moved([9, 25])];
        const found = of(crown, level, apex).crownToRoot;
        expect(found).toBeCloseTo(of([10, 5], [11, 13], [9, 25]).crownToRoot, 8);
        expect(of(apex, level, crown).crownToRoot).toBeCloseTo(1 / found, 8);
      }),
      { numRuns: 40, seed: 5 },
    );
  });

  // A level 3 mm beside the axis, so that a turn of the axis counts; 4000 draws know the deviation to 1.1 %.
  it.each(["crownMm", "rootMm", "crownToRoot"] as const)(
    "%s has an interval as clicks make it (C3, Monte Carlo)",
    (name) => {
      const sigmaMm = 0.08;
      const places = [
        [10, 5],
        [13, 12],
        [10, 21],
      ] satisfies At[];
      const [crown, level, apex] = places as [At, At, At];
      const drawn = overClicks(sigmaMm, (clicked) => of(clicked(crown), clicked(level), clicked(apex))[name] ?? 0);
      const { low, high } = of(crown, level, apex, { sigmaMm }).intervals[name] ?? { low: 0, high: 0 };
      expect((high - low) / 2 / halfOf95 / drawn.sigma).toBeCloseTo(1, 1);
    },
  );

  it("holds no error of the scale; the lengths do (C3)", () => {
    const { intervals } = of([0, 0], [0, 8], [0, 20], { sigmaMm: 0, scaleRelativeSigma: 0.05 });
    expect(intervals.crownToRoot?.high).toBeCloseTo(8 / 12, 12);
    expect(intervals.crownMm?.high).toBeCloseTo(8 + halfOf95 * 0.4, 3);
  });

  it("is given on a film without a scale, in px and without lengths (C2)", () => {
    const found = of([0, 0], [0, 200], [0, 500], { unit: "px", sigmaPx: 1 });
    expect(found).toMatchObject({ notComputed: [{ name: "crownMm" }, { name: "rootMm" }] });
    expect(found.crownToRoot).toBeCloseTo(2 / 3, 12);
    expect(Object.keys(found.intervals)).toEqual(["crownToRoot"]);
    expect(found.cautions.join()).toContain("Pixels are taken as square");
    expect(of([0, 0], [0, 200], [0, 500], { unit: "px" }).intervals).toEqual({});
  });

  it.each([
    [{ apex: [0, 0] }, "apex"],
    [{ level: [0, -1] }, "level"],
    [{ level: [3, 20] }, "level"],
  ])("refuses %j as impossible", (change, path) => {
    const input = { crown: [0, 0], level: [0, 8], apex: [0, 20], levelIs: "boneCrest", ...change };
    expect(refusalOf(crownRootTopic, input)).toMatchObject({ code: "input.impossible", faults: [{ path }] });
  });

  it("refuses a level of no name", () => {
    const input = { crown: [0, 0], level: [0, 8], apex: [0, 20], levelIs: "gum" };
    expect(refusalOf(crownRootTopic, input)).toMatchObject({ code: "input.invalid", faults: [{ path: "levelIs" }] });
  });
});
