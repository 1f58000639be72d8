import { describe, expect, it } from "vitest";
import type { ToothView } from "../record/readings.ts";
import { readingsOf, toothInNotation } from "./tooth-words.ts";

const tooth = (twoDigit: string, universal: string, quadrant: string): ToothView => ({
  ...{ twoDigit, universal, quadrant, name: quadrant },
  ...{ dentition: "permanent", arch: "upper", side: "left", type: "molar" },
});
/** Some of the 52 of ISO 3950, by hand. */
const teeth = [
  tooth("14", "5", "upper right 4"),
  tooth("26", "14", "upper left 6"),
  tooth("35", "20", "lower left 5"),
  tooth("42", "26", "lower right 2"),
  tooth("46", "30", "lower right 6"),
  tooth("85", "T", "lower right E"),
];

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
