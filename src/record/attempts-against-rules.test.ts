import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attemptsAgainstRules, hasStopRule, minutesBetween, rulesStoodFirst } from "./attempts-against-rules.ts";
import type { BodyOf } from "./parts.ts";

const attempt = (minutes: number, at = "2026-03-12T09:00:00Z"): BodyOf<"removal">["attempts"][number] => ({
  ...{ at, minutes, tool: "ultrasonicTip", tip: "", moved: "nothing", note: "" },
});
const setAt = "2026-03-12T08:00:00Z";

describe("attempts against their stop rules", () => {
  it("are added up, with the one that the clock runs for", () => {
    const removal = { attempts: [attempt(12), attempt(7.5)] };
    expect(attemptsAgainstRules(removal)).toEqual({ minutes: 19.5, attempts: 2, rules: [] });
    expect(attemptsAgainstRules(removal, 0.5)).toEqual({ minutes: 20, attempts: 3, rules: [] });
  });

  it.each([
    [47.9, "within"],
    [48, "near"],
    [59.9, "near"],
    [60, "reached"],
    [75, "reached"],
  ] as const)("%d of 60 minutes are %s", (minutes, standing) => {
    const now = attemptsAgainstRules({ attempts: [attempt(minutes)], stopRules: { setAt, minutes: 60 } });
    expect(now).toMatchObject({ standing, rules: [{ rule: "minutes", done: minutes, limit: 60, standing }] });
  });

  it("count an attempt against its rule once it is over", () => {
    const rules = { setAt, attempts: 2 };
    expect(attemptsAgainstRules({ attempts: [attempt(1)], stopRules: rules }, 3).standing).toBe("within");
    expect(attemptsAgainstRules({ attempts: [attempt(1), attempt(3)], stopRules: rules }).standing).toBe("reached");
  });

  it("stand as the rule does that is nearest to its limit", () => {
    const stopRules = { setAt, minutes: 60, attempts: 2 };
    expect(attemptsAgainstRules({ attempts: [attempt(50)], stopRules }).standing).toBe("near");
    expect(attemptsAgainstRules({ attempts: [attempt(1), attempt(1)], stopRules }).standing).toBe("reached");
  });

  it("never come further from a rule by more minutes", () => {
    const rank = { within: 0, near: 1, reached: 2 };
    const positive = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (before, more) => {
        const standing = (minutes: number) =>
          attemptsAgainstRules({ attempts: [attempt(minutes)], stopRules: { setAt, minutes: 45 } }).standing ??
          "within";
        return rank[standing(before + more)] >= rank[standing(before)];
      }),
    );
  });
});

describe("the minutes of an attempt", () => {
  it("are counted to a tenth, over midnight as well", () => {
    expect(minutesBetween("2026-03-12T23:59:00Z", "2026-03-13T00:11:33Z")).toBe(12.6);
  });

  it("are none where the clock was set back, and 600 at most, as the form takes them", () => {
    expect(minutesBetween("2026-03-12T09:00:00Z", "2026-03-12T08:00:00Z")).toBe(0);
    expect(minutesBetween("2026-03-12T09:00:00Z", "2026-03-14T09:00:00Z")).toBe(600);
  });
});

describe("stop rules", () => {
  it("stood first where they were set before the first attempt or before any", () => {
    expect(rulesStoodFirst({ attempts: [], stopRules: { setAt, minutes: 60 } })).toBe(true);
    expect(rulesStoodFirst({ attempts: [attempt(1)], stopRules: { setAt, other: "pain" } })).toBe(true);
    expect(rulesStoodFirst({ attempts: [] })).toBeUndefined();
  });

  it("are none while they are only begun", () => {
    expect(rulesStoodFirst({ attempts: [attempt(1)], stopRules: { setAt } })).toBeUndefined();
    expect(hasStopRule({ stopRules: { setAt } })).toBe(false);
    expect(hasStopRule({})).toBe(false);
    expect(hasStopRule({ stopRules: { setAt, wallLeftMm: 0.5 } })).toBe(true);
  });

  it("did not where an attempt was over or running by then", () => {
    const late = { setAt: "2026-03-12T09:30:00Z", minutes: 60 };
    expect(rulesStoodFirst({ attempts: [attempt(1)], stopRules: late })).toBe(false);
    expect(rulesStoodFirst({ attempts: [], stopRules: late }, { since: "2026-03-12T09:10:00Z" })).toBe(false);
  });
});
