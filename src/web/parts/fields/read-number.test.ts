import { describe, expect, it } from "vitest";
import { readNumber } from "./number-field.tsx";

describe("a typed number", () => {
  it.each([
    ["19.5", 19.5],
    ["19,5", 19.5],
    [" 20 ", 20],
    ["\u22120.5", -0.5],
    ["-1.25", -1.25],
    [".06", 0.06],
    ["3.", 3],
  ])("%s is %d", (text, value) => {
    expect(readNumber(text, {}, false)).toEqual({ value });
  });

  it("is absent where nothing is typed, and a fault where one is needed", () => {
    expect(readNumber("", {}, false)).toEqual({});
    expect(readNumber("", {}, true).fault).toBe("a number is needed here");
  });

  it.each(["11x", "1 2", "1e3", "--1", "."])("%s is refused", (text) => {
    expect(readNumber(text, {}, false).fault).toContain(text);
  });

  it("can be a word that stands for a value", () => {
    expect(readNumber("x", { x: "notDone" }, true)).toEqual({ value: "notDone" });
    expect(readNumber("N", { n: "none" }, true)).toEqual({ value: "none" });
  });
});
