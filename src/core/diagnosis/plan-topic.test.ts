import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import type { Condition } from "./plan/condition.ts";
import { planInput } from "./plan/plan-input.ts";
import { planSources } from "./plan/plan-sources.ts";
import { conflictRows, factTexts, fitRows, mustRows, plainTexts, riskRows, wayRows } from "./plan/plan-tables.ts";
import { planWays } from "./plan/plan-ways.ts";
import { planTopic } from "./plan-topic.ts";

function refusalOf(input: unknown): Refusal | undefined {
  try {
    answer(planTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  return undefined;
}

const own = { way: "watch", what: "well", kind: "healing", followUp: "a year", from: "my logbook" };

describe("what a plan refuses", () => {
  it.each([
    [{ tooth: "49" }, "tooth.unknown", ["tooth"]],
    [{ tooth: "first molar" }, "tooth.unknown", ["tooth"]],
    [{ tooth: "75" }, "input.notDeterminable", ["tooth"]],
    [{ tooth: "46", lesion: "none", lesionMm: 3 }, "input.impossible", ["lesionMm"]],
    [{ tooth: "46", perforation: "none", perforationMm: 1 }, "input.impossible", ["perforationMm"]],
    [{ tooth: "46", pulpal: "previouslyTreated", earlierFilling: "none" }, "input.impossible", ["earlierFilling"]],
    [{ tooth: "46", exposure: "none", caries: "exposed" }, "input.impossible", ["caries"]],
    [{ tooth: "46", earlierFilling: "none", earlierFillingIs: "adequate" }, "input.impossible", ["earlierFillingIs"]],
    [{ tooth: "46", earlierFilling: "none", earlierFillingEndMm: 1 }, "input.impossible", ["earlierFillingEndMm"]],
    [{ tooth: "46", medical: ["diabetes", "pregnancy", "diabetes"] }, "input.impossible", ["medical[2]"]],
    [{ tooth: "46", own: [{ ...own, events: 21, n: 20 }] }, "input.impossible", ["own[0].events"]],
    [{ tooth: "46", own: [own] }, "input.impossible", ["own[0]"]],
    [{ tooth: "46", own: [{ ...own, events: 1, n: 2, percent: 50 }] }, "input.impossible", ["own[0]"]],
    [{ tooth: "46", own: [{ ...own, events: 1, percent: 50 }] }, "input.impossible", ["own[0]"]],
    [{ tooth: "46", own: [{ ...own, n: 20 }] }, "input.impossible", ["own[0]"]],
    [{ tooth: "46", own: [{ ...own, percent: 50, lowPercent: 60 }] }, "input.impossible", ["own[0].lowPercent"]],
    [{ tooth: "46", own: [{ ...own, percent: 50, highPercent: 40 }] }, "input.impossible", ["own[0].highPercent"]],
    [{ tooth: "46", own: [{ ...own, percent: 120 }] }, "input.invalid", ["own[0].percent"]],
    [{ tooth: "46", own: [{ ...own, percent: -1 }] }, "input.invalid", ["own[0].percent"]],
    [{ tooth: "46", ferruleHeightMm: 16 }, "input.invalid", ["ferruleHeightMm"]],
    [{ tooth: "46", ferruleHeightMm: -1, ferruleWidthMm: 11 }, "input.invalid", ["ferruleHeightMm", "ferruleWidthMm"]],
    [{ tooth: "46", deepestProbingMm: 21 }, "input.invalid", ["deepestProbingMm"]],
    [{ tooth: "46", crownToRoot: 0 }, "input.invalid", ["crownToRoot"]],
    [{ tooth: "46", mobility: 1.5 }, "input.invalid", ["mobility"]],
    [{ tooth: "46", roots: 7 }, "input.invalid", ["roots"]],
    [{ tooth: "46", ageYears: 121 }, "input.invalid", ["ageYears"]],
    [{ tooth: "46", bendDeg: 181 }, "input.invalid", ["bendDeg"]],
    [{ tooth: "46", pulpal: "pulpitis" }, "input.invalid", ["pulpal"]],
    [{ tooth: "46", medical: ["gout"] }, "input.invalid", ["medical[0]"]],
    [{}, "input.invalid", ["tooth"]],
  ])("%j: %s at %j", (input, code, paths) => {
    const found = refusalOf(input);
    expect(found?.code).toBe(code);
    expect(found?.faults.map(({ path }) => path) ?? []).toEqual(paths);
  });

  it("collects every fault, and names the primary tooth", () => {
    const found = refusalOf({ tooth: "55", lesion: "none", lesionMm: 2, exposure: "none", caries: "exposed" });
    expect(found?.faults.map(({ path }) => path)).toEqual(["tooth", "lesionMm", "caries"]);
    expect(found?.message).toContain("upper right second primary molar is a primary tooth");
  });
});

describe("what a plan says besides", () => {
  it("names every source that it shows, and none besides", () => {
    const { options, basis } = answer(planTopic, { tooth: "46", pulpal: "previouslyTreated", lesion: "present" });
    const text = JSON.stringify(options);
    for (const { id } of planSources) expect(basis.sources.includes(id), id).toBe(text.includes(`"${id}"`));
  });

  it("says what it has no figure for, and takes the person's own as one", () => {
    const found = answer(planTopic, { tooth: "11", pulpal: "normalPulp", apical: "normalApicalTissues" });
    expect(found.options.find(({ way }) => way === "watch")?.outcomes.length).toBeGreaterThan(0);
    const names = (input: object) => answer(planTopic, { tooth: "46", ...input }).notComputed.map(({ name }) => name);
    expect(names({})).toEqual(["extraction.withoutReplacement", "personalChance"]);
    expect(names({ pulpal: "normalPulp", apical: "normalApicalTissues" })).toEqual(["personalChance"]);
  });

  it.each([
    [{ apical: "asymptomaticApicalPeriodontitis", lesion: "none" }, /seen by its lesion/],
    [{ pulpal: "normalPulp", lesion: "present" }, /look for another cause/],
    [{ narrowDefect: "yes" }, /vertical root fracture/],
    [{}, /medical history is not taken/],
    [{}, /Retention is not healing/],
  ])("cautions under %j: %s", (input, text) => {
    expect(answer(planTopic, { tooth: "46", ...input }).cautions.join("\n")).toMatch(text);
  });

  it("says that an earlier filling is judged by its end alone, where it is", () => {
    const assumptions = (input: object) => answer(planTopic, { tooth: "46", ...input }).basis.assumptions.join();
    expect(assumptions({ earlierFillingEndMm: 1 })).toContain("judged by its end alone");
    expect(assumptions({ earlierFillingEndMm: 1, earlierFillingIs: "adequate" })).not.toContain("its end alone");
  });

  // Where the end lies: 0 to 2 mm short is adequate (common practice).
  it.each([
    [-0.1, "open", "needs an answer first"],
    [0, "open", "open"],
    [2, "open", "open"],
    [2.1, "open", "needs an answer first"],
  ])("an end %f mm short: retreatment %s, surgery %s (C1)", (earlierFillingEndMm, retreat, surgery) => {
    const { options } = answer(planTopic, {
      ...{ tooth: "16", pulpal: "previouslyTreated", apical: "asymptomaticApicalPeriodontitis", medical: [] },
      ...{ ferruleHeightMm: 2, deepestProbingMm: 3, earlierFillingEndMm },
    });
    const standing = (wanted: string) => options.find(({ way }) => way === wanted)?.standing;
    expect([standing("retreat"), standing("surgery")]).toEqual([retreat, surgery]);
  });

  it.each([
    [{ pulpal: "normalPulp", apical: "normalApicalTissues" }, "sound"],
    [{ pulpal: "reversiblePulpitis", caries: "deep" }, "inflamed"],
    [{ pulpal: "symptomaticIrreversiblePulpitis" }, "inflamed"],
    [{ pulpal: "pulpNecrosis" }, "infected"],
    [{ pulpal: "previouslyInitiatedTherapy" }, "infected"],
    [{ pulpal: "symptomaticIrreversiblePulpitis", apical: "acuteApicalAbscess" }, "infected"],
    [{ pulpal: "previouslyTreated", apical: "asymptomaticApicalPeriodontitis" }, "silentFilled"],
    [{ pulpal: "previouslyTreated", pain: "present" }, "infected"],
    [{ pulpal: "notDetermined" }, "unknown"],
    [{}, "unknown"],
  ] as const)("if nothing is done under %j: %s (C11)", (input, key) => {
    const { plain } = answer(planTopic, { tooth: "46", ...input });
    expect(plain.ifNothingIsDone).toEqual(plainTexts.ifNothing[key]);
    expect(plain.whatIsWrong).toHaveLength(2);
  });
});

describe("the rows", () => {
  const conditions: [string, Condition][] = [
    ...fitRows.map(({ id, when }): [string, Condition] => [id, when]),
    ...riskRows.flatMap(({ id, calls }) => calls.map(({ when }): [string, Condition] => [id, when])),
    ...planSources.flatMap(({ outcomes, factors }) =>
      [...outcomes, ...factors].map(({ id, when }): [string, Condition] => [id, when]),
    ),
    ...planSources.flatMap(({ outcomes }) =>
      outcomes.map(({ id, onlyWhen = {} }): [string, Condition] => [id, onlyWhen]),
    ),
  ];

  it.each(conditions)("%s asks for facts that have a name and a question, and words that they can have", (_, when) => {
    const fields: Readonly<Record<string, { safeParse: (value: unknown) => { success: boolean } }>> = planInput.shape;
    for (const [fact, wanted] of Object.entries(when)) {
      expect(Object.keys(factTexts)).toContain(fact);
      const field = fields[fact];
      if (field !== undefined && Array.isArray(wanted))
        for (const word of wanted) expect(field.safeParse(word).success, `${fact} ${word}`).toBe(true);
    }
  });

  it("name sources that are kept", () => {
    const known = new Set([...planSources.map(({ id }) => id), "common practice"]);
    const named = [
      ...[...fitRows, ...mustRows, ...riskRows].map(({ source }) => source),
      ...conflictRows.flatMap(({ sources }) => sources),
      ...wayRows.map(({ visits }) => visits.source),
    ];
    expect(named.filter((source) => !known.has(source))).toEqual([]);
  });

  it("are named once, and every way has its steps", () => {
    for (const rows of [fitRows, mustRows, riskRows]) expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    expect(wayRows.map(({ way }) => way)).toEqual(planWays);
    for (const { steps, visits } of wayRows) expect(steps.length > 0 && visits.least <= visits.most).toBe(true);
  });
});
