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
import { fragmentOnFilmTopic } from "./fragment-on-film-topic.ts";

/** The bent canal's bend as its closed form has it: 60 degrees from 10 mm to its end. */
const bend = { fromMm: 10, toMm: bentLengthMm, angleDeg: 60 };
const stretch = (fromMm: number, toMm: number, aside = 0): At[] =>
  Array.from({ length: 21 }, (_, at) => onBentCourse(fromMm + ((toMm - fromMm) * at) / 20, aside));
const of = (fragment: At[], rest: object = {}) =>
  answer(fragmentOnFilmTopic, { fragment, course: bentCourse, from: "orifice", bend, ...rest });

describe("a fragment on a film", () => {
  // Closed forms: arc of radius 5 mm; the chord of 3 mm of it is 10 sin 0.3 = 2.955 mm.
  it("is as long as its line and lies as deep as its ends (C1, C2)", () => {
    const found = of(stretch(11, 14));
    expect(found.lengthMm).toBeCloseTo(3, 2);
    expect(found.straightMm).toBeCloseTo(10 * Math.sin(0.3), 3);
    expect(found.topDepthMm).toBeCloseTo(11, 2);
    expect(found.tipDepthMm).toBeCloseTo(14, 2);
    expect(found.tipToApexMm).toBeCloseTo(bentLengthMm - 14, 2);
    expect(found).toMatchObject({ startsAt: "orifice", asideMm: expect.closeTo(0, 2), notComputed: [] });
  });

  it("is the same whichever end was marked first (property)", () => {
    const { basis: _, ...there } = of(stretch(11, 14));
    const { basis: __, ...back } = of(stretch(11, 14).reverse());
    expect(back).toEqual({ ...there, lengthMm: expect.closeTo(there.lengthMm, 9) });
  });

  it("reaches to a marked apex where there is one (C2)", () => {
    const apex: At = [onBentCourse(bentLengthMm - 0.5)[0], onBentCourse(bentLengthMm - 0.5)[1]];
    expect(of(stretch(11, 14), { apex }).tipToApexMm).toBeCloseTo(bentLengthMm - 14.5, 2);
    expect(of(stretch(14, bentLengthMm), { apex }).tipToApexMm).toBeCloseTo(-0.5, 2);
  });

  it.each([
    [1, 3, "coronal", "coronal", "before"],
    [4, 6, "coronal", "middle", "before"],
    [9, 10.1, "middle", "middle", "in"],
    [11, 14, "apical", "apical", "in"],
  ])("from %d to %d mm lies in the %s and %s third, %s the bend (C3, C4)", (from, to, top, tip, lies) => {
    const found = of(stretch(from, to));
    expect(found.thirds).toMatchObject({ top: { third: top, within: [top] }, tip: { third: tip, within: [tip] } });
    expect(found.bend).toMatchObject({ lies, within: [lies], angleDeg: 60 });
  });

  it("beyond a bend that ends before it is told so (C4)", () => {
    const earlier = { bend: { fromMm: 4, toMm: 9, angleDeg: 20 } };
    expect(of(stretch(9.5, 12), earlier).bend).toMatchObject({ lies: "beyond", within: ["beyond"] });
  });

  it("names every third and every side of the bend that its interval reaches (C3, C4)", () => {
    // Top at 9.9 mm of 15.24: a third of it ends at 10.157; 1.96 sqrt 2 * 0.2 = 0.55 mm.
    const found = of(stretch(8, 9.9), { sigmaMm: 0.2 });
    expect(found.thirds?.tip).toEqual({ third: "middle", within: ["middle", "apical"] });
    expect(found.bend?.within.toSorted()).toEqual(["before", "in"]);
  });

  // Both ends, the course's start and the course as a whole err by a click; 4000 draws know the deviation to 1.1 %.
  it("has intervals as wide as clicks make them (C5, Monte Carlo)", () => {
    const sigmaMm = 0.05;
    const ends = [onBentCourse(11), onBentCourse(14)] as const;
    const drawn = (name: "lengthMm" | "tipToApexMm") =>
      overClicks(sigmaMm, (clicked) => {
        const [byX, byY] = clicked([0, 0]);
        const course = bentCourse.map(([x, y]): At => [x + byX, y + byY]);
        const fragment = ends.map(clicked);
        const apex = clicked(onBentCourse(bentLengthMm));
        return answer(fragmentOnFilmTopic, { fragment, course, from: "orifice", apex })[name] ?? 0;
      }).sigma;
    const { intervals } = of([...ends], { sigmaMm, apex: onBentCourse(bentLengthMm) });
    for (const name of ["lengthMm", "tipToApexMm"] as const) {
      const { low, high } = intervals[name] ?? { low: 0, high: 0 };
      expect((high - low) / 2 / halfOf95 / drawn(name)).toBeCloseTo(1, 1);
    }
  });

  it("adds the error of the scale by its share (C5)", () => {
    const { intervals } = of(stretch(11, 14), { sigmaMm: 0, scaleRelativeSigma: 0.02 });
    expect(intervals.lengthMm?.high).toBeCloseTo(3 * (1 + halfOf95 * 0.02), 2);
    expect(intervals.topDepthMm?.low).toBeCloseTo(11 * (1 - halfOf95 * 0.02), 2);
  });

  it("without a course has its length alone, with a reason for the rest", () => {
    const found = answer(fragmentOnFilmTopic, { fragment: stretch(2, 4) });
    expect(found.lengthMm).toBeCloseTo(2, 9);
    expect(found.notComputed).toContainEqual({ name: "topDepthMm", why: "the canal is not traced on this film" });
    expect(found.intervals).toEqual({});
  });

  it("in a course from the reference point, or of no known bend, says what it can't tell (C3, C4)", () => {
    const found = of(stretch(11, 14), { from: "referencePoint", bend: undefined });
    expect(found.notComputed.map(({ name }) => name)).toEqual(["thirds", "bend"]);
    expect(found).toMatchObject({ startsAt: "referencePoint" });
  });

  it("far beside the course is said to be so", () => {
    expect(of(stretch(11, 13, 1.5)).cautions.join()).toContain("1.5 mm beside the course");
  });

  it.each([
    [{ fragment: [[0, 0]] }, "trace.tooFewPoints", "fragment"],
    [{ fragment: stretch(1, 2), course: bentCourse }, "input.impossible", "from"],
    [{ fragment: stretch(1, 2), course: [[0, 0]], from: "orifice" }, "trace.tooFewPoints", "course"],
    [{ fragment: stretch(1, 2), bend: { fromMm: 3, toMm: 2, angleDeg: 5 } }, "input.impossible", "bend.toMm"],
    [{ fragment: stretch(1, 2), bend: { fromMm: -3, toMm: 2, angleDeg: 5 } }, "input.invalid", "bend.fromMm"],
  ])("refuses %#", (input, code, path) => {
    expect(refusalOf(fragmentOnFilmTopic, input)).toMatchObject({ code, faults: [{ path }] });
  });
});
