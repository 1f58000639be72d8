import { describe, expect, it } from "vitest";
import { jargonIn } from "../../plain-words/jargon.ts";
import { readingGrade } from "../../plain-words/reading-grade.ts";
import { answer } from "../../topic.ts";
import { planTopic } from "../plan-topic.ts";
import type { ShownOutcome } from "./option-outcomes.ts";
import { outOfWords, plainChances } from "./plain-chance.ts";
import { planSources } from "./plan-sources.ts";
import { plainTexts, riskRows, wayRows } from "./plan-tables.ts";

/** Everything that a patient can be told, a group of sentences as it is printed together. */
const groups: [string, string][] = [
  ...riskRows.map(({ id, plain, outOf }): [string, string] => [id, `${plain} ${outOf?.says ?? ""}`]),
  ...wayRows.flatMap(({ way, plain }): [string, string][] => [
    [`${way}: name`, plain.name],
    [`${way}: what it is`, plain.whatItIs.join(" ")],
    [`${way}: what it asks`, plain.whatItAsks.join(" ")],
    [`${way}: what it leaves`, plain.whatItLeaves.join(" ")],
    [`${way}: visits`, plain.visits],
  ]),
  ...Object.entries({ ...plainTexts.pulpal, ...plainTexts.apical }),
  ...Object.entries(plainTexts.ifNothing).map(([id, lines]): [string, string] => [id, lines.join(" ")]),
  ...planSources.flatMap(({ outcomes }) =>
    outcomes.map(({ id, plain: { things, had, later } }): [string, string] => [
      id,
      `Studies differ. In one, about 8 out of 10 ${things} like yours ${had} ${later}. They were not all like yours.`,
    ]),
  ),
];

describe("what a patient is told (C11)", () => {
  // Grade 7 is read at an age of about 12 (Kincaid and others 1975, recalled).
  it.each(groups)("%s reads at a grade of at most 7", (_, text) => {
    expect(readingGrade(text)).toBeLessThanOrEqual(7);
  });

  it.each(groups)("%s holds no word of the trade", (_, text) => {
    expect(jargonIn(text)).toEqual([]);
  });

  it("promises nothing", () => {
    for (const [, text] of groups) expect(text).not.toMatch(/\bsafe|\bprove|\bguarantee|\balways works/i);
  });

  it("reads as easily when it stands together for a case", () => {
    const { options, plain } = answer(planTopic, {
      ...{ tooth: "46", pulpal: "previouslyTreated", apical: "chronicApicalAbscess", lesion: "present", post: "yes" },
      ...{ medical: ["anticoagulant", "antiresorptive", "endocarditisRisk"], crowned: "yes", perforation: "present" },
    });
    const told = options.flatMap(({ risks, plain: way }) => [
      ...risks.map((risk) => risk.plain),
      ...way.chances.map(({ says }) => says),
    ]);
    const text = [...plain.whatIsWrong, ...plain.ifNothingIsDone, ...told].join(" ");
    expect(told.length).toBeGreaterThan(30);
    expect(readingGrade(text)).toBeLessThanOrEqual(6);
    expect(jargonIn(text)).toEqual([]);
  });
});

describe("a share as people say it (C11)", () => {
  it.each([
    [0, "almost none"],
    [0.0049, "almost none"],
    [0.005, "about 1 out of 100"],
    [0.049, "about 5 out of 100"],
    [0.05, "about 1 out of 10"],
    [0.318, "about 3 out of 10"],
    [0.805, "about 8 out of 10"],
    [0.949, "about 9 out of 10"],
    [0.95, "about 95 out of 100"],
    [0.994, "about 99 out of 100"],
    [0.995, "almost all"],
    [1, "almost all"],
  ])("%f is %s", (share, words) => {
    expect(outOfWords(share)).toBe(words);
  });
});

type Shown = ShownOutcome["shown"];
const series = (id: string, proportion: number, more: Partial<Shown> = {}, things = "teeth"): ShownOutcome => ({
  shown: {
    ...{ id, what: "healed", kind: "healing", proportion, intervalIs: "none", definition: "strict" },
    ...{ definitionSays: "", imaging: "film", unit: "tooth", design: "", followUp: "", group: "" },
    ...{ nearest: "nearest", nearestSays: "", source: "x", mark: "seen" },
    ...more,
  },
  plain: { things, had: "had healed", later: "2 years later" },
});

describe("what is told of several series (C11)", () => {
  it("is one where they lie nearer than 5 points: the lowest", () => {
    expect(plainChances([series("a", 0.84), series("b", 0.8), series("c", 0.83)])).toEqual([
      { outcome: "b", says: "About 8 out of 10 teeth like yours had healed 2 years later." },
    ]);
  });

  it("are the lowest and the highest where they lie 5 points or more apart", () => {
    expect(plainChances([series("a", 0.8), series("b", 0.47), series("c", 0.62)])).toEqual([
      { outcome: "b", says: "Studies differ. In one, about 5 out of 10 teeth like yours had healed 2 years later." },
      { outcome: "a", says: "In another, about 8 out of 10 teeth like yours had healed 2 years later." },
    ]);
  });

  it("is one where they are said in the same words, however far apart: 0.85 and 0.946 are both about 9 out of 10", () => {
    expect(plainChances([series("a", 0.946), series("b", 0.85)]).map(({ outcome }) => outcome)).toEqual(["b"]);
  });

  it("keeps what did not get worse apart from healing and says that it is not healing", () => {
    const told = plainChances([series("a", 0.8), series("same", 0.5, { kind: "notWorse" })]);
    expect(told.map(({ outcome }) => outcome)).toEqual(["a", "same"]);
    expect(told[1]?.says).toContain("That does not mean that they had healed.");
  });

  it("is the nearest group alone, and says where it is not like the case", () => {
    const near = series("near", 0.7, { nearest: "near" });
    const wider = series("wider", 0.3, { nearest: "wider" });
    expect(plainChances([wider, near]).map(({ outcome }) => outcome)).toEqual(["near"]);
    expect(plainChances([near])[0]?.says).toBe(
      "About 7 out of 10 teeth had healed 2 years later. They were not all like yours.",
    );
  });

  it("is nothing of a group that differs, and nothing of the person's own figures", () => {
    expect(plainChances([series("other", 0.7, { nearest: "other" })])).toEqual([]);
    const { shown } = series("own", 0.9);
    expect(plainChances([{ shown }])).toEqual([]);
  });

  it("keeps retention apart from healing and says that it is not healing", () => {
    const kept = series("kept", 0.95, { kind: "retention" });
    const told = plainChances([series("a", 0.8), kept]);
    expect(told.map(({ outcome }) => outcome)).toEqual(["a", "kept"]);
    expect(told[1]?.says).toContain("That does not mean that all of them were well.");
  });

  it("keeps implants and bridges apart", () => {
    const replaced = { kind: "replacement" } as const;
    const told = plainChances([series("i", 0.97, replaced, "implants"), series("b", 0.89, replaced, "bridges")]);
    expect(told.map(({ says }) => says)).toEqual([
      "About 97 out of 100 implants had healed 2 years later.",
      "About 9 out of 10 bridges had healed 2 years later.",
    ]);
  });
});
