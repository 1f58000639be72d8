import { describe, expect, it } from "vitest";
import { teeth } from "../../core/tooth/teeth.ts";
import { readingsOf, toothInNotation } from "./tooth-words.ts";

const read = (text: string, own: "twoDigit" | "universal" | "quadrant" = "twoDigit") =>
  readingsOf(text, teeth, own).map(({ notation, tooth }) => `${notation} ${tooth.twoDigit}`);

describe("a tooth as it is written", () => {
  it("is read in the person's notation first, and in every other that knows it", () => {
    expect(read("14")).toEqual(["twoDigit 14", "universal 26"]);
    expect(read("14", "universal")).toEqual(["universal 26", "twoDigit 14"]);
    expect(read("26")).toEqual(["twoDigit 26", "universal 42"]);
    expect(read("46")).toEqual(["twoDigit 46"]);
    expect(read("T")).toEqual(["universal 85"]);
    expect(read(" Lower  LEFT 5 ")).toEqual(["quadrant 35"]);
  });

  it.each(["49", "56", "90", "t", "upper left 9", "x"])("%s is none", (text) => {
    expect(read(text)).toEqual([]);
  });

  it("is shown in the person's notation, and by its number while the list is not there", () => {
    expect(toothInNotation("26", teeth, "universal")).toBe("14");
    expect(toothInNotation("26", undefined, "universal")).toBe("26");
  });
});
