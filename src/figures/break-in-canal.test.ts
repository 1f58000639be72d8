import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BreakInCanal, breakInCanal } from "./break-in-canal.ts";
import type { CoursePoint } from "./drawn-course.ts";
import { expectClear } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";

const straight: CoursePoint[] = [0, 5, 10, 15].map((y) => [0, y]);
const given: BreakInCanal = {
  ...{ course: straight, tipDepthMm: 14, theme: "paper", widthPx: 440 },
  fragment: { mm: 3, low: 2.6, high: 3.4 },
  explanations: [
    { name: "bendingFatigue", words: "bending fatigue", mean: 5, sd: 0.7 },
    { name: "torsionalOverload", words: "torsional overload", mean: 2.5 },
    { name: "flawOrJoint", words: "flaw or joint" },
  ],
};
const drawn = (more: Partial<BreakInCanal> = {}): string => svgText(breakInCanal({ ...given, ...more }));
const heights = (text: string, part: string): number[] =>
  (new RegExp(`data-part="${part}" d="([^"]+)"`).exec(text)?.[1]?.match(/-?[\d.]+/g) ?? [])
    .map(Number)
    .filter((_, at) => at % 2 === 1);

describe("breakInCanal", () => {
  it("lays the piece from the tip's depth up, in the canal's own scale", () => {
    const text = drawn();
    const [course, piece] = [heights(text, "course"), heights(text, "piece")];
    const perMm = (Math.max(...course) - Math.min(...course)) / 15;
    expect((Math.max(...piece) - Math.min(...piece)) / perMm).toBeCloseTo(3, 2);
    expect((Math.max(...piece) - Math.min(...course)) / perMm).toBeCloseTo(14, 2);
  });

  it("marks where each explanation expects the break, and leaves out one that tells no place", () => {
    const text = drawn();
    expect(text).toMatch(/<circle [^>]*data-part="bendingFatigue"/);
    expect(text).toMatch(/<path [^>]*data-part="torsionalOverload"/);
    expect(text).not.toContain("flaw or joint</text>");
  });

  it("says the numbers in words, from the orifice", () => {
    expect(breakInCanal(given).alternative).toBe(
      "The break in its canal. The tip lay 14.0 mm from the orifice. The head of the piece lies 11.0 mm from the orifice (10.6 to 11.4). bending fatigue: expected 9.0 mm from the orifice, SD 0.7. torsional overload: expected 11.5 mm from the orifice. flaw or joint: expected anywhere.",
    );
    expect(breakInCanal({ ...given, fragment: undefined }).alternative).toContain("The piece was not measured.");
    expect(drawn({ fragment: undefined })).not.toContain('data-part="piece"');
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s wherever it broke", (theme) => {
    const mm = fc.double({ min: 0.2, max: 14, noNaN: true });
    fc.assert(
      fc.property(mm, mm, mm, (broke, one, other) => {
        const explanations = given.explanations.map((some, at) => ({ ...some, mean: [one, other][at], sd: 2 }));
        const fragment = { mm: broke, low: broke * 0.9, high: broke * 1.1 };
        expectClear(breakInCanal({ ...given, theme, fragment, explanations }));
      }),
      { numRuns: 30 },
    );
  });
});
