import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CoursePoint } from "./drawn-course.ts";
import { expectClear } from "./drawn-for-tests.ts";
import { type SightLine, sightLine } from "./sight-line.ts";
import { svgText } from "./svg-text.ts";

/** An arc of radius 10 mm by 60 degrees: its chord is 10 mm and leaves it by 10 (1 - cos 30 degrees) = 1.34 mm. */
const arc: CoursePoint[] = Array.from({ length: 31 }, (_, at) => {
  const turn = (at * Math.PI) / 90;
  return [10 * (1 - Math.cos(turn)), 10 * Math.sin(turn)];
});
const length = (10 * Math.PI) / 3;
const given: SightLine = {
  ...{ course: arc, headDepthMm: length, maxOffset: { mm: 1.34, atMm: length / 2 }, theme: "paper", widthPx: 440 },
  walls: [
    { side: "furcation", toCutMm: 0.9, leftMm: 0.3 },
    { side: "distal", toCutMm: 0.1 },
  ],
};
const drawn = (more: Partial<SightLine> = {}): string => svgText(sightLine({ ...given, ...more }));
const numbers = (text: string, part: string): number[] =>
  (new RegExp(`data-part="${part}" d="([^"]+)"`).exec(text)?.[1]?.match(/-?[\d.]+/g) ?? []).map(Number);
const lengthOf = ([x = 0, y = 0, u = 0, v = 0]: number[]): number => Math.hypot(u - x, v - y);

describe("sightLine", () => {
  it("draws the distance of an arc from its chord as long as geometry has it", () => {
    const text = drawn();
    expect(lengthOf(numbers(text, "offset")) / lengthOf(numbers(text, "sight"))).toBeCloseTo(1.3397 / 10, 2);
  });

  it("moves the orifice away from the inner wall, so that the line comes nearer to the canal", () => {
    const ratio = (text: string) => lengthOf(numbers(text, "offset")) / lengthOf(numbers(text, "sight"));
    expect(ratio(drawn({ orificeShiftMm: 1 }))).toBeLessThan(ratio(drawn()));
  });

  it("says the numbers in words, walls beyond the root and walls not known among them", () => {
    expect(sightLine({ ...given, verdict: "refused: below the limit of 0.5 mm" }).alternative).toBe(
      "Straight line from the orifice to the head of the piece, 10.5 mm deep. The orifice is not moved. The canal lies at most 1.34 mm off the line, 5.2 mm from the orifice. Walls: furcation: 0.9 mm to cut, 0.3 mm left; distal: 0.1 mm to cut, wall not known. refused: below the limit of 0.5 mm.",
    );
    const through = { ...given, walls: [{ side: "furcation", toCutMm: 1.2, leftMm: -0.2 }] };
    expect(sightLine(through).alternative).toContain("0.2 mm beyond the root");
    expect(sightLine({ ...given, orificeShiftMm: 0.5 }).alternative).toContain("moved 0.5 mm away from the inner wall");
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s wherever the head lies", (theme) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: length, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (head, share) => {
          const maxOffset = { mm: 0.4, atMm: head * share };
          expectClear(sightLine({ ...given, theme, headDepthMm: head, maxOffset, orificeShiftMm: 1 }));
        },
      ),
      { numRuns: 30 },
    );
  });
});
