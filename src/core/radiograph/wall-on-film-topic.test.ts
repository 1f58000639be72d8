import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { type At, halfOf95, overClicks, refusalOf } from "./drawn-measures/bent-course-for-tests.ts";
import { wallOnFilmTopic } from "./wall-on-film-topic.ts";

const of = (outer: At, canal: At, rest: object = {}) => answer(wallOnFilmTopic, { outer, canal, ...rest });

describe("the wall of a root on a film", () => {
  it("is as thick as its two sides lie apart, whichever is named first (C1)", () => {
    // 0.9, 1.2, 1.5: a right triangle of sides 3, 4, 5.
    expect(of([10, 10], [10.9, 11.2]).thicknessMm).toBeCloseTo(1.5, 12);
    expect(of([10.9, 11.2], [10, 10]).thicknessMm).toBeCloseTo(1.5, 12);
  });

  it.each([
    [0.2, ["below", "below"]],
    [0.5, ["above", "below"]],
    [1.2, ["above", "above"]],
    [0.3, ["above", "below"]],
  ])("of %d mm stands so to 0.3 and 1 mm without a click error (C3)", (thickness, stands) => {
    expect(of([0, 0], [thickness, 0]).limits.map((one) => one.stands)).toEqual(stands);
  });

  it("is not decided where its interval holds a limit (C3)", () => {
    const { limits, intervals } = of([0, 0], [0.35, 0], { sigmaMm: 0.05 });
    expect(limits).toMatchObject([
      { source: "lim-stock-1987", limitMm: 0.3, mark: "memory", stands: "notDecided" },
      { source: "caputo-standlee-1976", limitMm: 1, mark: "memory", stands: "below" },
    ]);
    expect(intervals.thicknessMm?.high).toBeCloseTo(0.35 + halfOf95 * 0.05 * Math.SQRT2, 4);
  });

  // The standard deviation of 4000 draws is known to 1.1 %.
  it("has an interval as wide as two clicks make it (C2, Monte Carlo)", () => {
    const drawn = overClicks(0.06, (clicked) => of(clicked([10, 10]), clicked([11, 11])).thicknessMm);
    const { low, high } = of([10, 10], [11, 11], { sigmaMm: 0.06 }).intervals.thicknessMm ?? { low: 0, high: 0 };
    expect((high - low) / 2 / halfOf95 / drawn.sigma).toBeCloseTo(1, 1);
  });

  it("adds the error of the scale, and never reaches below 0 (C2)", () => {
    const scaled = of([0, 0], [2, 0], { sigmaMm: 0, scaleRelativeSigma: 0.03 }).intervals.thicknessMm;
    expect(scaled?.low).toBeCloseTo(2 - halfOf95 * 0.06, 3);
    const thin = of([0, 0], [0.1, 0], { sigmaMm: 0.1 });
    expect(thin.intervals.thicknessMm?.low).toBe(0);
    expect(thin.cautions.join()).toContain("no thicker than the clicks err");
  });

  it("says which wall is seen and which are not (C4)", () => {
    expect(of([0, 0], [1, 0], { side: "distal" }).cautions[0]).toContain("the distal wall");
    expect(of([0, 0], [1, 0]).cautions[0]).toContain("buccal and lingual walls are not seen");
  });

  it("needs two places", () => {
    expect(refusalOf(wallOnFilmTopic, { outer: [1, 1], canal: [1, 1] })).toMatchObject({
      code: "input.impossible",
      faults: [{ path: "canal" }],
    });
    const other = { outer: [1, 1], canal: [1, 2], side: "buccal" };
    expect(refusalOf(wallOnFilmTopic, other)).toMatchObject({ code: "input.invalid", faults: [{ path: "side" }] });
  });
});
