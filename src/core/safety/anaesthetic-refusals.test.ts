import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { anaestheticTopic } from "./anaesthetic-topic.ts";

const adult = { bodyMassKg: 70, ageYears: 40 };
const lidocaine = { agent: "lidocaine", percent: 2, cartridgeMl: 1.8, cartridges: 1 };
const bupivacaine = { agent: "bupivacaine", percent: 0.5, cartridgeMl: 1.8 };
const given = (dose: object) => ({ ...adult, given: [{ ...lidocaine, ...dose }] });
const vasoconstrictor = (fields: object) => given({ vasoconstrictor: { name: "epinephrine", ...fields } });

function refusalOf(input: object): Refusal {
  try {
    answer(anaestheticTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
}

/** The one fault of an input, as the shell prints it. */
function faultOf(input: object): string {
  const { faults } = refusalOf(input);
  expect(faults).toHaveLength(1);
  return faults.map(({ path, says }) => `${path}: ${says}`).join();
}

describe("what is confirmed of one dose", () => {
  const weak = { ...lidocaine, percent: 0.2, confirmed: ["percent"] };
  it("lets that dose pass and no other, given or planned (C10)", () => {
    const { basis } = answer(anaestheticTopic, { ...adult, given: [weak] });
    expect(basis.assumptions).toContain("Confirmed although unusual: percent.");
    expect(faultOf({ ...adult, given: [weak, { ...lidocaine, percent: 0.2 }] })).toContain(
      "given[1].percent: 0.2 is unusual",
    );
    const { confirmed: _none, cartridges: _count, ...planned } = weak;
    expect(faultOf({ ...adult, given: [weak], planned })).toContain("planned.percent: 0.2 is unusual");
    expect(
      answer(anaestheticTopic, { ...adult, given: [], planned: { ...planned, confirmed: ["percent"] } }).planned,
    ).toBeDefined();
    // What is confirmed of a dose is nothing of the person.
    expect(faultOf({ bodyMassKg: 28, ageYears: 40, given: [{ ...lidocaine, confirmed: ["bodyMassKg"] }] })).toContain(
      "bodyMassKg: 28 kg",
    );
  });
});

it("an age that is the lower of two is told as such, and an allergy to an agent is asked of once it is told", () => {
  const { basis, questions } = answer(anaestheticTopic, {
    ...given({}),
    ...{ ageIsLeast: true, history: { anaestheticAllergy: "yes" } },
  });
  expect(basis.assumptions).toContain("Age: 40 years at least, as the year of birth allows; it may be one more.");
  expect(questions.find(({ about }) => about === "anaestheticAllergy")).toMatchObject({
    answered: "yes",
    mark: "memory",
  });
  const untold = answer(anaestheticTopic, given({}));
  expect(untold.questions.map(({ about }) => about)).not.toContain("anaestheticAllergy");
  expect(untold.basis.assumptions.join()).not.toContain("at least");
});

describe("percent and ratio mixed up", () => {
  it.each([
    [0.04, "4 % is written 4, not 0.04"],
    [0.02, "4 % is written 4, not 0.04"],
    [40, "40 mg/ml are 4 %, written 4"],
  ])("percent %d is refused, confirmed or not", (percent, says) => {
    expect(faultOf(given({ percent }))).toBe(`given[0].percent: ${percent} is no strength in percent; ${says}`);
    expect(refusalOf({ ...given({ percent }), confirmed: ["percent"] }).code).toBe("input.impossible");
  });

  it.each([
    [10, "10 micrograms a ml are 1:100000, written 100000"],
    [0.00001, "1:100000 is written 100000, not 0.00001"],
    [0, "1:100000 is written 100000"],
    [-100_000, "1:100000 is written 100000"],
    [1_000, "1:1000 is the strength for emergencies"],
    [100_000_000, "1:100000 is written 100000"],
  ])("ratio %d is refused", (ratio, says) => {
    const fault = faultOf(vasoconstrictor({ ratio }));
    expect(fault).toMatch(/^given\[0\]\.vasoconstrictor\.ratio: /);
    expect(fault).toContain(says);
  });

  it("a vasoconstrictor in another's unit, or in none", () => {
    expect(faultOf(vasoconstrictor({}))).toContain("vasoconstrictor.ratio: nothing is given");
    expect(faultOf(vasoconstrictor({ iuPerMl: 0.03 }))).toContain("epinephrine is given as a ratio");
    expect(faultOf(vasoconstrictor({ name: "felypressin", ratio: 100_000 }))).toContain("give iuPerMl");
    expect(faultOf(vasoconstrictor({ name: "felypressin" }))).toContain("0.03 IU/ml is written 0.03");
    expect(faultOf(vasoconstrictor({ name: "felypressin", iuPerMl: 3 }))).toContain("confirm iuPerMl");
  });
});

describe("mass", () => {
  it("7 kg of an adult is refused, whoever confirms it", () => {
    const input = { bodyMassKg: 7, ageYears: 40, given: [] };
    const says = "bodyMassKg: 7 kg is not the mass of a person of 40 years; give kilograms, or correct the age";
    expect(faultOf(input)).toBe(says);
    expect(faultOf({ ...input, confirmed: ["bodyMassKg"] })).toBe(says);
    expect(answer(anaestheticTopic, { ...input, ageYears: 0.6 }).dosingMass.kg).toBe(7);
  });

  // 44 lb are 20 kg, the mass of a child of 6; by hand 4 x (5 + 4) = 36 at 5 years.
  it.each([
    [44, 5],
    [6, 4],
    [19, 0.5],
    [18, 14],
    [26, 40],
    [300, 40],
  ])("%d kg at %d years is asked for, and passes once it is confirmed", (bodyMassKg, ageYears) => {
    const input = { bodyMassKg, ageYears, given: [] };
    expect(faultOf(input)).toContain("kilograms, not pounds? confirm bodyMassKg if it is so");
    const passed = answer(anaestheticTopic, { ...input, confirmed: ["bodyMassKg"] });
    expect(passed.basis.assumptions).toContain("Confirmed although unusual: bodyMassKg.");
  });

  it("an ideal mass that no adult has", () => {
    expect(faultOf({ ...adult, idealMassKg: 7, given: [] })).toContain("7 kg is not the ideal mass of an adult");
  });

  it.each([[0], [-70], [1_000], ["70"]])("bodyMassKg %j is no mass", (bodyMassKg) => {
    expect(refusalOf({ bodyMassKg, given: [] })).toMatchObject({
      code: "input.invalid",
      faults: [expect.objectContaining({ path: "bodyMassKg" })],
    });
  });
});

describe("amounts", () => {
  it("negative ones are refused at their path", () => {
    for (const [field, path] of [
      ["cartridges", "given[0].cartridges"],
      ["percent", "given[0].percent"],
      ["cartridgeMl", "given[0].cartridgeMl"],
    ] as const)
      expect(refusalOf(given({ [field]: -1 }))).toMatchObject({
        code: "input.invalid",
        faults: [expect.objectContaining({ path })],
      });
  });

  it("an absurd number of cartridges asks, and is refused above 100", () => {
    expect(faultOf(given({ cartridges: 36 }))).toContain("36 is unusual (up to 20 at a time): cartridges, not ml?");
    expect(answer(anaestheticTopic, { ...given({ cartridges: 36 }), confirmed: ["cartridges"] }).overLimit).toBe(true);
    expect(refusalOf(given({ cartridges: 180 })).code).toBe("input.invalid");
    const planned = { ...lidocaine, cartridges: 21 };
    expect(faultOf({ ...adult, given: [], planned })).toContain("planned.cartridges: 21 is unusual");
  });

  it("unusual strengths and volumes ask by name", () => {
    expect(faultOf(given({ percent: 8 }))).toContain("8 is unusual of lidocaine (0.5 to 4 is usual): confirm percent");
    expect(faultOf(given({ cartridgeMl: 18 }))).toContain("given[0].cartridgeMl: 18 is unusual of a cartridge");
    expect(faultOf(vasoconstrictor({ ratio: 15_000 }))).toContain("confirm ratio");
    // A nought too few: 1:20000 for 1:200000.
    expect(faultOf(vasoconstrictor({ ratio: 20_000 }))).toContain("20000 is unusual of epinephrine (50000 to 400000");
    // A nought too many would count a tenth of what was given.
    const levonordefrin = vasoconstrictor({ name: "levonordefrin", ratio: 200_000 });
    expect(faultOf(levonordefrin)).toContain("200000 is unusual of levonordefrin (20000 is usual): confirm ratio");
    expect(answer(anaestheticTopic, { ...levonordefrin, confirmed: ["ratio"] }).vasoconstrictors[0]?.given).toBe(9);
    const confirmed = ["percent", "cartridgeMl"];
    const input = { ...given({ percent: 5, cartridgeMl: 5 }), confirmed };
    expect(answer(anaestheticTopic, input).agents[0]?.givenMg).toBe(250);
  });

  it("every fault is told at once, and a confirmation lets its own pass alone", () => {
    const input = { ...given({ percent: 8, cartridgeMl: 18 }), confirmed: ["percent"] };
    expect(refusalOf(input).faults.map(({ path }) => path)).toEqual(["given[0].cartridgeMl"]);
    expect(refusalOf({ ...input, confirmed: [] }).faults).toHaveLength(2);
  });
});

describe("agents without a limit that holds", () => {
  // The label's set prints 90 mg and no mg/kg; a child of 20 kg would be allowed all of it. Lowest other: 1.3 mg/kg.
  it.each([
    [{ bodyMassKg: 20, ageYears: 6 }, "under 18 years"],
    [{ bodyMassKg: 60, ageYears: 17 }, "under 18 years"],
    [{ bodyMassKg: 49.9, ageYears: 40 }, "under 50 kg"],
    [{ bodyMassKg: 20 }, "under 50 kg"],
  ])("bupivacaine for %j in the label's set is refused, and the lowest mg/kg is offered by name", (person, who) => {
    const fault = faultOf({ ...person, given: [], planned: bupivacaine });
    expect(fault).toContain(`planned.agent: unitedStatesLabel prints no mg/kg for bupivacaine, needed ${who}`);
    expect(fault).toContain("the lowest of the other sets is 1.3 mg/kg (australia)");
    expect(fault.includes("bupivacaine is a stop")).toBe("ageYears" in person && person.ageYears < 12);
    expect(faultOf({ ...person, given: [{ ...bupivacaine, cartridges: 1 }] })).toContain("given[0].agent");
    expect(
      answer(anaestheticTopic, { ...person, given: [], planned: bupivacaine, limitSet: "australia" }).limitSet.name,
    ).toBe("australia");
  });

  it("at 50 kg and 18 years the maximum holds", () => {
    const found = answer(anaestheticTopic, { bodyMassKg: 50, ageYears: 18, given: [], planned: bupivacaine });
    expect(found.planned?.limitMg).toBe(90);
  });

  it("an ideal mass under 50 kg counts as light", () => {
    const input = { bodyMassKg: 90, idealMassKg: 48, ageYears: 40, given: [], planned: bupivacaine };
    expect(faultOf(input)).toContain("under 50 kg");
  });

  it("names that no set knows, and sets of one's own without it", () => {
    expect(faultOf(given({ agent: "lignocaine" }))).toContain("use the international name");
    expect(refusalOf(given({ agent: "Lidocaine" })).faults[0]?.says).toContain("in small letters");
    const own = { ...given({}), limitSet: [{ agent: "articaine", mgPerKg: 7, source: "x" }] };
    expect(faultOf(own)).toContain(
      "given[0].agent: lidocaine has no limit among those that were given; the lowest of the other sets is 4.4",
    );
  });

  it("own limits without a figure, or twice", () => {
    const none = { ...adult, given: [], limitSet: [{ agent: "lidocaine", source: "x" }] };
    expect(faultOf(none)).toContain("limitSet[0]: gives no figure for lidocaine");
    const limit = { agent: "lidocaine", mgPerKg: 5, source: "x" };
    expect(faultOf({ ...none, limitSet: [limit, limit] })).toContain(
      "limitSet[1].agent: lidocaine has a limit already",
    );
    const child = { ...adult, bodyMassKg: 40, given: [], planned: { ...lidocaine, cartridges: 1 } };
    expect(faultOf({ ...child, limitSet: [{ agent: "lidocaine", maxMg: 300, source: "x" }] })).toContain(
      "planned.agent: the limit that was given has no mg/kg for lidocaine, needed under 50 kg",
    );
  });

  it("two limits of one vasoconstrictor, as nobody could tell which counts", () => {
    const limit = { name: "epinephrine", limit: 500, source: "x" };
    expect(faultOf({ ...given({}), vasoconstrictorLimits: [limit, { ...limit, limit: 40 }] })).toBe(
      "vasoconstrictorLimits[1].name: epinephrine has a limit already",
    );
  });

  it("limits so small that they round to nothing", () => {
    const own = { ...given({}), limitSet: [{ agent: "lidocaine", mgPerKg: 1e-9, source: "x" }] };
    expect(refusalOf(own).code).toBe("input.invalid");
    const least = { ...own, bodyMassKg: 30, limitSet: [{ agent: "lidocaine", mgPerKg: 0.001, source: "x" }] };
    // 36 mg of 0.03.
    expect(answer(anaestheticTopic, least).fractionSum).toBe(1_200);
    const tiny = { ...given({}), vasoconstrictorLimits: [{ name: "epinephrine", limit: 1e-5, source: "x" }] };
    expect(refusalOf(tiny).faults[0]?.path).toBe("vasoconstrictorLimits[0].limit");
  });
});
