import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { breakSigns } from "./break-signs.ts";
import type { FractureInput, FractureOutput } from "./fracture-input.ts";
import { fractureTopic } from "./fracture-topic.ts";

const known: FractureInput = {
  instrument: { size: 25, taper: 0.06, lengthMm: 25 },
  course: { radiusMm: 5, turnDeg: 45, startMm: 9, lengthMm: 15 },
  tipDepthMm: 15,
  fragment: { lengthMm: { value: 3.5, sigma: 0.2 } },
  signs: [],
};
const explain = (changed: Partial<FractureInput> = {}): FractureOutput =>
  answer(fractureTopic, { ...known, ...changed });
const bare = explain();

describe("facts", () => {
  it.each([
    [{ signs: ["flutesUnwound"] }, "torsionalOverload"],
    [{ signs: ["flutesWoundTighter"] }, "torsionalOverload"],
    [{ signs: ["noneVisible"] }, "bendingFatigue"],
    [{ signs: ["striations"] }, "bendingFatigue"],
    [{ signs: ["severalOrigins"] }, "bendingFatigue"],
    [{ signs: ["dimples"] }, "torsionalOverload"],
    [{ signs: ["circularAbrasion"] }, "torsionalOverload"],
    [{ signs: ["inclusionOrPore"] }, "flawOrJoint"],
    [{ tipBound: true }, "torsionalOverload"],
    [{ tipBound: false }, "bendingFatigue"],
    [{ stoppedAtTorqueLimit: true }, "torsionalOverload"],
    [{ stoppedAtTorqueLimit: false }, "bendingFatigue"],
  ] as const)("C7 to C9: %j raises %s", (told, favoured) => {
    const output = explain({ ...told, signs: "signs" in told ? [...told.signs] : [] });
    expect(output.atMiddle[favoured]).toBeGreaterThan(bare.atMiddle[favoured]);
    const mean = (of: FractureOutput) => of.explanations.find(({ name }) => name === favoured)?.posterior.mean ?? 0;
    expect(mean(output)).toBeGreaterThan(mean(bare));
    expect(output.facts).toHaveLength(2);
    expect(output.facts[1]?.factor[favoured]).toBe(1);
    expect(output.facts[1]?.source).toMatch(/assumption/);
  });

  it("what is not known and a bent piece weigh nothing; a sign told twice weighs once", () => {
    expect(explain({ signs: ["bent"] }).atMiddle).toEqual(bare.atMiddle);
    expect(explain({ signs: ["bent"] }).cautions.join()).toMatch(/bent is not weighed/);
    expect(explain({ signs: ["striations", "striations"] }).atMiddle).toEqual(
      explain({ signs: ["striations"] }).atMiddle,
    );
  });

  // By hand: 0.02 to 0.2 has the middle sqrt(0.004) = 0.06325 on its logarithm.
  it("C16: in canals that hardly bend it fatigue is less likely, by its whole factor below 0.3 % and by none above 1 %", () => {
    // A size 25 of taper 0 all along an arc is strained by 0.125 mm / R.
    const at = (strain: number) =>
      explain({
        instrument: { size: 25, taper: 0, lengthMm: 25 },
        course: { radiusMm: 0.125 / strain, turnDeg: strain < 0.004 ? 5 : 20, startMm: 1, lengthMm: 15 },
        fragment: {},
      });
    const factor = (output: FractureOutput) =>
      output.facts.find(({ name }) => name === "hardlyBent")?.factor.bendingFatigue;
    const middle = Math.sqrt(0.02 * 0.2);
    expect(factor(at(0.001))).toBeCloseTo(middle, 9);
    expect(factor(at(0.003))).toBeCloseTo(middle, 9);
    expect(factor(at(Math.sqrt(0.003 * 0.01)))).toBeCloseTo(Math.sqrt(middle), 9);
    expect(factor(at(0.0101))).toBeUndefined();
    expect(at(0.003).facts[0]?.says).toBe("The stated canals bend it by 0.30 % at most, which is little.");
    const own = { hardlyBent: { low: 0.5, high: 0.5 } };
    const straight = { course: { radiusMm: 5, turnDeg: 0, startMm: 9, lengthMm: 15 }, fragment: {} };
    expect(factor(explain({ ...straight, assumed: own }))).toBeCloseTo(0.5, 9);
    expect(explain(straight).weighsMost).toBe(
      "The stated canals do not bend it. That is most consistent with torsional overload or a flaw or a joint.",
    );
    expect(explain({ ...straight, course: undefined, tipDepthMm: undefined }).facts).toEqual([]);
  });

  it("C16: a break high up in a straight canal is not laid to bending that did not take place", () => {
    const output = explain({
      course: { radiusMm: 5, turnDeg: 0, startMm: 9, lengthMm: 20 },
      tipDepthMm: 20,
      fragment: { lengthMm: { value: 14, sigma: 0.2 } },
      signs: ["noneVisible"],
    });
    const [fatigue = 1, , flaw = 0] = output.explanations.map(({ posterior }) => posterior.mean);
    expect(flaw).toBeGreaterThan(fatigue);
    expect(output.sensitivity.map(({ assumption }) => assumption)).toContain("hardlyBent");
    expect(output.weighsMost).toBe("It broke 14.0 mm from its tip. That is least consistent with torsional overload.");
    const near = explain({
      ...{ course: undefined, tipDepthMm: undefined, fragment: { lengthMm: { value: 2.5, sigma: 0.2 } } },
    });
    expect(near.weighsMost).toBe("It broke 2.5 mm from its tip. That is most consistent with torsional overload.");
  });

  it("C2: what is often found together is said to be surer than it should be", () => {
    const said = (told: Partial<FractureInput>) => explain(told).cautions.filter((says) => says.startsWith("Often"));
    expect(said({ signs: ["flutesUnwound"], tipBound: true, stoppedAtTorqueLimit: true }).join()).toContain(
      "deformed flutes, a bound tip, a stop at the torque limit",
    );
    expect(said({ tipBound: true, stoppedAtTorqueLimit: true })).toHaveLength(1);
    expect(said({ signs: ["flutesWoundTighter"], stoppedAtTorqueLimit: true })).toHaveLength(1);
    expect(said({ signs: ["flutesUnwound"] })).toEqual([]);
    expect(said({ tipBound: false, stoppedAtTorqueLimit: true })).toEqual([]);
  });

  // (0.31 - 0.25) / 0.02 = 3 mm with sqrt(0.02^2 + 0.0102^2) / 0.02 = 1.1 mm; at taper .06 a third of it.
  it("C1: a length by the width of a slight taper alone is said to be unsure", () => {
    const said = (taper: number, more: FractureInput["fragment"] = {}) =>
      explain({
        instrument: { size: 25, taper, lengthMm: 25 },
        fragment: { brokenEndDiameterMm: { value: 0.25 + 3 * taper, sigma: 0.02 }, ...more },
      }).cautions.filter((says) => says.includes("width alone"));
    expect(said(0.02).join()).toContain("to 1.1 mm (one standard deviation)");
    expect(said(0.06)).toEqual([]);
    expect(said(0.02, { lengthMm: { value: 3, sigma: 0.8 } })).toEqual([]);
  });

  it("of stainless steel the published shares are said to be assumed", () => {
    const said = (alloy: FractureInput["instrument"]["alloy"]) =>
      explain({ instrument: { ...known.instrument, alloy } })
        .cautions.join()
        .includes("for stainless steel");
    expect([said("stainlessSteel"), said("nickelTitanium"), said(undefined)]).toEqual([true, false, false]);
  });

  it("every sign of the list is taken", () => {
    for (const sign of breakSigns) expect(explain({ signs: [sign] }).explanations).toHaveLength(3);
  });

  it("C9: signs of two mechanisms are said; dimples beside them are not", () => {
    const mixed = /more than one explanation/;
    expect(explain({ signs: ["striations", "circularAbrasion"] }).cautions.join()).toMatch(mixed);
    expect(explain({ signs: ["striations", "dimples"] }).cautions.join()).not.toMatch(mixed);
  });

  it("weighsMost is the fact without which the answer moves most", () => {
    expect(bare.weighsMost).toMatch(
      /^It broke 3.5 mm from its tip. That is most consistent with (bending|torsional) \w+\.$/,
    );
    expect(explain({ signs: ["circularAbrasion"] }).weighsMost).toMatch(/circular marks.*consistent with torsional/);
    const { weighsMost } = explain({ fragment: {}, signs: ["noneVisible"] });
    expect(weighsMost).toBe(
      "No deformation is visible. That is most consistent with bending fatigue or a flaw or a joint.",
    );
    expect(explain({ fragment: {} }).weighsMost).toMatch(/^Nothing that is known moves/);
  });

  it("C15: what would decide leaves out what is told", () => {
    expect(bare.wouldDecide[0]).toMatch(/dimples.*circular.*striations.*several origins.*inclusion/);
    expect(bare.wouldDecide.join()).toMatch(/flutes from the side/);
    const told = explain({ signs: ["noneVisible", "striations", "severalOrigins"] }).wouldDecide.join();
    expect(told).not.toMatch(/striations|several origins|flutes/);
    expect(told).toMatch(/dimples.*inclusion/);
    const all = ["striations", "severalOrigins", "dimples", "circularAbrasion", "inclusionOrPore"] as const;
    expect(explain({ signs: ["flutesUnwound", ...all] }).wouldDecide).toEqual([]);
  });

  it("the side view is warned of until the fracture face is seen", () => {
    expect(bare.cautions.join()).toMatch(/misclassifies/);
    expect(explain({ signs: ["dimples"] }).cautions.join()).not.toMatch(/misclassifies/);
  });
});

describe("what is assumed", () => {
  // By hand without a place: prior 0.45213 against 0.54787, a factor of 3 halved to 1.5 and doubled to 6.
  it("C11: a factor halved and doubled moves the answer as Bayes' rule says", () => {
    const { sensitivity, atMiddle } = explain({ fragment: {}, tipBound: true });
    const bound = sensitivity.find(({ assumption }) => assumption === "bound");
    const by = (factor: number): number => (0.45213 * factor) / (0.45213 * factor + 0.54787);
    expect(atMiddle.torsionalOverload).toBeCloseTo(by(3), 3);
    expect(bound?.halved.torsionalOverload).toBeCloseTo(by(1.5), 3);
    expect(bound?.doubled.torsionalOverload).toBeCloseTo(by(6), 3);
  });

  it("C11: those that enter are told, and no others", () => {
    const names = (of: FractureOutput) => of.sensitivity.map(({ assumption }) => assumption);
    const place = ["flawPrior", "elsewhere", "flawHigh", "slope", "clearanceMm", "depthSigmaMm", "lifeScatter"];
    expect(names(bare)).toEqual(place);
    expect(names(explain({ fragment: {} }))).toEqual(["flawPrior"]);
    const { course: _, tipDepthMm: __, ...unbent } = known;
    expect(names(answer(fractureTopic, unbent))).toEqual(["flawPrior", "elsewhere", "flawHigh"]);
    expect(names(explain({ signs: ["noneVisible"], tipBound: false, stoppedAtTorqueLimit: false }))).toEqual([
      ...place,
      ...["deformedInTorsion", "deformedInFatigue", "notBound", "notStopped"],
    ]);
  });

  it("each series alone gives an answer of its own, in the order of its torsional share", () => {
    const alone = bare.priors.map(({ n, N, posterior }) => ({ share: n / N, chance: posterior.torsionalOverload }));
    const sorted = alone.toSorted((a, b) => a.share - b.share).map(({ chance }) => chance);
    expect(sorted).toEqual(sorted.toSorted((a, b) => a - b));
    expect(bare.priors.map(({ verification }) => verification)).toEqual(["seen", "seen", "memory"]);
  });

  it("C10: a person's own range takes the place of an assumption, and is said", () => {
    const own = explain({ flawPrior: { low: 0.3, high: 0.4 } });
    expect(own.explanations[2]?.prior).toMatchObject({
      mean: 0.35,
      source: expect.stringMatching(/^as given: 0.3 to 0.4/),
    });
    expect(own.basis.assumptions.join()).toMatch(/0.3 to 0.4 of all breaks/);
    const sure = explain({ tipBound: true, assumed: { bound: { low: 20, high: 20 } } });
    expect(sure.atMiddle.torsionalOverload).toBeGreaterThan(explain({ tipBound: true }).atMiddle.torsionalOverload);
    expect(sure.facts[1]?.source).toBe("as given: bound 20 to 20");
  });

  it.each([
    ["elsewhere", { low: 0.5, high: 0.6 }],
    ["flawHigh", { low: 0.95, high: 0.96 }],
    ["slope", { strong: -1.2, weak: -1.1 }],
    ["clearanceMm", { low: 0.5, high: 0.6 }],
    ["depthSigmaMm", 2],
    ["lifeScatter", { low: 0.8, high: 0.9 }],
    ["deformedInTorsion", { low: 0.1, high: 0.2 }],
    ["deformedInFatigue", { low: 0.4, high: 0.5 }],
    ["bound", { low: 9, high: 10 }],
    ["stopped", { low: 9, high: 10 }],
    ["striations", { low: 90, high: 99 }],
    ["severalOrigins", { low: 90, high: 99 }],
    ["dimples", { low: 9, high: 10 }],
    ["circularAbrasion", { low: 90, high: 99 }],
    ["inclusionOrPore", { low: 90, high: 99 }],
  ] as const)("a range of %s moves the answer", (name, range) => {
    const told = {
      signs: [
        "flutesUnwound",
        "striations",
        "severalOrigins",
        "dimples",
        "circularAbrasion",
        "inclusionOrPore",
      ] as const,
      tipBound: true,
      stoppedAtTorqueLimit: true,
    };
    const usual = explain({ ...told, signs: [...told.signs] });
    const moved = explain({ ...told, signs: [...told.signs], assumed: { [name]: range } });
    expect(moved.atMiddle).not.toEqual(usual.atMiddle);
  });

  it("the steepest slope and the least scatter that are taken still give numbers", () => {
    const steep = { slope: { strong: -0.1, weak: -0.1 }, lifeScatter: { low: 0.01, high: 0.01 } };
    const output = explain({ assumed: { ...steep, depthSigmaMm: 0, clearanceMm: { low: 0, high: 0 } } });
    const numbers = output.explanations.flatMap(({ posterior, places }) => [
      posterior.mean,
      posterior.interval.low,
      ...places.map(({ density }) => density),
    ]);
    expect(numbers.every(Number.isFinite)).toBe(true);
    // So steep a wear breaks it at the coronal end of the arc alone, 6 mm from the tip.
    expect(Math.abs((output.explanations[0]?.predictedFromTipMm?.mean ?? 0) - 6)).toBeLessThan(0.25);
  });

  it.each([
    ["notBound", { tipBound: false }],
    ["notStopped", { stoppedAtTorqueLimit: false }],
  ] as const)("a range of %s moves the answer", (name, told) => {
    const moved = explain({ ...told, assumed: { [name]: { low: 0.01, high: 0.02 } } });
    expect(moved.atMiddle.torsionalOverload).toBeLessThan(explain(told).atMiddle.torsionalOverload);
  });
});
