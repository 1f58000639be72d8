import { describe, expect, it } from "vitest";
import { logGamma } from "../statistics/log-gamma.ts";
import { answer } from "../topic.ts";
import { curvatureAt, type Knot } from "./canal-bending.ts";
import { weibullShape } from "./fatigue-places.ts";
import type { FractureInput, FractureOutput } from "./fracture-input.ts";
import { fractureTopic } from "./fracture-topic.ts";
import { looselyHeld } from "./loosely-held.ts";
import { densityOf, evenDensity, likelihoodOf, momentsOf } from "./place-density.ts";

const instrument = { size: 30, taper: 0.09, lengthMm: 25, workingMm: 12 };
const explain = (changed: Partial<FractureInput>): FractureOutput =>
  answer(fractureTopic, { instrument, fragment: {}, signs: [], ...changed });

describe("the measured place", () => {
  // Notes of the formula l = (w - d0) / taper: size 30 taper .09, 0.599 mm wide, 3.32 mm.
  it("C1: comes from the length, from what is left, or from the width", () => {
    const of = (fragment: FractureInput["fragment"]) => explain({ fragment }).fragmentLength;
    expect(of({ lengthMm: { value: 3.3, sigma: 0.1 } })).toMatchObject({ mm: 3.3, sigmaMm: 0.1 });
    expect(of({ remainingLengthMm: { value: 21.7, sigma: 0.3 } })?.mm).toBeCloseTo(3.3, 9);
    const width = of({ brokenEndDiameterMm: { value: 0.599, sigma: 0.02 } });
    expect(width?.mm).toBeCloseTo(3.322, 3);
    expect(width?.sigmaMm).toBeCloseTo(Math.hypot(0.02, 0.02 / 1.96) / 0.09, 4);
  });

  // Two values of one place, weighed by 1 / sigma^2: (3.0 / 0.01 + 3.3 / 0.04) / 125 = 3.06; sigma sqrt(1/125).
  it("C1: measures are weighed by how sure they are", () => {
    const fragment = { lengthMm: { value: 3, sigma: 0.1 }, remainingLengthMm: { value: 21.7, sigma: 0.2 } };
    const { fragmentLength, cautions } = explain({ fragment });
    expect(fragmentLength?.mm).toBeCloseTo(3.06, 9);
    // chi-square 1.8 of one degree of freedom: wider by its root.
    expect(fragmentLength?.sigmaMm).toBeCloseTo(Math.sqrt(1.8 / 125), 9);
    expect(fragmentLength?.measures.map(({ name }) => name)).toEqual(["lengthMm", "remainingLengthMm"]);
    expect(cautions.join()).not.toMatch(/contradict/);
  });

  it("C1: measures that contradict each other are said, and their mean is less sure", () => {
    const fragment = { lengthMm: { value: 3, sigma: 0.1 }, remainingLengthMm: { value: 20, sigma: 0.1 } };
    const { fragmentLength, cautions } = explain({ fragment });
    expect(cautions.join()).toMatch(/contradict each other \(3.00 mm by lengthMm, 5.00 mm by remainingLengthMm\)/);
    expect(fragmentLength?.mm).toBeCloseTo(4, 9);
    expect(fragmentLength?.sigmaMm).toBeCloseTo(1, 9);
  });

  it("a measure that tells no length is left out beside one that does, and is said", () => {
    const straight = { size: 30, taper: 0 };
    const fragment = {
      lengthMm: { value: 3, sigma: 0.1 },
      brokenEndDiameterMm: { value: 0.3, sigma: 0.02 },
      remainingLengthMm: { value: 20, sigma: 0.1 },
    };
    const { fragmentLength, notComputed } = explain({ instrument: straight, fragment });
    expect(fragmentLength).toMatchObject({ mm: 3, sigmaMm: 0.1 });
    expect(notComputed.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["fragmentLength by brokenEndDiameterMm", "fragmentLength by remainingLengthMm"]),
    );
  });

  it("without a measure prior and signs alone weigh, and the rest is told as not computed", () => {
    const output = explain({ signs: ["noneVisible"] });
    expect(output).not.toHaveProperty("fragmentLength");
    expect(output).not.toHaveProperty("twist");
    expect(output.notComputed.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["fragmentLength", "twist", "breakFromOrificeMm"]),
    );
    expect(output.cautions.join()).toMatch(/place along the instrument can't weigh/);
    expect(output.wouldDecide.join()).toMatch(/length of the piece/);
  });
});

describe("the expected place", () => {
  it("without uses and course fatigue expects none: broad, said, null", () => {
    const output = explain({ fragment: { lengthMm: { value: 3, sigma: 0.1 } } });
    expect(output.explanations[0]?.predictedFromTipMm).toBeNull();
    expect(output.shifts).toEqual([]);
    expect(output.cautions.join()).toMatch(/Neither uses nor course/);
    expect(output.explanations[1]?.predictedFromTipMm).not.toBeNull();
    expect(output.explanations[2]?.predictedFromTipMm).toBeNull();
  });

  it("a course without the depth tells no place either", () => {
    const course = { radiusMm: 5, turnDeg: 45, startMm: 9, lengthMm: 15 };
    const output = explain({ course, fragment: { lengthMm: { value: 3, sigma: 0.1 } } });
    expect(output.explanations[0]?.predictedFromTipMm).toBeNull();
    expect(output).not.toHaveProperty("breakFromOrificeMm");
    expect(output.explanations[1]).not.toHaveProperty("fromOrificeMm");
  });

  it("in a straight canal nothing bends it, which is said", () => {
    const course = { radiusMm: 5, turnDeg: 0, startMm: 9, lengthMm: 15 };
    const output = explain({ course, tipDepthMm: 15, fragment: { lengthMm: { value: 3, sigma: 0.1 } } });
    expect(output.explanations[0]?.predictedFromTipMm).toBeNull();
    expect(output.cautions.join()).toMatch(/do not bend it.*One film/);
    expect(output.breakFromOrificeMm).toBe(12);
  });

  it("curves hold all breaks of their kind, along the whole instrument", () => {
    const course = { radiusMm: 5, turnDeg: 45, startMm: 9, lengthMm: 15 };
    for (const { places } of explain({ course, tipDepthMm: 15 }).explanations) {
      expect(places.reduce((sum, { density }) => sum + density * 0.2, 0)).toBeCloseTo(1, 9);
      expect(places[0]?.fromTipMm).toBeCloseTo(0.1, 9);
      expect(places.at(-1)?.fromTipMm).toBeCloseTo(24.9, 9);
      expect(places.every(({ density }) => density > 0)).toBe(true);
    }
  });

  it("an instrument of unstated length ends where it is known to reach, which is said", () => {
    const output = explain({
      instrument: { size: 30, taper: 0.04 },
      fragment: { lengthMm: { value: 18, sigma: 0.2 } },
    });
    expect(output.explanations[0]?.places.at(-1)?.fromTipMm).toBeCloseTo(17.9, 9);
    expect(output.cautions.join()).toMatch(/length is not stated/);
  });
});

describe("its parts", () => {
  // Weibull: cv^2 = gamma(1 + 2/k) / gamma(1 + 1/k)^2 - 1.
  it.each([0.1, 0.2, 0.3, 0.5, 0.9])("C3: the shape of a scatter of %d has that scatter", (cv) => {
    const k = weibullShape(cv);
    const ratio = Math.exp(logGamma(1 + 2 / k) - 2 * logGamma(1 + 1 / k));
    expect(Math.abs(Math.sqrt(ratio - 1) / cv - 1)).toBeLessThan(0.05);
  });

  const knots: Knot[] = [
    { fromOrificeMm: 0, perMm: 0 },
    { fromOrificeMm: 8, perMm: 0 },
    { fromOrificeMm: 8, perMm: 0.2 },
    { fromOrificeMm: 12, perMm: 0.2 },
    { fromOrificeMm: 12, perMm: 0 },
    { fromOrificeMm: 16, perMm: 0 },
  ];

  // An arc of R 5 mm leaves its chord by 0.1 mm over sqrt(2 x 0.1 x 5) = 1 mm to both sides: at its end half of 1/R is left.
  it("C4: a loosely held instrument straightens over sqrt(2 g R) to both sides and turns as much in all", () => {
    const loose = looselyHeld({ knots, lengthMm: 16 }, 0.1);
    expect(curvatureAt(loose.knots, 8)).toBeCloseTo(0.1, 2);
    expect(curvatureAt(loose.knots, 7)).toBeCloseTo(0, 2);
    expect(curvatureAt(loose.knots, 9)).toBeCloseTo(0.2, 2);
    expect(curvatureAt(loose.knots, 10)).toBeCloseTo(0.2, 3);
    const turned = Array.from({ length: 1600 }, (_, index) => curvatureAt(loose.knots, index * 0.01) * 0.01);
    expect(turned.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0.8, 2);
  });

  it("C4: without a clearance, or without a bend, it follows the canal", () => {
    expect(looselyHeld({ knots, lengthMm: 16 }, 0).knots).toEqual(knots);
    const straight = [knots[0], knots[5]].flatMap((one) => (one === undefined ? [] : [one]));
    expect(looselyHeld({ knots: straight, lengthMm: 16 }, 0.1).knots).toEqual(straight);
  });

  it("an even density of 20 mm has 1/20 a mm everywhere, its middle at 10 and 20 / sqrt 12 of spread", () => {
    const even = evenDensity(20);
    expect(likelihoodOf(even, { value: 7, sigma: 0.3 })).toBeCloseTo(0.05, 6);
    expect(momentsOf(even).mean).toBeCloseTo(10, 9);
    expect(momentsOf(even).sd).toBeCloseTo(20 / Math.sqrt(12), 2);
    expect(densityOf(20, () => 0)).toBeUndefined();
  });

  it("a measure blurs a density: a normal one seen with its own sigma is wider by the root of 2", () => {
    const normal = densityOf(20, (mm) => Math.exp(-(((mm - 8) / 1) ** 2) / 2));
    if (normal === undefined) throw new Error("a normal density has an area");
    expect(likelihoodOf(normal, { value: 8, sigma: 1 })).toBeCloseTo(1 / Math.sqrt(2 * Math.PI * 2), 2);
  });
});
