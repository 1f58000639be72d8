import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { svgText } from "./svg-text.ts";
import { figureOf } from "./svg-tree.ts";
import { boxesMeet, labelBox, labelNode, type TextWeight, textWidth } from "./text-label.ts";

const fontFiles = ["Regular", "Medium", "SemiBold"].map((weight) => `data/fonts/Inter-${weight}.otf`);

describe("textWidth", () => {
  // The outside answer is the renderer's own box of the letters' ink; it lacks the side bearings and knows kerning.
  it.each([
    ["regular", "blocked: piece of an instrument"],
    ["medium", "MB1 19.2 mm"],
    ["semibold", "HOMOEOTIC 2-1-2"],
  ] as const)("agrees with the rendered width of %s", (weight: TextWeight, text) => {
    const label = labelNode({ text, x: 10, y: 60, size: 40, fill: "#000000", weight });
    const svg = svgText(figureOf({ width: 900, height: 100 }, 900, "Words.", [label]));
    const box = new Resvg(svg, { font: { fontFiles, loadSystemFonts: false } }).getBBox();
    const width = textWidth(text, 40, weight);
    expect(box?.width).toBeGreaterThan(width - 12);
    expect(box?.width).toBeLessThan(width + 2);
  });

  it("grows with the size and never guesses an unknown sign narrow", () => {
    expect(textWidth("MB", 20)).toBeCloseTo(2 * textWidth("MB", 10), 9);
    expect(textWidth("\u4e2d", 10)).toBe(9);
  });
});

describe("labelBox", () => {
  it("starts, centres or ends at its place", () => {
    const common = { text: "DB", x: 100, y: 50, size: 10, fill: "#000000" };
    const width = textWidth("DB", 10);
    expect(labelBox(common).left).toBe(100);
    expect(labelBox({ ...common, anchor: "middle" }).left).toBeCloseTo(100 - width / 2, 9);
    expect(labelBox({ ...common, anchor: "end" }).right).toBeCloseTo(100, 9);
  });

  it("meets another only where they share more than an edge", () => {
    const box = { left: 0, top: 0, right: 10, bottom: 10 };
    expect(boxesMeet(box, { ...box, left: 9, right: 20 })).toBe(true);
    expect(boxesMeet(box, { ...box, left: 10, right: 20 })).toBe(false);
  });
});
