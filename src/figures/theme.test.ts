import { describe, expect, it } from "vitest";
import { themes } from "./theme.ts";

/** Relative luminance and contrast as WCAG 2.2 defines them. */
const channel = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const luminance = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    channel(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
const contrast = (a: string, b: string): number => {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((one, other) => other - one);
  return (light + 0.05) / (dark + 0.05);
};

describe("themes", () => {
  it("agree with known contrasts", () => {
    // WCAG 2.2: black on white is 21:1; #767676 on white is the well-known 4.54:1.
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });

  for (const [name, theme] of Object.entries(themes))
    it(`${name}: words have at least 4.5:1 on each ground`, () => {
      for (const ground of [theme.ground, theme.surface])
        for (const word of [theme.ink, theme.quiet, theme.accent, theme.course])
          expect(contrast(word, ground)).toBeGreaterThanOrEqual(4.5);
    });
});
