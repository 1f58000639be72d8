import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ratioFigure, timesText } from "./times-text.ts";

describe("ratioFigure", () => {
  it.each([
    [0, "0"],
    [0.1414, "0.14"],
    [1, "1"],
    [1.42, "1.4"],
    [12.4, "12"],
    [338, "340"],
    [1_234, "1,200"],
    [15_400, "15,000"],
    [0.000_012, "1.2 x 10^-5"],
  ])("writes %f as %s", (ratio, text) => expect(ratioFigure(ratio)).toBe(text));

  it("never rounds onto 1 what is not 1", () => {
    expect(ratioFigure(0.999)).toBe("just under 1");
    expect(ratioFigure(1.001)).toBe("just over 1");
  });

  it("stays within a twentieth of what it writes", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e6, noNaN: true }), (ratio) => {
        const text = ratioFigure(ratio);
        const read = text.startsWith("just") ? 1 : Number(text.replaceAll(",", ""));
        expect(Math.abs(read / ratio - 1)).toBeLessThan(0.051);
      }),
    );
  });
});

describe("timesText", () => {
  it.each([
    [0, "nothing of"],
    [1.4, "1.4 times"],
    [1, "at"],
    [1.01, "just above"],
    [0.99, "just below"],
    [0.1408, "7.1 times below"],
    [1 / 2.1875, "2.2 times below"],
  ])("says %f as %s", (ratio, text) => expect(timesText(ratio)).toBe(text));
});
