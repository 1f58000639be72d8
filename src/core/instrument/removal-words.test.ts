import { describe, expect, it } from "vitest";
import { jargonIn } from "../plain-words/jargon.ts";
import { readingGrade } from "../plain-words/reading-grade.ts";
import { answer } from "../topic.ts";
import { removalTopic } from "./removal-topic.ts";

const of = (more: object = {}) => answer(removalTopic, { fragment: {}, draws: 200, ...more });
const missing = (more: object = {}) => of(more).notComputed.map(({ name }) => name);

const hard = {
  fragment: { lengthMm: 3.2, headDepthMm: 11.5, headDiameterMm: 0.44 },
  course: { radiusMm: 9, turnDeg: 35, startMm: 6, lengthMm: 17 },
  ...{ canalDiameterMm: 0.5, clearanceMm: 0.15, walls: [{ side: "furcation", mm: 0.9 }] },
  ...{ limits: { wallLeftMm: 0.5, minutes: 45 }, headSeen: "hidden", stage: "partlyCleaned", lesion: "present" },
  ...{ minutesSpent: 25, toothType: "molar", alloy: "nickelTitanium", movement: "continuous", curvatureDeg: 32 },
};
const easy = {
  fragment: { lengthMm: 6, headDepthMm: 3 },
  course: { radiusMm: 10, turnDeg: 0, startMm: 0, lengthMm: 18 },
  ...{ headSeen: "seen", stage: "cleaned", lesion: "absent", toothType: "anterior", limits: { wallLeftMm: 0.5 } },
  ...{ walls: [{ side: "mesial", mm: 2 }], minutesSpent: 0, alloy: "stainlessSteel", bend: "before" },
};

describe("reasons", () => {
  it("have their numbers in them, by the groups that this case belongs to (C15)", () => {
    const { reasons } = of(hard);
    expect(reasons.against.join(" ")).toContain("21 of 44 were bypassed (nevares-2012); 79 of 112 in the whole series");
    expect(reasons.against.join(" ")).toContain("18 of 33 were removed or bypassed (hulsmann-schinkel-1999)");
    // Nineteen of forty by thirds: no whole series is printed.
    expect(reasons.against.join(" ")).toContain(
      "9 of 24 were removed or bypassed (tzanetakis-2008); 48 % in the whole",
    );
    expect(reasons.against.join(" ")).toContain("55 of 1133 (dioguardi-2024), 1 of 170 (cuje-2010)");
    for (const says of [...reasons.for, ...reasons.against]) expect(says).toMatch(/\d|common practice/);
  });

  it("for a seen fragment before the bend of a front tooth speak for the attempt (C15)", () => {
    const { reasons } = of(easy);
    const told = reasons.for.join(" ");
    expect(told).toContain("58 of 68 were removed or bypassed (nevares-2012)");
    expect(told).toContain("16 of 18");
    expect(told).toContain("13 of 14");
    expect(told).toContain("1.50 mm above the limit of 0.5 mm");
    expect(reasons.against.join(" ")).toContain("had been cleaned");
    expect(reasons.against.join(" ")).not.toContain("minutes");
  });

  // Shen's molars, 28 of 52, against 38 of 72: one point apart.
  it("don't count groups that lie within five points of their series (C15)", () => {
    expect(JSON.stringify(of({ toothType: "molar" }).reasons)).not.toContain("28 of 52");
    expect(JSON.stringify(of({ toothType: "premolar" }).reasons)).toContain("2 of 12");
  });

  it("hold walls to the person's limit, else to the published ones (C15)", () => {
    const wall = (mm: number, limits?: object) => {
      const { reasons } = of({ ...hard, course: undefined, walls: [{ side: "furcation", mm }], limits });
      const [speaks] = reasons.for.filter((says) => says.startsWith("A platform"));
      return speaks === undefined ? "against" : "for";
    };
    expect([wall(0.9), wall(1.3), wall(0.9, { wallLeftMm: 0.5 }), wall(1.3, { wallLeftMm: 1.2 })]).toEqual([
      ...["against", "for", "for", "against"],
    ]);
    const path = of({ ...easy, limits: undefined }).reasons.for.join(" ");
    expect(path).toContain("no limit was set beforehand");
    expect(
      of({ ...easy, limits: undefined, walls: [{ side: "mesial", mm: 0.8 }] }).reasons.against.join(" "),
    ).toContain("leaves 0.80 mm");
  });

  it("weigh what healing there is to gain, with a lesion for and without one against (C15)", () => {
    expect(of({ lesion: "present" }).reasons.for.join(" ")).toContain(
      "86.7 % healed with a fragment left and 92.9 % without one: 6.2 points",
    );
    const absent = of({ lesion: "absent" }).reasons.against.join(" ");
    expect(absent).toMatch(/with no lesion before about \d.*\(spili-2005; not printed: reckoned from what it prints/);
    expect(absent).toContain("in all 134 of 146 and 138 of 146");
    expect(of().reasons.against.join(" ")).toContain(
      "In matched teeth 91.8 % healed with a fragment left and 94.5 % without one: 2.7 points",
    );
  });

  it("tell the minutes against the rule that was set, or without one (C15)", () => {
    const said = (minutesSpent: number, limits?: object) =>
      of({ minutesSpent, limits }).reasons.against.find((says) => says.includes("minutes"));
    expect(said(25, { minutes: 45 })).toContain("20 below the rule of 45 minutes");
    expect(said(60, { minutes: 45 })).toContain("15 above the rule of 45 minutes");
    expect(said(60)).toContain("60 minutes have been spent; success fell with the time spent (suter-2005");
  });
});

describe("what the patient is told", () => {
  it.each([[{}], [hard], [easy]])("is short, plain and says chances of a number (C16): %#", (input) => {
    const { tellPatient } = of(input);
    expect(readingGrade(tellPatient.join(" "))).toBeLessThanOrEqual(7);
    for (const says of tellPatient) expect(readingGrade(says)).toBeLessThanOrEqual(7);
    expect(jargonIn(tellPatient.join(" "))).toEqual([]);
    expect(tellPatient.filter((says) => /about \d+ of 100/.test(says))).toHaveLength(4);
    expect(tellPatient.join(" ")).toContain("do not tell which way is right for you");
  });

  it("says where a straight way would leave too little of the root, and nowhere else (C16)", () => {
    const told = (input: object) => of(input).tellPatient.join(" ").includes("too little of the root");
    expect([told(hard), told(easy), told({})]).toEqual([true, false, false]);
    // 1.9 mm less 0.93 mm leave 0.97 mm: above a limit of 0.5 mm, below one of 1.2 mm.
    const wall = (mm: number, wallLeftMm?: number) =>
      told({ ...hard, walls: [{ side: "furcation", mm }], limits: wallLeftMm === undefined ? {} : { wallLeftMm } });
    expect([wall(1.9), wall(1.9, 0.5), wall(1.9, 1.2)]).toEqual([false, false, true]);
    // 1.2 mm leave 0.27 mm: critical without a limit of one's own.
    expect(wall(1.2)).toBe(true);
    // At the head alone: a platform of 0.74 mm in a canal of 0.5 mm takes 0.12 mm of 0.4.
    const atHead = { course: undefined, limits: {}, walls: [{ side: "mesial", mm: 0.4 }], wallsConfirmed: true };
    expect(told({ ...hard, ...atHead })).toBe(true);
  });

  it("names the lowest and the highest series that the sum draws from (C16)", () => {
    expect(of(hard).tellPatient.join(" ")).toContain(
      "In one, the try worked in 9 of 24 teeth. In another, the try worked in 162 of 170 teeth.",
    );
  });
});

describe("cautions and what is missing", () => {
  it("say that the side of the bend is assumed where nobody told it (C2)", () => {
    const said = (more: object) => {
      const { cautions, basis } = of({ ...hard, ...more });
      return { caution: cautions.find((says) => says.startsWith("Assumed")), basis: basis.assumptions.join(" ") };
    };
    expect(said({}).caution).toContain("bends towards the furcation");
    expect(said({}).caution).not.toContain("root of its own");
    expect(said({}).basis).toContain("Nobody said towards which side the canal bends");
    expect(said({ toothType: "anterior" }).caution).toContain("A root of its own has no furcation");
    expect(said({ innerSide: "distal" }).caution).toBeUndefined();
    expect(said({ innerSide: "distal" }).basis).toContain("towards the distal side of the canal, as told");
    expect(said({ course: undefined }).caution).toBeUndefined();
    expect(of(easy).cautions.join(" ")).not.toContain("Assumed");
  });

  it("say of a course of one film that the line lies at least as far off (C1)", () => {
    const bent = (z?: number) =>
      Array.from({ length: 16 }, (_, index) => [0.01 * index ** 2, index, ...(z === undefined ? [] : [z * index])]);
    const said = (points: number[][]) =>
      of({ fragment: { headDepthMm: 12 }, course: { points } }).cautions.filter((says) => says.includes("one film"));
    expect(said(bent())).toHaveLength(1);
    expect(said(bent(0.1))).toEqual([]);
    expect(of(hard).cautions.join(" ")).not.toContain("one film");
  });

  it("what a review printed as failures is not called removed (C15)", () => {
    expect(JSON.stringify(of(hard).reasons)).toContain("79 % (count not printed) did not fail (dioguardi-2024)");
  });

  it("name heat by the alloy, thirds and bend by what was seen (C17)", () => {
    const told = (input: object) => of(input).cautions.join(" ");
    expect(told(hard)).toContain("heated a nickel-titanium fragment by 36.33 degrees in 15 s and 55.44 in 30 s");
    expect(told(easy)).toContain("heated a steel fragment by 26.08 degrees in 15 s and 35.27 in 30 s (madarati-2013)");
    for (const from of ["(jain-2024)", "(eriksson-albrektsson-1983, from memory)", "(pinter-2023)", "(budd-2005)"])
      expect(told(hard)).toContain(from);
    expect(told(hard)).toContain("35.27 (madarati-2013).");
    expect(told({})).toContain("a rise of 10 degrees C for more than 60 s");
    expect(told(hard)).toContain("apical third alone");
    expect(told(hard)).toContain("wholly round the bend");
    expect(told(hard)).toContain("4 to 6 mm below the orifice");
    expect(told(hard)).toContain("80.7 %");
    // Whose finding it is stands beside it.
    for (const id of ["souter-messer-2005", "ward-2003", "kessler-1983"]) expect(told(hard)).toContain(`(${id}).`);
    for (const absent of ["apical third alone", "wholly round", "4 to 6 mm", "80.7 %"])
      expect(told(easy)).not.toContain(absent);
    expect(told({ fragment: { headDepthMm: 3 }, toothType: "molar" })).not.toContain("4 to 6 mm");
  });

  it("say that both printed and recomputed P are kept (C17)", () => {
    expect(of().cautions.join(" ")).toContain(
      "(nevares-2012): the counts give P = 0.000021, the series prints P = .0009",
    );
  });

  it("say by how much a fragment would reach beyond the foramen (C17)", () => {
    const beyond = (more: object) =>
      of({ ...easy, fragment: { lengthMm: 6, headDepthMm: 13.5 }, ...more }).cautions.join(" ");
    expect(beyond({})).toContain("1.5 mm beyond the foramen");
    expect(beyond({ fragment: { lengthMm: 4.5, headDepthMm: 13.5 } })).not.toContain("beyond the foramen");
    expect(beyond({ courseEnds: "head" })).not.toContain("beyond the foramen");
  });

  it("of a bare case are all that was not told (C18)", () => {
    const names = [
      ...["sightLine", "platform", "removalChance by third", "removalChance by bend", "removalChance by visibility"],
      ...["ways by lesion", "reasons by stage"],
    ];
    for (const name of names) expect(missing()).toContain(name);
    for (const name of names) expect(missing(hard)).not.toContain(name);
    expect(missing({ headSeen: "notLooked", stage: "notRecorded" })).toEqual(
      expect.arrayContaining(["removalChance by visibility", "reasons by stage"]),
    );
    expect(missing({ ...hard, walls: undefined })).toContain("sightLine.wallLeftMm");
  });

  it("never use the words that say more than is known", () => {
    for (const input of [{}, hard, easy])
      expect(JSON.stringify(of(input))).not.toMatch(/\bsafe|\bproves?\b|\bproven\b|NaN/);
  });
});
