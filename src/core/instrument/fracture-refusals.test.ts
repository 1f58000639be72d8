import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { fractureTopic } from "./fracture-topic.ts";

const good = {
  instrument: { size: 25, taper: 0.06, lengthMm: 25 },
  course: { radiusMm: 5, turnDeg: 45, startMm: 9, lengthMm: 15 },
  tipDepthMm: 15,
  fragment: { lengthMm: { value: 3, sigma: 0.2 } },
  signs: [],
};
const use = { rpm: 300, seconds: 20, tipDepthMm: 15, course: good.course };

function refused(changed: object): { code: string; paths: string[]; says: string } {
  try {
    answer(fractureTopic, { ...good, ...changed });
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    const { code, faults } = thrown;
    return { code, paths: faults.map(({ path }) => path), says: faults.map(({ says }) => says).join("; ") };
  }
  throw new Error("was answered");
}

const value = (mm: number, sigma = 0.02) => ({ value: mm, sigma });

describe("fracture refuses", () => {
  it("answers what each of these changes", () => {
    expect(answer(fractureTopic, good).explanations).toHaveLength(3);
  });

  it.each([
    [
      "a piece longer than its instrument",
      { fragment: { lengthMm: value(30) } },
      "fragment.lengthMm",
      /longer than the instrument, 25/,
    ],
    [
      "more left than there was",
      { fragment: { remainingLengthMm: value(26) } },
      "fragment.remainingLengthMm",
      /longer/,
    ],
    [
      "an end thinner than the tip",
      { fragment: { brokenEndDiameterMm: value(0.2) } },
      "fragment.brokenEndDiameterMm",
      /thinner than the tip, 0.25/,
    ],
    [
      "an end thicker than the instrument",
      { fragment: { brokenEndDiameterMm: value(1.4) } },
      "fragment.brokenEndDiameterMm",
      /thicker/,
    ],
    ["a depth beyond the canal", { tipDepthMm: 16 }, "tipDepthMm", /beyond the canal, 15.00/],
    ["a depth beyond the instrument", { course: undefined, tipDepthMm: 26 }, "tipDepthMm", /beyond the instrument, 25/],
    ["a use beyond its canal", { uses: [use, { ...use, tipDepthMm: 17 }] }, "uses[1].tipDepthMm", /beyond the canal/],
    ["a use without a movement", { uses: [{ ...use, rpm: undefined }] }, "uses[0].rpm", /absent/],
    [
      "a use with two",
      { uses: [{ ...use, reciprocation: { forwardDeg: 150, backDeg: 30, frequencyHz: 5 } }] },
      "uses[0].reciprocation",
      /one of the two/,
    ],
    [
      "an arc beyond its canal",
      { course: { ...good.course, lengthMm: 10 }, tipDepthMm: 9 },
      "course.lengthMm",
      /before the arc/,
    ],
    [
      "an arc of a use beyond its canal",
      { uses: [{ ...use, course: { ...good.course, lengthMm: 10 } }] },
      "uses[0].course.lengthMm",
      /arc/,
    ],
    ["an instrument that can't be", { instrument: { size: 25 } }, "instrument.taper", /absent/],
    ["unwound flutes of which none is visible", { signs: ["flutesUnwound", "noneVisible"] }, "signs", /contradict/],
    [
      "tighter flutes of which none is visible",
      { signs: ["noneVisible", "flutesWoundTighter"] },
      "signs",
      /contradict/,
    ],
    ["a bend of which none is visible", { signs: ["noneVisible", "bent"] }, "signs", /contradict/],
    ["a range the wrong way round", { assumed: { bound: { low: 3, high: 2 } } }, "assumed.bound.low", /above/],
    [
      "slopes the wrong way round",
      { assumed: { slope: { strong: -0.4, weak: -0.56 } } },
      "assumed.slope.strong",
      /above/,
    ],
    ["a prior the wrong way round", { flawPrior: { low: 0.2, high: 0.1 } }, "flawPrior.low", /above/],
  ])("%s", (_, changed, path, says) => {
    const refusal = refused(changed);
    expect(refusal).toMatchObject({ code: "input.impossible", paths: [path] });
    expect(refusal.says).toMatch(says);
  });

  it("the width alone of an instrument without a taper: not determinable", () => {
    const instrument = { size: 25, taper: 0, lengthMm: 25 };
    const refusal = refused({ instrument, fragment: { brokenEndDiameterMm: value(0.25) } });
    expect(refusal).toMatchObject({ code: "input.notDeterminable", paths: ["fragment.brokenEndDiameterMm"] });
    expect(refusal.says).toMatch(/measure the length itself/);
  });

  it("what is left alone of an instrument of unknown length: not determinable", () => {
    const refusal = refused({ instrument: { size: 25, taper: 0.06 }, fragment: { remainingLengthMm: value(20) } });
    expect(refusal).toMatchObject({ code: "input.notDeterminable", paths: ["fragment.remainingLengthMm"] });
  });

  it("both faults of a piece at once", () => {
    const fragment = { lengthMm: value(30), brokenEndDiameterMm: value(0.1) };
    expect(refused({ fragment }).paths).toEqual(["fragment.lengthMm", "fragment.brokenEndDiameterMm"]);
  });

  it.each([
    [
      "course",
      {
        course: {
          points: [
            [0, 0],
            [0, 1],
            [0, 2],
          ],
        },
        tipDepthMm: 1,
      },
      "course.points",
    ],
    [
      "a use",
      {
        uses: [
          {
            ...use,
            course: {
              points: [
                [0, 0],
                [0, 1],
                [0, 2],
              ],
            },
          },
        ],
      },
      "uses[0].course.points",
    ],
  ])("fewer than 4 points of %s", (_, changed, path) => {
    const { paths } = refused(changed);
    expect(paths[0]?.startsWith(path)).toBe(true);
  });

  it.each([
    [{ signs: ["cracked"] }, "signs[0]"],
    [{ signs: undefined }, "signs"],
    [{ fragment: undefined }, "fragment"],
    [{ fragment: { lengthMm: { value: 3 } } }, "fragment.lengthMm.sigma"],
    [{ uses: [] }, "uses"],
    [{ flawPrior: { low: 0, high: 0.1 } }, "flawPrior.low"],
    [{ tipBound: "yes" }, "tipBound"],
  ])("%j: input.invalid at %s", (changed, path) => {
    expect(refused(changed)).toMatchObject({ code: "input.invalid", paths: [path] });
  });

  it("a piece as long as its instrument, but for the error of measuring, is taken", () => {
    expect(answer(fractureTopic, { ...good, fragment: { lengthMm: value(25.3, 0.2) } }).explanations).toHaveLength(3);
    expect(
      answer(fractureTopic, { ...good, fragment: { brokenEndDiameterMm: value(0.24) } }).fragmentLength?.mm,
    ).toBeCloseTo(0, 6);
  });
});
