import { describe, expect, it } from "vitest";
import { attemptsAgainstRules } from "../../../../record/attempts-against-rules.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { clockInWords, minutesInWords, ruleInWords, rulesAloud } from "./clock-in-words.ts";

const since = "2026-03-12T09:00:00Z";
const shown = (seconds: number) => clockInWords(since, Date.parse(since) + seconds * 1000);
const attempt = (minutes: number): BodyOf<"removal">["attempts"][number] => ({
  ...{ at: since, minutes, tool: "ultrasonicTip", tip: "", moved: "nothing", note: "" },
});

describe("the clock of an attempt", () => {
  it("shows minutes and seconds, and goes on counting minutes after an hour", () => {
    expect([shown(0), shown(7.9), shown(187), shown(4500)]).toEqual(["0:00", "0:07", "3:07", "75:00"]);
  });

  it("shows nothing less than nothing where the machine's clock was set back", () => {
    expect(shown(-90)).toBe("0:00");
  });

  it("writes minutes with a tenth only where there is one", () => {
    expect([minutesInWords(12), minutesInWords(12.5)]).toEqual(
      ["12\u202fmin", "12.5\u202fmin"].map((one) => one.replace("\u202f", " ")),
    );
  });
});

describe("a stop rule in words", () => {
  const rules = (minutes: number, more = {}) =>
    attemptsAgainstRules({ attempts: [attempt(minutes)], stopRules: { setAt: since, minutes: 60, ...more } });

  it("says how much of it is used and what it says now", () => {
    const says = [12, 48, 61.5].flatMap((minutes) => rules(minutes).rules.map(ruleInWords));
    expect(says).toEqual([
      "12 of 60 min: below your rule",
      "48 of 60 min: near your rule; decide now how you stop",
      "61.5 of 60 min: your rule is reached; it says stop",
    ]);
  });

  it("counts attempts as attempts", () => {
    expect(rules(1, { attempts: 1 }).rules.map(ruleInWords)[1]).toBe(
      "1 of 1 attempt: your rule is reached; it says stop",
    );
  });

  it("is said aloud once it is near, and not before", () => {
    expect(rulesAloud(rules(12))).toBe("");
    expect(rulesAloud(rules(50))).toBe("Stop rule: 50 of 60 min: near your rule; decide now how you stop");
  });
});
