import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import type { Condition } from "./plan/condition.ts";
import { type PlanInput, planFlags } from "./plan/plan-input.ts";
import { riskRows } from "./plan/plan-tables.ts";
import type { PlanWay } from "./plan/plan-ways.ts";
import { planTopic } from "./plan-topic.ts";

describe("material risks (C9)", () => {
  /** Where nothing but the tooth is known every way waits, so that each shows its risks. */
  const risksUnder = (facts: Partial<PlanInput>) =>
    new Map(
      answer(planTopic, { tooth: "46", ...facts }).options.flatMap(({ way, risks }) =>
        risks.map((risk) => [`${way} ${risk.id}`, risk]),
      ),
    );
  const [bare, front] = [risksUnder({ medical: [] }), risksUnder({ tooth: "11", medical: [] })];

  it.each([
    ["bleeding", { medical: ["anticoagulant"] }, ["surgery", "replantation", "extraction"]],
    ["bone-death", { medical: ["antiresorptive"] }, ["surgery", "replantation", "extraction"]],
    ["bone-death", { medical: ["jawIrradiation"] }, ["surgery", "replantation", "extraction"]],
    ["endocarditis", { medical: ["endocarditisRisk"] }, ["treat", "retreat", "extraction"]],
    ["slow-healing", { medical: ["diabetes"] }, ["treat", "surgery", "extraction"]],
    ["slow-healing", { medical: ["immuneSuppression"] }, ["treat", "surgery", "extraction"]],
    ["pregnancy", { medical: ["pregnancy"] }, ["treat", "retreat"]],
    ["allergy-wash", { medical: ["allergyHypochlorite"] }, ["treat", "retreat"]],
    ["allergy-latex", { medical: ["allergyLatex"] }, ["treat", "extraction"]],
    ["allergy-penicillin", { medical: ["allergyPenicillin"] }, ["treat", "extraction"]],
    ["allergy-injection", { medical: ["allergyAnaesthetic"] }, ["treat", "extraction"]],
    ["instrument-separates", { bendDeg: 20 }, ["treat"]],
    ["instrument-separates", { calcified: "yes" }, ["treat", "retreat"]],
    ["perforation", { post: "yes" }, ["retreat"]],
    ["perforation", { morphology: "altered" }, ["treat", "retreat"]],
    ["end-not-reached", { fragment: "present" }, ["treat", "retreat"]],
    ["fragment-stays", { fragment: "present" }, ["treat", "retreat"]],
    ["perforation-leaks", { perforation: "present" }, ["treat", "retreat"]],
    ["irrigant-beyond", { apex: "open" }, ["treat", "apicalBarrier", "regeneration"]],
    ["irrigant-beyond", { perforation: "present" }, ["treat"]],
    ["irrigant-beyond", { resorption: "present" }, ["treat"]],
    ["post-removal-fracture", { post: "yes" }, ["retreat"]],
    ["crown-damage", { crowned: "yes" }, ["treat", "retreat", "replantation"]],
    ["crack-spreads", { crack: "suspected" }, ["treat", "retreat"]],
    ["getting-worse", { lesion: "present" }, ["watch"]],
    ["root-stays-thin", { apex: "open" }, ["apicalBarrier"]],
    ["no-growth", { apex: "open" }, ["regeneration"]],
  ] as [string, Partial<PlanInput>, PlanWay[]][])("%s is called for by %j", (id, facts, ways) => {
    const under = risksUnder({ medical: [], ...facts });
    for (const way of ways) {
      expect(under.get(`${way} ${id}`)?.because, `${way} ${id}`).toBeTruthy();
      expect(bare.has(`${way} ${id}`), `${way} ${id} without it`).toBe(false);
    }
  });

  it.each([
    ["numb-after-injection", "treat", true, false],
    ["nerve-of-lower-jaw", "extraction", true, false],
    ["filling-beyond", "treat", true, false],
    ["tooth-fracture", "treat", true, false],
    ["discolouration", "treat", false, true],
    ["sinus", "extraction", false, false],
  ])("%s of %s: lower molar %s, upper incisor %s", (id, way, lower, upper) => {
    expect([bare.has(`${way} ${id}`), front.has(`${way} ${id}`)]).toEqual([lower, upper]);
  });

  it("names the sinus above and the nerve below", () => {
    const found = risksUnder({ tooth: "26" });
    expect([found.has("surgery sinus"), found.has("surgery nerve-of-lower-jaw")]).toEqual([true, false]);
  });

  it("says every fact that calls for one, with its value", () => {
    const found = risksUnder({ bendDeg: 34.4, calcified: "yes" }).get("treat instrument-separates");
    expect(found?.because).toBe("a canal bends by 34 degrees; the canal is narrowed by hard tissue");
    expect(risksUnder({ bendDeg: 19.9 }).has("treat instrument-separates")).toBe(false);
  });

  it("tells how often a flare-up came: 77 of 719 is about 1 out of 10 (8.7 to 13.2 % by Wilson)", () => {
    const found = bare.get("treat pain-after");
    expect(found?.outOf).toMatchObject({ events: 77, n: 719 });
    expect(found?.outOf?.interval.low).toBeCloseTo(0.0865, 4);
    expect(found?.outOf?.interval.high).toBeCloseTo(0.1318, 4);
    expect(found?.plain).toContain("came in about 1 out of 10.");
  });

  it("asks for what could call for one: the history as a whole, not flag by flag", () => {
    const { ask } = answer(planTopic, { tooth: "46", pulpal: "pulpNecrosis" });
    expect(ask.find(({ fact }) => fact === "medicalTaken")?.risks).toContain("bleeding");
    expect(ask.map(({ fact }) => fact)).not.toContain("anticoagulant");
    expect(ask.find(({ fact }) => fact === "calcified")?.risks).toContain("perforation");
  });

  it.each(riskRows.flatMap((row) => row.calls.map((call) => [row.id, call.because, row, call] as const)))(
    "%s is named at each of its ways: %s",
    (id, _, { ways }, { when }) => {
      const found = risksUnder(inputUnder(when));
      const shown = answer(planTopic, { tooth: "46", ...inputUnder(when) }).options;
      for (const { way } of shown.filter(({ way, standing }) => ways.includes(way) && standing !== "does not fit"))
        expect(found.get(`${way} ${id}`), way).toBeDefined();
      expect(ways.some((way) => found.has(`${way} ${id}`))).toBe(true);
    },
  );
});

/** An input under which a condition holds. */
function inputUnder(condition: Condition): Partial<PlanInput> {
  const flags: ReadonlySet<string> = new Set(planFlags);
  const { arch, type, ...rest } = condition;
  const given = Object.entries(rest).flatMap(([fact, wanted]): [string, unknown][] => {
    if (flags.has(fact)) return [["medical", [fact]]];
    return [[fact, Array.isArray(wanted) ? wanted[0] : wanted.atLeast]];
  });
  const kind = Array.isArray(type) && type.includes("molar") ? 6 : 1;
  const upper = Array.isArray(arch) && arch.includes("upper");
  const tooth = type === undefined && arch === undefined ? "46" : `${upper ? 1 : 4}${kind}`;
  return { tooth, ...Object.fromEntries(given) };
}
