import { describe, expect, it } from "vitest";
import { part } from "../../test/sample-case.ts";
import { sampleWays } from "../../test/sample-ways.ts";
import type { PlanOption } from "../core/diagnosis/plan/plan-output.ts";
import type { Part } from "../record/parts.ts";
import { factsSince, lastPlan, planSubject, planTold, waysSince } from "./plan-told.ts";

const planOn = (id: string, madeOn: string): Part =>
  part("plan", id, { madeOn, options: [], chosen: "treat", because: "", risksNamed: [] });
const withStanding = (way: PlanOption["way"], standing: PlanOption["standing"]) => {
  const ways = sampleWays();
  return { ...ways, options: ways.options.map((option) => (option.way === way ? { ...option, standing } : option)) };
};

describe("what an entry says of the ways of a tooth", () => {
  it("is read where it stands in today's form, and nothing is said of another", () => {
    expect(planTold({ output: sampleWays() })?.options).toHaveLength(12);
    expect(planTold({ output: { options: [] } })).toBeUndefined();
    expect(planTold(undefined)).toBeUndefined();
  });

  it("is asked of each plan", () => {
    expect(planSubject("plan-1")).toBe("plan of plan-1");
  });
});

describe("the facts on which two entries rest differently", () => {
  const on = (input: unknown) => ({ input });
  it("are those that came, those that went and those that read otherwise, by name", () => {
    const then = on({ tooth: "26", pain: "present", lesionMm: 4, medical: ["pregnancy"] });
    const now = on({ medical: ["pregnancy"], lesionMm: 3, tooth: "26", fragment: "present" });
    expect(factsSince(then, now)).toEqual(["lesionMm", "fragment", "pain"]);
    expect([...factsSince(now, then)].sort()).toEqual(["fragment", "lesionMm", "pain"]);
  });

  it("are none between an entry and itself, nor where an entry has no facts", () => {
    expect(factsSince(on({ tooth: "26" }), on({ tooth: "26" }))).toEqual([]);
    expect(factsSince(on(undefined), on("a text"))).toEqual([]);
  });
});

describe("the plan of a case", () => {
  it("is the one that was made last, of two on one day the one that was added last", () => {
    const [early, late, beside] = [planOn("a", "2024-01-01"), planOn("b", "2024-02-01"), planOn("c", "2024-02-01")];
    expect(lastPlan([late, early])?.id).toBe("b");
    expect(lastPlan([late, beside, early])?.id).toBe("c");
    expect(lastPlan([])).toBeUndefined();
  });
});

describe("what changed of the ways since planning", () => {
  it("is nothing between a list and itself, and else each way whose standing is another", () => {
    expect(waysSince(sampleWays(), sampleWays())).toEqual([]);
    expect(waysSince(sampleWays(), withStanding("surgery", "open"))).toEqual([
      { way: "surgery", was: "needs an answer first", now: "open" },
    ]);
  });
});
