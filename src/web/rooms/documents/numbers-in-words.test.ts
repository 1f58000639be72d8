import { describe, expect, it } from "vitest";
import { numbersInWords } from "./numbers-in-words.ts";

const number = (path: string, text: string) => ({ ledgerEntry: "e", path, text });

describe("the numbers of a document", () => {
  it("stand with their intervals, each named once", () => {
    const numbers = [
      ...[number("pruettDeg", "35"), number("intervals.pruettDeg.low", "29"), number("intervals.pruettDeg.high", "46")],
      ...[number("lengthMm", "12.0"), number("pruettDeg", "35")],
    ];
    expect(numbersInWords(numbers, "curvature")).toEqual([
      "Largest bend 35° (29 to 46)",
      "Length of the course 12.0\u202fmm",
    ]);
  });

  it("are never called by the field of the record", () => {
    expect(numbersInWords([number("relativeSigma", "0.011")], "calibrate")).toEqual(["Error of the scale 0.011"]);
  });

  it("are named by their place where nothing else is known", () => {
    expect(numbersInWords([number("roots[0].sequence", "2-1")], undefined)).toEqual([
      "Canals from orifice to foramen, root 1: 2-1",
    ]);
  });
});
