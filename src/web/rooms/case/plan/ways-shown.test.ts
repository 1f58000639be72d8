import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleOutcome, sampleWays } from "../../../../../test/sample-ways.ts";
import { partTypes } from "../../../../record/parts.ts";
import { newBodies } from "../new-bodies.ts";
import { outcomesByNearness, unnamed, waysShown, withChoice, withRisk, withWeighed } from "./ways-shown.ts";

const plan = newBodies.plan("2026-01-02");
const [one, other] = ["a".repeat(64), "b".repeat(64)];

describe("the ways on the page", () => {
  it("stand as open, waiting and unfit, each once, with digits for those that can be chosen", () => {
    const { open, waiting, unfit } = waysShown(sampleWays());
    expect(open.map(({ way, key }) => [way, key])).toEqual([
      ["retreat", "1"],
      ["extraction", "2"],
    ]);
    expect(waiting.map(({ way, key }) => [way, key])).toEqual([["surgery", "3"]]);
    expect(unfit).toHaveLength(9);
    expect(unfit.every(({ key }) => key === undefined)).toBe(true);
  });

  it("has nine digits and no more", () => {
    const ways = sampleWays();
    const all = { ...ways, options: ways.options.map((option) => ({ ...option, standing: "open" as const })) };
    const keys = waysShown(all).open.map(({ key }) => key);
    expect(keys).toEqual(["1", "2", "3", "4", "5", "6", "7", "8", "9", undefined, undefined, undefined]);
  });
});

describe("a choice", () => {
  it("notes the entries that stand, in a body that the record takes, and a row for the way", () => {
    const chosen = withChoice(plan, "retreat", { planEntry: one, difficultyEntry: other });
    expect(chosen).toEqual({
      ...{ ...plan, chosen: "retreat", planEntry: one, difficultyEntry: other },
      options: [{ way: "retreat", forIt: "", againstIt: "" }],
    });
    expect(partTypes.plan.body.safeParse(chosen).success).toBe(true);
  });

  it("leaves what was written for a way, and takes out an entry that no longer stands", () => {
    const first = withChoice(plan, "retreat", { planEntry: one, difficultyEntry: other });
    const written = { ...first, options: [{ way: "retreat" as const, forIt: "Reaches it", againstIt: "" }] };
    const again = withChoice(written, "retreat", { planEntry: other });
    expect(again.options).toEqual(written.options);
    expect(again.planEntry).toBe(other);
    expect("difficultyEntry" in again).toBe(false);
    expect(withWeighed(again, "retreat")).toBe(again);
  });
});

describe("risks that the facts call for", () => {
  it("are named by one press and taken back by the next", () => {
    const risk = fc.string({ minLength: 1 });
    fc.assert(
      fc.property(fc.uniqueArray(risk), risk, (named, fresh) => {
        const before = named.filter((text) => text !== fresh);
        expect(withRisk(before, fresh)).toEqual([...before, fresh]);
        expect(withRisk(withRisk(before, fresh), fresh)).toEqual(before);
      }),
    );
  });

  it("are those that nobody has named", () => {
    const [way] = waysShown(sampleWays()).open;
    if (way === undefined) throw new Error("the sample has an open way");
    expect(unnamed(way, ["An instrument may break in a canal"]).map(({ id }) => id)).toEqual(["fracture"]);
  });
});

describe("series by how near their group is", () => {
  it("stand apart, and together where none is near", () => {
    const [near, wide] = [sampleOutcome, { ...sampleOutcome, id: "wide", nearest: "wider" as const }];
    expect(outcomesByNearness([near, wide])).toEqual({ alike: [near], other: [wide] });
    expect(outcomesByNearness([wide])).toEqual({ alike: [wide], other: [] });
  });
});
