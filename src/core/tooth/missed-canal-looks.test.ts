import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import type { MissedCanalInput } from "./missed-canal/missed-canal-input.ts";
import type { MissedCanalOutput } from "./missed-canal/missed-canal-output.ts";
import { missedCanalTopic } from "./missed-canal-topic.ts";

type Look = MissedCanalInput["evidence"][number];

const chance = (tooth: string, feature: string, evidence: readonly Look[] = [], more: object = {}): MissedCanalOutput =>
  answer(missedCanalTopic, { tooth, feature, evidence, ...more });

const third = (evidence: readonly Look[] = []) => chance("38", "thirdRoot", evidence);
const seen = (sensitivity: number, specificity: number, kind: Look["kind"] = "cbct"): Look => ({
  ...{ kind, result: "seen", sensitivity, specificity },
});
const notSeen = (sensitivity: number, specificity: number, kind: Look["kind"] = "cbct"): Look => ({
  ...seen(sensitivity, specificity, kind),
  result: "notSeen",
});

describe("missedCanal C7 and C8: the next look", () => {
  it("is ranked by harm, and what was done is not offered again", () => {
    const out = chance("26", "secondMesiobuccal", [
      { kind: "dye", result: "notSeen" },
      { kind: "angledFilm", result: "notSeen" },
    ]);
    const kinds = out.nextBestLook.map(({ kind }) => kind);
    expect(out.nextBestLook.map(({ harm }) => harm)).toEqual([1, 1, 1, 1, 2, 2, 3, 4]);
    expect(kinds).not.toContain("dye");
    expect(kinds).not.toContain("angledFilm");
    expect(kinds.at(-1)).toBe("troughing");
    // Of the films, the one with published figures comes first.
    expect(kinds.slice(4, 6)).toEqual(["straightFilm", "offCentreInstrument"]);
  });

  it("takes an angled film before a straight one where it has no published figures", () => {
    for (const feature of ["secondMesiobuccal", "thirdRoot"] as const) {
      const films = chance(feature === "thirdRoot" ? "46" : "26", feature).nextBestLook.filter(
        ({ harm }) => harm === 2,
      );
      expect(films.slice(0, 2).map(({ kind }) => kind)).toEqual(["angledFilm", "straightFilm"]);
    }
  });

  it("brings the information that a look and the canal share", () => {
    const { nextBestLook, posterior } = chance("26", "secondMesiobuccal");
    const scan = nextBestLook.find(({ kind }) => kind === "cbct");
    // Mutual information over the four cells of the table, another way to the same number: bits.
    const p = posterior.mean;
    const cells = [p * 0.966, p * 0.034, (1 - p) * 0.15, (1 - p) * 0.85];
    const [tp = 0, fn = 0, fp = 0, tn = 0] = cells;
    const shared = [
      [tp, p, tp + fp],
      [fn, p, fn + tn],
      [fp, 1 - p, tp + fp],
      [tn, 1 - p, fn + tn],
    ].reduce((sum, [cell = 0, row = 1, column = 1]) => sum + cell * Math.log2(cell / (row * column)), 0);
    expect(scan?.expectedFallBits).toBeCloseTo(shared, 9);
    expect(scan?.missing).toBeUndefined();
    expect(nextBestLook.find(({ kind }) => kind === "microscope")?.missing).toEqual(["sensitivity", "specificity"]);
  });

  it("needs a reason before a CBCT, and the wall before a trough", () => {
    const needs = (more: object) =>
      Object.fromEntries(
        chance("26", "secondMesiobuccal", [], more).nextBestLook.map(({ kind, needs }) => [kind, needs]),
      );
    expect(needs({})).toMatchObject({
      cbct: "a written reason why less was not enough",
      troughing: "only with the wall known",
      microscope: undefined,
    });
    expect(needs({ lessWasNotEnough: "A post covers the floor.", wallKnownMm: 1.2 })).toMatchObject({
      cbct: undefined,
      troughing: "a trough that the wall of 1.2 mm allows",
    });
  });

  it("names the angle that parts the canals where one is published", () => {
    const angled = (feature: string) =>
      chance("46", feature).nextBestLook.find(({ kind }) => kind === "angledFilm")?.says;
    expect(angled("middleMesial")).toContain("25 degrees part them in 95 %, 35 degrees part them in 99 %");
    expect(angled("secondDistal")).toContain("30 degrees part them in 95 %, 40 degrees part them in 99 %");
    expect(angled("thirdRoot")).toBe("Take one film with the tube moved aside.");
  });

  it("offers no trough and no instrument's place for a whole root or a C", () => {
    for (const [tooth, feature] of [
      ["46", "thirdRoot"],
      ["47", "cShaped"],
    ] as const) {
      const kinds = chance(tooth, feature).nextBestLook.map(({ kind }) => kind);
      expect(kinds).not.toContain("troughing");
      expect(kinds).not.toContain("offCentreInstrument");
    }
  });
});

describe("missedCanal: cautions", () => {
  it("show surveys that differ, and counts that were worked back", () => {
    const middle = chance("36", "middleMesial").cautions.join(" ");
    expect(middle).toContain("Surveys of many regions differ: 4.4 % (al-maswary-2023), 7.0 % (hatipoglu-2023-middle)");
    expect(middle).toContain("Counts worked back from printed percentages: world (al-maswary-2023)");
    expect(chance("36", "cShaped").cautions.join(" ")).not.toContain("differ:");
  });

  it("ask after a scan for its reason, and after a trough for the wall", () => {
    const both = [seen(0.9, 0.8), notSeen(0.9, 0.8, "troughing")];
    const reason = "No reason is written why less than a CBCT was not enough.";
    const wall = "There was troughing, and the wall where it cuts is not known.";
    expect(third(both).cautions).toEqual(expect.arrayContaining([reason, wall]));
    const told = { lessWasNotEnough: "A post covers the floor.", wallKnownMm: 1.2 };
    const { cautions } = chance("38", "thirdRoot", both, told);
    expect(cautions).not.toContain(reason);
    expect(cautions).not.toContain(wall);
    expect(third().cautions).not.toContain(reason);
  });

  it("speak of two looks of one kind, and of figures that are turned round", () => {
    const { cautions } = third([seen(0.9, 0.8), seen(0.9, 0.8), notSeen(0.2, 0.3, "dye")]);
    expect(cautions).toContain("evidence[1] is a further cbct: two looks of one kind are hardly independent.");
    expect(cautions.join(" ")).toContain("evidence[2]: by these figures seeing it speaks against it");
  });

  it("say of a chance of 0 or 1 that a look is taken to be without error, and of no other", () => {
    const said = (look: Look) =>
      chance("26", "secondMesiobuccal", [look]).cautions.join(" ").includes("leaves no doubt");
    expect([said(seen(0.9, 1)), said(notSeen(1, 0.9)), said(seen(0.9, 0.99)), said(notSeen(0.9, 1))]).toEqual([
      ...[true, true, false, false],
    ]);
  });

  it("never promise, whatever the tooth", () => {
    const texts = JSON.stringify([chance("26", "secondMesiobuccal"), third([seen(0.9, 1)])]);
    expect(texts).not.toMatch(/\bsafe\b|\bproves?\b/i);
  });
});

function refusalOf(input: object): Refusal {
  try {
    answer(missedCanalTopic, { tooth: "26", feature: "secondMesiobuccal", evidence: [], ...input });
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("was not refused");
}
const paths = (refusal: Refusal) => refusal.faults.map(({ path }) => path);

describe("missedCanal C1 and C9: what is refused", () => {
  it.each([
    ["a text that is no tooth", { tooth: "49" }, "tooth.unknown", ["tooth"]],
    ["a feature of other teeth", { tooth: "11" }, "input.impossible", ["feature"]],
    ["a third root above", { feature: "thirdRoot" }, "input.impossible", ["feature"]],
    ["a tooth that nobody counted", { tooth: "18" }, "input.notDeterminable", ["feature"]],
    ["a primary molar", { tooth: "75", feature: "thirdRoot" }, "input.notDeterminable", ["feature"]],
    ["a region without a series", { population: "Atlantis" }, "input.impossible", ["population"]],
    ["a percentage", { evidence: [seen(95, 0.8)] }, "input.invalid", ["evidence[0].sensitivity"]],
    ["a share below 0", { evidence: [seen(0.9, -0.1)] }, "input.invalid", ["evidence[0].specificity"]],
    ["an unknown look", { evidence: [{ kind: "guess", result: "seen" }] }, "input.invalid", ["evidence[0].kind"]],
    ["a wall below 0", { wallKnownMm: -1 }, "input.invalid", ["wallKnownMm"]],
    [
      "a depth beyond a root",
      { evidence: [{ kind: "troughing", result: "seen", depthMm: 6 }] },
      "input.invalid",
      ["evidence[0].depthMm"],
    ],
    [
      "results of other kinds, every one",
      {
        evidence: [
          { kind: "dye", result: "yes" },
          { kind: "lesionOnOneRoot", result: "seen", depthMm: 1 },
        ],
      },
      "input.impossible",
      ["evidence[0].result", "evidence[1].result", "evidence[1].depthMm"],
    ],
    [
      "a tooth that can't have it and a result of another kind, together",
      { tooth: "11", evidence: [{ kind: "dye", result: "no" }] },
      "input.impossible",
      ["feature", "evidence[0].result"],
    ],
    ["a result that can't be had", { evidence: [seen(0, 1)] }, "input.impossible", ["evidence[0].result"]],
    [
      "looks without error against each other",
      { evidence: [seen(0.9, 1), notSeen(1, 0.9, "dye"), notSeen(1, 0.5, "bubbles")] },
      "input.impossible",
      ["evidence[1].result", "evidence[2].result"],
    ],
  ])("%s", (_, input, code, at) => {
    const refusal = refusalOf(input);
    expect(refusal.code).toBe(code);
    expect(paths(refusal)).toEqual(at);
  });

  it("names the regions that there are, and the teeth that were counted", () => {
    expect(refusalOf({ population: "Atlantis" }).message).toContain("world, Belgium, Brazil, Chile, China");
    expect(refusalOf({ tooth: "18" }).message).toContain("there are series of 16, 17, 26, 27");
  });
});
