import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { teeth } from "./teeth.ts";
import { notations, toothOf } from "./tooth-of.ts";
import { toothTopic } from "./tooth-topic.ts";

const refusalOf = (work: () => unknown): Refusal => {
  try {
    work();
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
};

describe("tooth C1: the 52 teeth", () => {
  it("are 32 permanent and 20 primary, each named once in each notation", () => {
    expect(teeth.filter((tooth) => tooth.dentition === "permanent")).toHaveLength(32);
    expect(teeth.filter((tooth) => tooth.dentition === "primary")).toHaveLength(20);
    for (const notation of notations) expect(new Set(teeth.map((tooth) => tooth[notation])).size).toBe(52);
  });

  it("round-trip through all three notations", () => {
    for (const tooth of teeth)
      for (const notation of notations)
        expect(answer(toothTopic, { notation, value: tooth[notation] })).toMatchObject({ ...tooth });
  });
});

describe("tooth C2, C3: what the numbers mean", () => {
  // Tooth identification value set of HL7 International, 2025 (seen): universal 1, 2, 3 are 18, 17, 16.
  it.each([
    ["1", "18"],
    ["2", "17"],
    ["3", "16"],
  ])("universal %s is %s", (value, twoDigit) => {
    expect(toothOf("universal", value).twoDigit).toBe(twoDigit);
  });

  // The corners of both walks round the mouth (common practice): upper right, upper left, lower left, lower right.
  it.each([
    ["8", "11"],
    ["9", "21"],
    ["16", "28"],
    ["17", "38"],
    ["24", "31"],
    ["25", "41"],
    ["30", "46"],
    ["32", "48"],
    ["A", "55"],
    ["E", "51"],
    ["F", "61"],
    ["J", "65"],
    ["K", "75"],
    ["O", "71"],
    ["P", "81"],
    ["T", "85"],
  ])("universal %s is %s", (value, twoDigit) => {
    expect(toothOf("universal", value).twoDigit).toBe(twoDigit);
  });

  // DICOM PS3.16 CID 4018 and 4019 (seen): maxillary right first molar, mandibular left second premolar, and so on.
  it.each([
    ["16", "upper right first molar", "molar"],
    ["23", "upper left canine", "canine"],
    ["35", "lower left second premolar", "premolar"],
    ["41", "lower right central incisor", "incisor"],
    ["55", "upper right second primary molar", "molar"],
    ["73", "lower left primary canine", "canine"],
  ])("%s is the %s", (value, name, type) => {
    expect(toothOf("twoDigit", value)).toMatchObject({ name, type });
  });
});

describe("tooth C4: quadrant and position", () => {
  it.each([
    ["lower right 6", "46"],
    ["upper left C", "63"],
    ["lower left E", "75"],
  ])("%s is %s", (value, twoDigit) => {
    expect(toothOf("quadrant", value).twoDigit).toBe(twoDigit);
  });
});

describe("tooth C5: refusals say what the text could have meant", () => {
  it.each([
    ["twoDigit", "49", "names no tooth in any notation"],
    ["twoDigit", "56", "names no tooth in any notation"],
    ["universal", "33", 'twoDigit "33", the lower left canine'],
    ["universal", "a", 'universal "A", the upper right second primary molar, or position A'],
    ["quadrant", "lower right d", 'quadrant "lower right D"'],
    ["twoDigit", "6", 'universal "6", the upper right canine, or position 6 of a quadrant'],
    ["twoDigit", "lower right 6", 'quadrant "lower right 6", the lower right first molar'],
    ["quadrant", "6", "twoDigit 16, 26, 36, 46"],
    ["universal", " 3", "names no tooth"],
  ] as const)("%s %j", (notation, value, meant) => {
    const refusal = refusalOf(() => toothOf(notation, value));
    expect(refusal.code).toBe("tooth.unknown");
    expect(refusal.faults).toHaveLength(1);
    expect(refusal.faults[0]?.path).toBe("value");
    expect(refusal.faults[0]?.says).toContain(meant);
  });

  it("refuses a notation that is not one of the three, and an empty text", () => {
    const refusal = refusalOf(() => answer(toothTopic, { notation: "bracket", value: "" }));
    expect(refusal.code).toBe("input.invalid");
    expect(refusal.faults.map(({ path }) => path)).toEqual(["notation", "value"]);
  });
});
