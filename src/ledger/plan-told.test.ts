import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import { sampleWays } from "../../test/sample-ways.ts";
import type { PlanOption } from "../core/diagnosis/plan/plan-output.ts";
import type { Part } from "../record/parts.ts";
import { lastPlan, planSubject, planTold, waysSince } from "./plan-told.ts";

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

  it("is asked of the case", () => {
    expect(planSubject(sampleParts())).toBe("plan of about");
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
