import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { svgText } from "./svg-text.ts";
import { type TubeShiftChart, tubeShiftChart } from "./tube-shift-chart.ts";

const candidates = [-30, -20, -10, 10, 20, 30].map((angleDeg) => ({
  angleDeg,
  halfWidthDeg: 300 / Math.abs(angleDeg),
  settles: Math.abs(angleDeg) >= 20,
}));
const drawn = (more: Partial<TubeShiftChart> = {}) =>
  tubeShiftChart({ candidates, atHandDeg: [0], recommendedDeg: 20, theme: "dark", widthPx: 400, ...more });
const count = (text: string, part: string): number => text.split(`data-part="${part}"`).length - 1;

describe("tubeShiftChart", () => {
  it("tells shifts that settle it from those that do not by their shape, and marks the one to choose", () => {
    const text = svgText(drawn());
    expect([count(text, "settles"), count(text, "open"), count(text, "recommended")]).toEqual([4, 2, 1]);
    expect(text).toContain(">20° from mesial</text>");
    expect(text).toContain(">at hand</text>");
  });

  it("says the same in words", () => {
    expect(drawn().alternative).toBe(
      "Which tube shift would show the hidden bend. The least that settles it is 20° from mesial. Films at hand: straight on. Expected by shift: 30° from distal: ±10°, settles it; 20° from distal: ±15°, settles it; 10° from distal: ±30°; 10° from mesial: ±30°; 20° from mesial: ±15°, settles it; 30° from mesial: ±10°, settles it.",
    );
    expect(drawn({ recommendedDeg: undefined }).alternative).toContain("No shift settles it.");
    expect(count(svgText(drawn({ recommendedDeg: undefined })), "recommended")).toBe(0);
  });

  it("puts distal to the left and mesial to the right, and shades where neighbours lie over", () => {
    const text = svgText(
      drawn({
        overlaps: [
          { fromDeg: 30, towards: "mesial" },
          { fromDeg: 20, towards: "distal" },
        ],
      }),
    );
    const boxes = [...text.matchAll(/data-part="overlap" x="([\d.]+)" y="44" width="([\d.]+)"/g)].map(
      ([, x, width]) => [Number(x), Number(width)],
    );
    // 350 units for 80 degrees from 38 on: 30 to mesial begins at 38 + 70 x 4.375, 20 to distal ends at 38 + 20 x 4.375.
    expect(boxes).toEqual([
      [344.25, 43.75],
      [38, 87.5],
    ]);
  });

  it("does not join shifts across a film at hand", () => {
    const near = [-5, 5, 10].map((angleDeg) => ({ angleDeg, halfWidthDeg: 20, settles: false }));
    const lines = svgText(drawn({ candidates: near })).match(/stroke-width="1.6"/g);
    expect(lines).toHaveLength(1);
  });

  it("keeps every shift inside its frame, and writes no number that is none", () => {
    const one = fc.record({
      angleDeg: fc.integer({ min: -40, max: 40 }),
      halfWidthDeg: fc.double({ min: 0, max: 90, noNaN: true }),
      settles: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(one, { maxLength: 17 }),
        fc.option(fc.integer({ min: -40, max: 40 }), { nil: undefined }),
        (some, recommendedDeg) => {
          const text = svgText(drawn({ candidates: some, recommendedDeg }));
          expect(text).not.toMatch(/NaN|Infinity|undefined/);
          for (const [, x, y] of text.matchAll(/cx="([-\d.]+)" cy="([-\d.]+)"/g))
            expect(Number(x) >= 37.9 && Number(x) <= 388.1 && Number(y) >= 43.9 && Number(y) <= 176.1).toBe(true);
        },
      ),
    );
  });
});
