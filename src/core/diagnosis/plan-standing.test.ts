import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import type { Condition } from "./plan/condition.ts";
import type { PlanInput } from "./plan/plan-input.ts";
import { fitRows, mustRows } from "./plan/plan-tables.ts";
import { type PlanWay, planWays } from "./plan/plan-ways.ts";
import { planTopic } from "./plan-topic.ts";

const restorable: Partial<PlanInput> = {
  ...{ ferruleHeightMm: 2, ferruleWidthMm: 1, crownToRoot: 0.7, deepestProbingMm: 3, narrowDefect: "no" },
  ...{ crack: "none", mobility: 1, medical: [] },
};
const optionsOf = (input: Partial<PlanInput>) => answer(planTopic, { tooth: "46", ...input }).options;
const optionOf = (way: PlanWay, input: Partial<PlanInput>) => {
  const found = optionsOf(input).find((one) => one.way === way);
  if (found === undefined) throw new Error(`no ${way}`);
  return found;
};
const standings = (input: Partial<PlanInput>) =>
  Object.fromEntries(optionsOf(input).map(({ way, standing }) => [way, standing]));

const open = "open";
const asks = "needs an answer first";
const not = "does not fit";

describe("the ways of a tooth (C3, C5)", () => {
  // Standings as the trade expects them (common practice, and the position statement of 2019 for exposed pulps).
  it("of a filled upper molar with a sore apex: retreat or take out; surgery once it is said why not retreat", () => {
    const filled = { pulpal: "previouslyTreated", apical: "symptomaticApicalPeriodontitis", apex: "closed" } as const;
    const found = standings({ ...restorable, ...filled, tooth: "26", lesion: "present", earlierFillingEndMm: 3 });
    expect(found).toEqual({
      ...{ watch: not, indirectCapping: not, directCapping: not, partialPulpotomy: not, fullPulpotomy: not },
      ...{ treat: not, apicalBarrier: not, regeneration: not, retreat: open, surgery: asks, replantation: asks },
      extraction: open,
    });
    const well = standings({ ...restorable, ...filled, tooth: "26", lesion: "present", earlierFillingEndMm: 1 });
    expect(well).toMatchObject({ retreat: open, surgery: open, replantation: asks });
  });

  it("of a necrotic premolar with an open root end: barrier or regeneration, treatment once the barrier is said", () => {
    const young = { pulpal: "pulpNecrosis", apical: "asymptomaticApicalPeriodontitis", apex: "open" } as const;
    expect(standings({ ...restorable, ...young, tooth: "35", lesion: "present" })).toMatchObject({
      ...{ apicalBarrier: open, regeneration: open, treat: asks, retreat: not, surgery: not, watch: not },
    });
  });

  it("of deep caries over a pulp that can recover: cover it; nothing that takes pulp or tooth", () => {
    const deep = { pulpal: "reversiblePulpitis", apical: "normalApicalTissues", caries: "deep" } as const;
    expect(standings({ ...restorable, ...deep })).toEqual({
      ...{ watch: not, indirectCapping: open, directCapping: not, partialPulpotomy: not, fullPulpotomy: not },
      ...{ treat: not, apicalBarrier: not, regeneration: not, retreat: not, surgery: not, replantation: not },
      extraction: not,
    });
  });

  it("of symptomatic irreversible pulpitis: full pulpotomy or treatment", () => {
    const sore = { pulpal: "symptomaticIrreversiblePulpitis", apical: "normalApicalTissues", apex: "closed" } as const;
    expect(standings({ ...restorable, ...sore, lesion: "none" })).toMatchObject({
      ...{ fullPulpotomy: open, treat: open, partialPulpotomy: asks, directCapping: not, watch: not },
    });
  });

  it("of a sound tooth: to watch it, and nothing else", () => {
    const sound = { pulpal: "normalPulp", apical: "normalApicalTissues", caries: "none" } as const;
    const found = standings({ ...restorable, ...sound });
    expect(Object.entries(found).filter(([, standing]) => standing !== not)).toEqual([["watch", open]]);
  });

  it("wait where nothing but the tooth is known, and ask for the pulpal term first", () => {
    const { options, ask } = answer(planTopic, { tooth: "46" });
    expect(options.map(({ way }) => way)).toEqual(planWays);
    expect(options.every(({ standing }) => standing === asks)).toBe(true);
    expect(ask[0]?.fact).toBe("pulpal");
    expect(ask.find(({ fact }) => fact === "medicalTaken")?.ways).not.toContain("watch");
  });

  it("a term that is not determined waits as one that is not recorded does; watching then fits", () => {
    const [unknown, undetermined] = [{}, { pulpal: "notDetermined" } as const].map((input) =>
      standings({ ...restorable, ...input, apical: "normalApicalTissues", caries: "none" }),
    );
    expect(undetermined).toEqual({ ...unknown, watch: open });
  });

  it("`unknown` is as absent (C1)", () => {
    const facts = { pulpal: "pulpNecrosis", apical: "asymptomaticApicalPeriodontitis" } as const;
    const said = {
      apex: "unknown",
      lesion: "unknown",
      fragment: "unknown",
      post: "unknown",
      caries: "unknown",
    } as const;
    expect(optionsOf({ ...facts, ...said })).toEqual(optionsOf(facts));
  });

  it("of a way that does not fit give the reasons and nothing to weigh (C5)", () => {
    const { why, outcomes, risks, factors, mustBeTrueFirst, conflicts, plain } = optionOf("retreat", {
      ...restorable,
      pulpal: "pulpNecrosis",
    });
    expect(why).toEqual([expect.objectContaining({ row: "retreat-unfilled", speaks: "against" })]);
    expect([...outcomes, ...risks, ...factors, ...mustBeTrueFirst, ...conflicts, ...plain.chances]).toEqual([]);
  });

  it("do not depend on the order in which facts are given (property)", () => {
    const facts = { ...restorable, pulpal: "previouslyTreated", apical: "chronicApicalAbscess", lesion: "present" };
    const turned = Object.fromEntries(Object.entries({ tooth: "16", ...facts }).reverse());
    expect(answer(planTopic, turned)).toEqual(answer(planTopic, { tooth: "16", ...facts }));
  });
});

/** An input under which a condition holds. */
function inputUnder(condition: Condition): Partial<PlanInput> {
  const flags = new Set(["antiresorptive", "jawIrradiation"]);
  const given = Object.entries(condition).flatMap(([fact, wanted]): [string, unknown][] => {
    if (flags.has(fact)) return [["medical", [fact]]];
    if (fact === "undetermined")
      return Array.isArray(wanted) && wanted.includes("pulp") ? [["pulpal", "notDetermined"]] : [];
    return [[fact, Array.isArray(wanted) ? wanted[0] : (wanted.atLeast ?? wanted.atMost ?? 1)]];
  });
  return Object.fromEntries(given);
}

describe("each row (C3)", () => {
  it.each(fitRows.map((row) => [row.id, row] as const))("%s is heard where its facts are recorded", (id, row) => {
    const option = optionOf(row.way, inputUnder(row.when));
    const heard = option.why.map((one) => one.row);
    if (row.speaks === "against") expect(option.standing).toBe(not);
    if (row.speaks === "asks" && option.standing !== not) expect(option.standing).toBe(asks);
    // A row for a way is silent only where another row speaks against it.
    if (row.speaks === "against" || option.standing !== not) expect(heard).toContain(id);
    else expect(option.why.every(({ speaks }) => speaks === "against")).toBe(true);
  });
});

describe("what must be true first (C4)", () => {
  const facts = { pulpal: "previouslyTreated", apical: "asymptomaticApicalPeriodontitis", apex: "closed" } as const;
  const retreat = (change: Partial<PlanInput>) => optionOf("retreat", { ...restorable, ...facts, ...change });
  const must = (id: string, change: Partial<PlanInput>) => retreat(change).mustBeTrueFirst.find((one) => one.id === id);

  it.each([
    [1.49, "notMet", -0.01],
    [1.5, "met", 0],
    [2, "met", 0.5],
  ])("a ferrule of %f mm is held against 1.5: %s by %f", (ferruleHeightMm, standing, by) => {
    const found = must("ferrule-height", { ferruleHeightMm });
    expect(found).toMatchObject({ standing, threshold: 1.5, value: ferruleHeightMm, by, decides: standing !== "met" });
    expect(retreat({ ferruleHeightMm }).standing).toBe(standing === "met" ? open : asks);
  });

  it("a ferrule that is not recorded makes the way wait; its width and the ratio never do", () => {
    const { ferruleHeightMm: _, ferruleWidthMm: __, crownToRoot: ___, ...rest } = restorable;
    const without = optionOf("retreat", { ...rest, ...facts });
    expect(without.standing).toBe(asks);
    expect(without.mustBeTrueFirst.filter(({ decides }) => decides).map(({ id }) => id)).toEqual(["ferrule-height"]);
    expect(retreat({ ferruleWidthMm: 0.4, crownToRoot: 1.4 }).standing).toBe(open);
    expect(must("ferrule-width", { ferruleWidthMm: 0.4 })).toMatchObject({ standing: "notMet", by: -0.6 });
    expect(must("crown-root", { crownToRoot: 1.4 })).toMatchObject({ standing: "notMet", by: 0.4 });
    expect(must("crown-root", { crownToRoot: 1 })).toMatchObject({ standing: "met", by: 0 });
  });

  it.each([
    ["probing", { deepestProbingMm: 6 }, "met"],
    ["probing", { deepestProbingMm: 6.5 }, "notMet"],
    ["no-narrow-defect", { narrowDefect: "yes" }, "notMet"],
    ["no-crack", { crack: "suspected" }, "notMet"],
    ["mobility", { mobility: 2 }, "met"],
    ["mobility", { mobility: 3 }, "notMet"],
    ["no-anaesthetic-allergy", { medical: ["allergyAnaesthetic"] }, "notMet"],
  ] as const)("%s under %j is %s", (id, change, standing) => {
    expect(must(id, structuredClone(change) as Partial<PlanInput>)?.standing).toBe(standing);
    expect(retreat(structuredClone(change) as Partial<PlanInput>).standing).toBe(standing === "met" ? open : asks);
  });

  it("names the medical history, and the root end of a barrier", () => {
    const { medical: _, ...rest } = restorable;
    expect(optionOf("retreat", { ...rest, ...facts }).mustBeTrueFirst[0]).toMatchObject({
      ...{ id: "medical-history", standing: "notRecorded", decides: true },
    });
    const barrier = optionOf("apicalBarrier", { ...restorable, pulpal: "pulpNecrosis" });
    expect(barrier.mustBeTrueFirst.find(({ id }) => id === "apex-known")).toMatchObject({ standing: "notRecorded" });
  });

  it("has no row that no way shows", () => {
    const everyWay = [
      optionsOf({}),
      optionsOf({ pulpal: "pulpNecrosis", apex: "open" }),
      optionsOf({ pulpal: "previouslyTreated", apical: "chronicApicalAbscess" }),
    ].flat();
    const shown = new Set(everyWay.flatMap(({ mustBeTrueFirst }) => mustBeTrueFirst.map(({ id }) => id)));
    expect([...shown].sort()).toEqual(mustRows.map(({ id }) => id).sort());
  });
});
