import { describe, expect, it } from "vitest";
import { explained, toldOfBreak as told } from "./break-for-tests.ts";
import { byPosterior, explanationsDecide, fractureAccount } from "./fracture-account.ts";

describe("the account that the ledger speaks for", () => {
  const sentences = fractureAccount(told);

  it("says length, explanations, places, what weighs and what would decide, each with its numbers", () => {
    expect(sentences).toEqual([
      "The piece is 3.0 mm long (SD 0.2 mm); 62 % of published lengths are shorter.",
      "What was seen is consistent most with bending fatigue, 55 % (30 to 80 %); then with torsional overload, 40 % (20 to 60 %); then with a flaw or joint, 5.0 % (1.0 to 12 %).",
      "It was to be expected by bending fatigue 4.3 mm from the tip (SD 0.8 mm), by torsional overload 2.4 mm from the tip (SD 0.8 mm).",
      "What weighs most: The place weighs most (Cheung Darvell 2007).",
      "The intervals of the first two explanations overlap: these facts do not decide between them.",
      "Halving or doubling one assumption puts another explanation first for 1 of 2.",
      "What would decide: A microscope of the face.",
    ]);
  });

  it("says that one lies above only where the intervals do not meet", () => {
    const parted = [explained("torsionalOverload", [0.7, 0.8, 0.9]), explained("bendingFatigue", [0.1, 0.15, 0.2])];
    const decided = { ...told, explanations: [...parted, explained("flawOrJoint", [0, 0.05, 0.1])] };
    expect([explanationsDecide(told), explanationsDecide(decided)]).toEqual([false, true]);
    expect(byPosterior({ ...told, explanations: [...decided.explanations].reverse() })[0]?.name).toBe(
      "torsionalOverload",
    );
    expect(fractureAccount(decided).join(" ")).toContain("lies above that of the next");
  });

  it("leaves out what was not computed", () => {
    const { fragmentLength: _length, ...unmeasured } = told;
    const nowhere = told.explanations.map((one) => ({ ...one, predictedFromTipMm: null }));
    const bare = fractureAccount({ ...unmeasured, explanations: nowhere, sensitivity: [], wouldDecide: [] });
    expect(bare).toHaveLength(3);
    expect(bare.join(" ")).not.toMatch(/undefined|null|NaN|mm/);
  });

  it("shows no cause as certain", () => {
    expect(sentences.join(" ")).not.toMatch(/\bprove|\bsafe|caused by|because of/i);
  });

  it("says of stable assumptions that none turns the order", () => {
    const stable = { ...told, sensitivity: told.sensitivity.slice(1) };
    expect(fractureAccount(stable)).toContain(
      "Halving or doubling any one of 1 assumptions puts no other explanation first.",
    );
  });
});
