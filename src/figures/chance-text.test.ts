import { describe, expect, it } from "vitest";
import { chanceColumn, chanceText, percentText } from "./chance-text.ts";

describe("percentText", () => {
  it.each([
    [0, "0"],
    [0.0004, "<0.1"],
    [0.007, "0.7"],
    [0.0994, "9.9"],
    [0.0996, "10"],
    [0.62, "62"],
    [0.99, "99"],
    [0.9964, "99.6"],
    [0.9999, ">99.9"],
    [1, "100"],
  ])("writes %d as %s %", (share, text) => {
    expect(percentText(share)).toBe(text);
  });

  it("never rounds a chance to certainty, and never puts a larger one before a smaller", () => {
    const shares = Array.from({ length: 9_999 }, (_, at) => (at + 1) / 10_000);
    const texts = shares.map(percentText);
    expect(texts.filter((text) => text === "0" || text === "100" || text === "0.0" || text === "100.0")).toEqual([]);
    const numbers = texts.filter((text) => !/[<>]/.test(text)).map(Number);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });
});

describe("a chance in words", () => {
  const chance = { mean: 0.62, interval: { low: 0.31, high: 0.88 } };
  it("has its interval, and goes without where none is known", () => {
    expect(chanceText(chance)).toBe("62 % (31 to 88 %)");
    expect(chanceColumn(chance)).toBe("62 % (31–88)");
    expect([chanceText({ mean: 0.62 }), chanceColumn({ mean: 0.62 })]).toEqual(["62 %", "62 %"]);
  });
});
