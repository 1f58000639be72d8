import { describe, expect, it } from "vitest";
import { differenceScale, greyOfDifference } from "./difference-scale.ts";
import { svgText } from "./svg-text.ts";

describe("the grey of a difference", () => {
  // Rule C7 of docs/methods/compare-films: nothing up to 2 sigma, black or white from 8 sigma on, straight between.
  it.each([
    [0, 128],
    [0.02, 128],
    [-0.02, 128],
    [0.05, 192],
    [-0.05, 64],
    [0.08, 255],
    [-0.08, 1],
    [0.5, 255],
  ])("of %d at a sigma of 0.01 is %d", (difference, grey) => {
    expect(greyOfDifference(difference, 0.01)).toBe(grey);
  });

  it("depends on the difference in sigmas alone, and turns with its sign (property)", () => {
    for (const [difference, sigma] of [
      [0.031, 0.01],
      [0.062, 0.02],
      [0.0031, 0.001],
    ] as const) {
      expect(greyOfDifference(difference, sigma)).toBe(greyOfDifference(0.031, 0.01));
      expect(greyOfDifference(difference, sigma) - 128).toBe(128 - greyOfDifference(-difference, sigma));
    }
  });
});

describe("the scale of a difference picture", () => {
  it.each(["dark", "paper", "print"] as const)("names its ends and the band of noise on %s", (theme) => {
    const figure = differenceScale({ sigma: 0.0125, theme, widthPx: 480 });
    const text = svgText(figure);
    for (const words of ["−10 %", "−2.5 %", "+2.5 %", "+10 %", "less mineral", "more mineral", "not told from noise"])
      expect(text).toContain(words);
    expect(figure.alternative).toContain("within 2.5 % of the full range");
    expect(figure.heightPx).toBe(74);
  });

  it("draws what the picture draws: black, middle and white in their places", () => {
    const text = svgText(differenceScale({ sigma: 0.02, theme: "dark", widthPx: 480 }));
    const greys = [...text.matchAll(/rgb\((\d+),/g)].map(([, grey]) => Number(grey));
    expect(greys).toHaveLength(96);
    expect(greys.filter((grey) => grey === 128)).toHaveLength(24);
    expect(greys[0]).toBeLessThan(5);
    expect(greys.at(-1)).toBeGreaterThan(252);
    expect([...greys].sort((a, b) => a - b)).toEqual(greys);
  });
});
