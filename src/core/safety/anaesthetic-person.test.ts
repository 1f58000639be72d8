import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { anaestheticTopic } from "./anaesthetic-topic.ts";
import { standingCaution } from "./standing-caution.ts";

const of = (input: object) => answer(anaestheticTopic, input);
const adult = { bodyMassKg: 70, ageYears: 40 };
const lidocaine = { agent: "lidocaine", percent: 2, cartridgeMl: 1.8 };
const bupivacaine = { agent: "bupivacaine", percent: 0.5, cartridgeMl: 1.8 };
const epinephrine = (ratio: number) => ({ vasoconstrictor: { name: "epinephrine", ratio } });
const noAgent = { given: [] };

describe("age and mass", () => {
  it("bupivacaine under 12 years is a stop: none is left whatever the set", () => {
    const child = { bodyMassKg: 30, ageYears: 11, limitSet: "canada" };
    const found = of({ ...child, given: [], planned: { ...bupivacaine, cartridges: 1 } });
    expect(found.stops).toEqual([
      { by: "age", says: "Under 12 years bupivacaine is a stop (from memory).", mark: "memory" },
    ]);
    expect(found.planned).toMatchObject({ cartridgesLeft: 0, mg: 0 });
    expect(found.planned?.wanted?.asks).toEqual(["under 12 years bupivacaine is a stop (from memory)."]);
    expect(of({ ...child, given: [{ ...bupivacaine, cartridges: 1 }] }).stops).toHaveLength(1);
    const older = of({ ...child, ageYears: 12, given: [], planned: bupivacaine });
    expect(older.stops).toEqual([]);
    expect(older.planned?.cartridgesLeft).toBe(6);
  });

  it("the adults' sets are not shown to a child where they print no mg/kg", () => {
    const given = [{ ...bupivacaine, cartridges: 1 }];
    const child = of({ bodyMassKg: 45, ageYears: 14, limitSet: "canada", given });
    expect(child.agents[0]?.otherSets.map(({ set }) => set)).toEqual(["australia", "conservative"]);
    const grown = of({ ...adult, limitSet: "canada", given });
    expect(grown.agents[0]?.otherSets).toContainEqual({ set: "unitedStatesLabel", limitMg: 90 });
  });

  it("ideal mass binds in obesity alone, given or by height and sex", () => {
    const big = { ageYears: 50, given: [{ ...lidocaine, cartridges: 1 }], limitSet: "canada" };
    // Devine 1974 (memory): 165.1 cm is 5 inches over 5 feet: 45.5 + 5 x 2.3 = 57.0 kg for a woman, 61.5 for a man.
    const woman = of({ ...big, bodyMassKg: 110, heightCm: 165.1, sex: "female" });
    expect(woman.dosingMass.kg).toBe(57);
    expect(woman.agents[0]?.limitMg).toBe(399);
    expect(woman.cautions.join()).toContain("recalled from memory");
    expect(woman.basis.sources).toContain("devine-1974");
    expect(of({ ...big, bodyMassKg: 110, heightCm: 165.1, sex: "male" }).dosingMass.kg).toBe(61.5);
    expect(of({ ...big, bodyMassKg: 70, heightCm: 165.1, sex: "female" }).dosingMass.kg).toBe(70);
    const unsexed = of({ ...big, bodyMassKg: 110, heightCm: 165.1 });
    expect(unsexed.dosingMass.says).toContain("no ideal mass");
    // By hand 110 / 1.651^2 = 40.4.
    expect(unsexed.cautions.join()).toContain("Actual mass at 40.4 kg/m2: no ideal mass below it can be formed");
    expect(unsexed.cautions.join()).toContain("Give that mass, or sex and age.");
    expect(woman.cautions.join()).not.toContain("or sex and age");
    expect(of({ ...big, bodyMassKg: 110, heightCm: 140, sex: "female" }).dosingMass.kg).toBe(110);
    expect(of({ ...big, bodyMassKg: 110, idealMassKg: 60 }).dosingMass.kg).toBe(60);
    expect(of({ ...big, bodyMassKg: 55, idealMassKg: 60 }).dosingMass.kg).toBe(55);
    expect(of({ ...big, bodyMassKg: 110 }).cautions.join()).toContain("ask for the height");
  });
});

describe("questions and cautions", () => {
  const about = (input: object) => of({ ...adult, ...input }).questions.map((question) => question.about);
  const plain = { given: [{ ...lidocaine, cartridges: 1 }] };
  const withAmine = { given: [{ ...lidocaine, ...epinephrine(100_000), cartridges: 1 }] };

  it("ask what goes with what is given (C11)", () => {
    expect(about(plain)).toEqual(["uncontrolledBloodPressure", "pregnancy", "liverFailure"]);
    expect(about(withAmine)).toEqual([
      ...["cardiacRisk", "unselectiveBetaBlocker", "tricyclic", "cocaineWithinADay", "uncontrolledBloodPressure"],
      ...["uncontrolledThyroid", "sulphiteAllergy", "pregnancy", "liverFailure"],
    ]);
    const prilocaine = { agent: "prilocaine", percent: 4, cartridgeMl: 1.8, cartridges: 1 };
    expect(about({ given: [prilocaine] })).toContain("methaemoglobinRisk");
    expect(of({ bodyMassKg: 70, given: [] }).questions[0]?.about).toBe("ageYears");
  });

  it("leave out what was answered with no, and keep a yes as one", () => {
    const found = of({ ...adult, ...withAmine, cardiacRisk: false, history: { tricyclic: "no", pregnancy: "yes" } });
    const names = found.questions.map((question) => question.about);
    expect(names).not.toContain("tricyclic");
    expect(names).not.toContain("cardiacRisk");
    expect(found.questions.filter(({ answered }) => answered === "yes").map((one) => one.about)).toEqual(["pregnancy"]);
    for (const { about: name, asks, mark } of found.questions) {
      expect(asks, name).toContain("?");
      expect(mark).toBe("memory");
    }
  });

  it("a child's: vasoconstrictors of adults, half a cartridge of lidocaine; a plain lidocaine's lower figure", () => {
    const child = of({ bodyMassKg: 20, ageYears: 6, ...withAmine }).cautions.join("\n");
    expect(child).toContain("none for a child was found");
    // The label (seen): a child under 10 rarely needs more than half a cartridge, 18 to 20 mg.
    expect(child).toContain("half a cartridge of lidocaine (18 to 20 mg)");
    expect(of({ bodyMassKg: 34, ageYears: 10, ...withAmine }).cautions.join()).not.toContain("half a cartridge");
    expect(of({ ...adult, ...withAmine }).cautions.join()).not.toContain("for a child");
    // A body for children (memory): 4.4 mg/kg, 300 mg; 20 kg are 88 mg, where the label's set allows 140.
    const lower = "lower limit of lidocaine is recalled: 4.4 mg/kg, 300 mg at most, which is 88 mg here (from memory";
    expect(child).toContain(lower);
    const ageless = of({ bodyMassKg: 20, ...withAmine }).cautions.join();
    expect(ageless).toContain(lower);
    expect(ageless).not.toContain("half a cartridge");
    expect(of({ bodyMassKg: 50, ...withAmine }).cautions.join()).not.toContain("for a child");
    expect(of({ bodyMassKg: 20, ageYears: 6, ...withAmine, limitSet: "australia" }).cautions.join()).not.toContain(
      "For children a lower limit",
    );
    expect(of({ ...adult, ...withAmine }).cautions.join()).not.toContain("For children a lower limit");
    // An Australian table (memory): 3 mg/kg of plain lidocaine.
    expect(of({ ...adult, ...plain }).cautions.join()).toContain("3 mg/kg is recalled (from memory)");
    expect(of({ ...adult, ...withAmine }).cautions.join()).not.toContain("recalled (from memory)");
  });

  it("end with the standing one", () => {
    for (const input of [plain, withAmine, noAgent])
      expect(of({ ...adult, ...input }).cautions.at(-1)).toBe(standingCaution);
  });

  it("nothing given: nothing is used, nothing above", () => {
    expect(of({ ...adult, given: [] })).toMatchObject({
      agents: [],
      fractionSum: 0,
      overLimit: false,
      vasoconstrictors: [],
      stops: [],
    });
  });
});
