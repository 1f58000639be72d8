import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { answer } from "../topic.ts";
import { fitTopic } from "./fit-topic.ts";

const of = (input: object) => answer(fitTopic, input);
const measured = (value: number, sigma = 0.02) => ({ value, sigma });

const red6 = { name: "25/.06", instrument: { size: 25, taper: 0.06, lengthMm: 25 } };
const red2 = { name: "25/.02", instrument: { size: 25, taper: 0.02, lengthMm: 25 } };
const blue9 = { name: "30/.09", instrument: { size: 30, taper: 0.09, lengthMm: 25 } };
const parallel = { name: "25/.00", instrument: { size: 25, taper: 0, lengthMm: 25 } };

describe("the length that a broken end speaks for", () => {
  // l = (w - D0) / taper; sqrt(0.02^2 + 0.02^2) / taper: 0.31 mm for taper .09, 1.4 mm for .02. Worked by hand.
  it.each([
    ["30/.09", blue9, 0.599, 3.322, 0.3143],
    ["25/.02", red2, 0.31, 3, Math.SQRT2],
  ])("of %s is known, with its error (C4)", (_, candidate, width, mm, sigmaMm) => {
    const found = of({
      fragment: { brokenEndDiameterMm: measured(width) },
      candidates: [candidate],
      diameterSigmaMm: 0.02,
    });
    expect(found.candidates[0]?.lengthFromWidth).toEqual({
      mm: expect.closeTo(mm, 3),
      sigmaMm: expect.closeTo(sigmaMm, 3),
      interval: {
        low: expect.closeTo(Math.max(0, mm - 1.96 * sigmaMm), 2),
        high: expect.closeTo(mm + 1.96 * sigmaMm, 2),
        level: 0.95,
      },
    });
    expect(found.cautions.join().includes("measure the length itself")).toBe(candidate === red2);
  });

  it("is absent where the instrument does not widen, with the reason (C4)", () => {
    const found = of({ fragment: { brokenEndDiameterMm: measured(0.25) }, candidates: [parallel] });
    expect(found.candidates[0]?.lengthFromWidth).toBeUndefined();
    expect(found.notComputed).toEqual([
      { name: "lengthFromWidth of 25/.00", why: expect.stringContaining("not determinable") },
    ]);
  });
});

describe("the misfit", () => {
  // 25/.06 at 3 mm: 0.43 mm. Sigma^2 = 0.02^2 + (0.06 * 0.1)^2 + 0.01^2; off by 0.05 mm.
  it("of a broken end is its distance over the errors of width, length and instrument (C2)", () => {
    const fragment = { lengthMm: measured(3, 0.1), brokenEndDiameterMm: measured(0.48) };
    const [found] = of({ fragment, candidates: [red6], diameterSigmaMm: 0.01 }).candidates;
    const sigmaMm = Math.sqrt(0.02 ** 2 + 0.006 ** 2 + 0.01 ** 2);
    expect(found?.misfitSd).toBeCloseTo(0.05 / sigmaMm, 9);
    expect(found?.compared).toEqual([
      {
        name: "brokenEndDiameterMm",
        measuredMm: 0.48,
        expectedMm: expect.closeTo(0.43, 9),
        sigmaMm: expect.closeTo(sigmaMm, 9),
      },
    ]);
  });

  it("of a tip is its distance over the errors of measuring and instrument (C2)", () => {
    const [found] = of({
      fragment: { tipDiameterMm: measured(0.28) },
      candidates: [red6],
      diameterSigmaMm: 0.015,
    }).candidates;
    expect(found?.misfitSd).toBeCloseTo(0.03 / 0.025, 9);
    expect(found?.consistent).toBe(true);
  });

  it("takes an instrument's own error from the tolerance where none is given (C1)", () => {
    const [found] = of({ fragment: { tipDiameterMm: measured(0.28) }, candidates: [red6] }).candidates;
    expect(found?.misfitSd).toBeCloseTo(0.03 / Math.hypot(0.02, 0.02 / 1.96), 4);
    const wide = { name: "80/.02", instrument: { size: 80, taper: 0.02 } };
    const [large] = of({ fragment: { tipDiameterMm: measured(0.83) }, candidates: [wide] }).candidates;
    expect(large?.misfitSd).toBeCloseTo(0.03 / Math.hypot(0.02, 0.04 / 1.96), 4);
  });

  it("shares the instrument's error between both ends: alike is likelier than opposite (C3, brute force)", () => {
    const own = 0.02;
    const misfit = (tip: number, end: number) =>
      of({
        fragment: {
          tipDiameterMm: measured(0.25 + tip),
          brokenEndDiameterMm: measured(0.43 + end),
          lengthMm: measured(3, 0.001),
        },
        candidates: [red6],
        diameterSigmaMm: own,
      }).candidates[0]?.misfitSd ?? 0;
    // Least squares over the shared error, by trying: (a - x)^2/s^2 + (b - x)^2/s^2 + x^2/own^2.
    const tried = (a: number, b: number) => {
      const costs = Array.from({ length: 4001 }, (_, index) => {
        const x = -0.1 + index * 0.00005;
        return ((a - x) / 0.02) ** 2 + ((b - x) / 0.02) ** 2 + (x / own) ** 2;
      });
      return Math.sqrt(Math.min(...costs));
    };
    for (const [a, b] of [
      [0.03, 0.03],
      [0.03, -0.03],
      [0, 0.04],
    ] as const)
      expect(misfit(a, b)).toBeCloseTo(tried(a, b), 3);
    expect(misfit(0.03, 0.03)).toBeLessThan(misfit(0.03, -0.03));
  });

  it("without a length counts only a width that the instrument has nowhere (C2)", () => {
    const inside = of({ fragment: { brokenEndDiameterMm: measured(0.6) }, candidates: [red6, red2] });
    expect(inside.candidates.map(({ name, misfitSd, compared }) => [name, misfitSd, compared.length])).toEqual([
      ["25/.06", 0, 0],
      // 25/.02 is nowhere thicker than 0.57 mm.
      ["25/.02", expect.closeTo(0.03 / Math.hypot(0.02, 0.02 / 1.96), 4), 1],
    ]);
    expect(inside.cautions.join()).toContain("Without its length");
  });

  it("does not change when every length is given in another size (property)", () => {
    const scale = fc.double({ min: 0.8, max: 1.5, noNaN: true });
    const at = (k: number) =>
      of({
        fragment: {
          lengthMm: measured(3 * k, 0.1 * k),
          tipDiameterMm: measured(0.27 * k, 0.02 * k),
          brokenEndDiameterMm: measured(0.46 * k, 0.02 * k),
        },
        candidates: [{ instrument: { tipMm: 0.25 * k, taper: 0.06 } }],
        diameterSigmaMm: 0.01 * k,
      }).candidates[0]?.misfitSd ?? 0;
    fc.assert(
      fc.property(scale, (k) => {
        expect(at(k)).toBeCloseTo(at(1), 6);
      }),
      { numRuns: 20 },
    );
  });

  // Pieces broken from 25/.06 and measured with the stated errors: 95 % are consistent with it, 1.5 % either way for 2000.
  it("calls 95 % of a candidate's own pieces consistent, and few of another's (C3, Monte Carlo)", () => {
    const { normal } = seededRandom(7);
    const own = 0.02 / 1.96;
    const rounds = Array.from({ length: 2000 }, () => {
      const [shift, lengthMm] = [own * normal(), 3 + 0.5 * normal()];
      const fragment = {
        lengthMm: measured(lengthMm + 0.1 * normal(), 0.1),
        tipDiameterMm: measured(0.25 + shift + 0.02 * normal()),
        brokenEndDiameterMm: measured(0.25 + 0.06 * lengthMm + shift + 0.02 * normal()),
      };
      return of({ fragment, candidates: [red6, blue9] }).candidates;
    });
    const share = (name: string) =>
      rounds.filter((fits) => fits.some((one) => one.name === name && one.consistent)).length / rounds.length;
    expect(Math.abs(share("25/.06") - 0.95)).toBeLessThan(0.015);
    expect(share("30/.09")).toBeLessThan(0.05);
  });
});

describe("the candidates", () => {
  const fragment = { lengthMm: measured(3.3, 0.1), brokenEndDiameterMm: measured(0.45) };

  it("come with the best fit first, and named by number where no name is given (C5)", () => {
    const found = of({ fragment, candidates: [blue9, red2, { instrument: red6.instrument }] });
    expect(found.candidates.map(({ name, consistent }) => [name, consistent])).toEqual([
      ["instrument 3", true],
      ["25/.02", false],
      ["30/.09", false],
    ]);
    expect(found.cautions).toEqual([expect.stringContaining("A slight taper")]);
  });

  it("that fit alike are not decided between; where none fits, that is said (C5)", () => {
    const twins = of({ fragment, candidates: [red6, { ...red6, name: "another 25/.06" }] });
    expect(twins.cautions.join()).toContain("don't decide between 25/.06, another 25/.06");
    expect(of({ fragment, candidates: [blue9] }).cautions.join()).toContain("consistent with none");
  });

  it("shorter than the fragment can't be it, with the reason; its error is allowed (C5)", () => {
    const short = { name: "short", instrument: { size: 25, taper: 0.02, workingMm: 10, lengthMm: 12 } };
    const long = { lengthMm: measured(12.5, 0.1), brokenEndDiameterMm: measured(0.5) };
    const found = of({ fragment: long, candidates: [short, red2] });
    expect(found.candidates.at(-1)).toEqual({
      name: "short",
      consistent: false,
      compared: [],
      impossible: "the fragment of 12.5 mm is longer than the instrument, 12 mm",
    });
    const nearly = { ...long, lengthMm: measured(12.1, 0.1) };
    expect(of({ fragment: nearly, candidates: [short] }).candidates[0]?.impossible).toBeUndefined();
  });

  it("measured at the tip are told that a tip is shaped (C1)", () => {
    const found = of({ fragment: { tipDiameterMm: measured(0.25) }, candidates: [red6] });
    expect(found.cautions.join()).toContain("A real tip is shaped");
    expect(found.notComputed).toEqual([{ name: "lengthFromWidth", why: "the broken end was not measured" }]);
  });
});

describe("what can't be", () => {
  const broken = { brokenEndDiameterMm: measured(0.4) };
  it.each([
    [
      "a length alone",
      { fragment: { lengthMm: measured(3) }, candidates: [red6] },
      "input.notDeterminable",
      "fragment",
    ],
    [
      "a broken end thinner than the tip",
      { fragment: { tipDiameterMm: measured(0.5), ...broken }, candidates: [red6] },
      "input.impossible",
      "fragment.brokenEndDiameterMm",
    ],
    [
      "a fragment longer than every candidate",
      { fragment: { ...broken, lengthMm: measured(26) }, candidates: [red6] },
      "input.impossible",
      "fragment.lengthMm",
    ],
    [
      "an instrument that can't be",
      { fragment: broken, candidates: [red6, { instrument: { size: 25 } }] },
      "input.impossible",
      "candidates[1].instrument.taper",
    ],
    ["no candidate", { fragment: broken, candidates: [] }, "input.invalid", "candidates"],
    [
      "a measure without its error",
      { fragment: { brokenEndDiameterMm: { value: 0.4 } }, candidates: [red6] },
      "input.invalid",
      "fragment.brokenEndDiameterMm.sigma",
    ],
    [
      "an error of 0",
      { fragment: { brokenEndDiameterMm: measured(0.4, 0) }, candidates: [red6] },
      "input.invalid",
      "fragment.brokenEndDiameterMm.sigma",
    ],
  ])("%s is refused at its place", (_, given, code, path) => {
    expect(refusalOf(fitTopic, given)).toMatchObject({ code, faults: [{ path }] });
  });

  it("but a broken end thinner than the tip by its error is taken, and faults are told together", () => {
    const nearly = { tipDiameterMm: measured(0.43), ...broken };
    expect(of({ fragment: nearly, candidates: [red6] }).candidates).toHaveLength(1);
    const given = { fragment: { tipDiameterMm: measured(0.5), ...broken }, candidates: [{ instrument: {} }] };
    expect(refusalOf(fitTopic, given).faults.map(({ path }) => path)).toEqual([
      "fragment.brokenEndDiameterMm",
      "candidates[0].instrument.taper",
      "candidates[0].instrument.size",
    ]);
  });
});
