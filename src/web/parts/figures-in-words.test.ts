import { describe, expect, it } from "vitest";
import {
  bytesInWords,
  countOf,
  decimalsFor,
  intervalInWords,
  leftInNumbers,
  numberInWords,
  quantityInWords,
} from "./figures-in-words.ts";

const thin = "\u202f";

describe("numbers in words", () => {
  it("take as many decimals as the half-width of their interval deserves", () => {
    expect(quantityInWords(19.2345, "mm", { low: 18.9, high: 19.5 })).toBe(`19.2${thin}mm`);
    expect(quantityInWords(38.71, "°", { low: 34.2, high: 44.1 })).toBe("39°");
    expect(quantityInWords(0.04761, "mm/px", { low: 0.0473, high: 0.0479 })).toBe(`0.0476${thin}mm/px`);
    expect(decimalsFor(5, { low: 4.9, high: 5.1 })).toBe(1);
  });

  it("have three figures where there is no interval", () => {
    expect(quantityInWords(21.5238, "mm")).toBe(`21.5${thin}mm`);
    expect(quantityInWords(0.00123456, "")).toBe("0.0012");
    expect(quantityInWords(0.5, "mm")).toBe(`0.5${thin}mm`);
    expect(quantityInWords(0, "mm")).toBe(`0${thin}mm`);
    expect(quantityInWords(1234.5, "")).toBe("1235");
  });

  it("of what is left are never rounded up", () => {
    expect([1.96, 2, 2.9999, 0.3, 11.11].map((left) => leftInNumbers(left, 1))).toEqual([
      ...["1.9", "2.0", "2.9", "0.3", "11.1"],
    ]);
  });

  it("carry a real minus sign, never before a zero", () => {
    expect(numberInWords(-1.25, 1)).toBe("\u22121.3");
    expect(numberInWords(-0.04, 1)).toBe("0.0");
  });

  it("part thousands only where there are five digits", () => {
    expect(numberInWords(9_999, 0)).toBe("9999");
    expect(numberInWords(10_000, 0)).toBe(`10${thin}000`);
    expect(numberInWords(1_234_567.5, 1)).toBe(`1${thin}234${thin}567.5`);
  });

  it("write an interval with a dash, or with a word where an end is negative", () => {
    expect(intervalInWords({ low: 18.92, high: 19.48 })).toBe("18.9\u201319.5");
    expect(intervalInWords({ low: -0.3, high: 0.5 })).toBe("\u22120.3 to 0.5");
  });

  it("say counts and sizes", () => {
    expect(countOf(1, "case")).toBe("1 case");
    expect(countOf(243, "case")).toBe("243 cases");
    expect(bytesInWords(3_500_000)).toBe(`3.5${thin}MB`);
    expect(bytesInWords(84_200)).toBe(`84${thin}kB`);
  });
});
