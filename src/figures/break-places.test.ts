import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BreakPlaces, breakPlaces } from "./break-places.ts";
import { expectClear } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";

const given: BreakPlaces = {
  ...{ workingMm: 16, lengthMm: 20, theme: "paper", widthPx: 640 },
  profile: [0, 16].map((atMm) => ({ atMm, diameterMm: 0.25 + 0.06 * atMm })),
  fragment: { mm: 3, low: 2.6, high: 3.4 },
  explanations: [
    ...([{ name: "bendingFatigue", words: "bending fatigue", mean: 5, sd: 0.7, posterior: { mean: 0.3 } }] as const),
    { name: "torsionalOverload", words: "torsional overload", mean: 2.5, sd: 0.7, posterior: { mean: 0.63 } },
    { name: "flawOrJoint", words: "flaw or joint", posterior: { mean: 0.07, interval: { low: 0.01, high: 0.16 } } },
  ],
};
const drawn = (more: Partial<BreakPlaces> = {}): string => svgText(breakPlaces({ ...given, ...more }));
const firstNumber = (text: string, pattern: string): number => Number(new RegExp(pattern).exec(text)?.[1]);

describe("breakPlaces", () => {
  it("draws break and expectations along the file by one ruler", () => {
    const text = drawn();
    const zero = firstNumber(text, 'data-part="ruler" d="M([\\d.]+)');
    const broke = firstNumber(text, 'data-part="broke" d="M([\\d.]+)');
    const bending = firstNumber(text, '<circle cx="([\\d.]+)"[^>]* data-part="bendingFatigue"');
    expect((bending - zero) / (broke - zero)).toBeCloseTo(5 / 3, 2);
    const band = /data-part="broke-between" x="([\d.]+)"[^>]* width="([\d.]+)"/.exec(text);
    expect(Number(band?.[2]) / (broke - zero)).toBeCloseTo(0.8 / 3, 2);
  });

  it("tells the explanations apart by shape; one without a place has no mark and is expected anywhere", () => {
    const text = drawn();
    expect(text).toMatch(/<circle [^>]*data-part="bendingFatigue"/);
    expect(text).toMatch(/<path [^>]*data-part="torsionalOverload"/);
    expect(text).not.toContain('data-part="flawOrJoint"');
    expect(text).toContain(">expected anywhere</text>");
  });

  it("draws the curve of places where it is given", () => {
    const places = [0, 8, 16].map((fromTipMm) => ({ fromTipMm, density: fromTipMm / 16 }));
    const [first, ...others] = given.explanations;
    const text = drawn({ explanations: first === undefined ? others : [{ ...first, places }, ...others] });
    const corners = (/data-part="expected" d="([^"]+)"/.exec(text)?.[1]?.match(/[ML]/g) ?? []).length;
    expect(corners).toBe(5);
  });

  it("says how many times as large as along it the widths of the file are drawn", () => {
    const text = drawn();
    expect(text).toContain(">widths drawn 3 times as large</text>");
    const corners = [...(/data-part="file" d="([^"]+)"/.exec(text)?.[1] ?? "").matchAll(/([\d.]+) ([\d.]+)/g)];
    const [from, to] = [corners[0], corners.at(-1)].map((spot) => Number(spot?.[2]));
    const along = Number(corners[1]?.[1]) - Number(corners[0]?.[1]);
    // 0.25 mm at the tip against 16 mm from tip to shaft.
    expect(((to ?? 0) - (from ?? 0)) / along).toBeCloseTo((3 * 0.25) / 16, 3);
  });

  it("says that a piece was not measured", () => {
    expect(drawn({ fragment: undefined })).toContain(">the piece was not measured</text>");
    expect(drawn({ fragment: undefined })).not.toContain('data-part="broke"');
  });

  it("says the numbers in words", () => {
    expect(breakPlaces(given).alternative).toBe(
      "Where each explanation expects the break, along 16 mm of the instrument, 20 mm to the handle. It broke at 3.0 mm (2.6 to 3.4) from the tip. bending fatigue: expected at 5.0 mm, SD 0.7; 30 %. torsional overload: expected at 2.5 mm, SD 0.7; 63 %. flaw or joint: expected anywhere; 7.0 % (1.0 to 16 %).",
    );
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s for any break", (theme) => {
    const mm = fc.double({ min: 0.1, max: 16, noNaN: true });
    fc.assert(
      fc.property(mm, mm, fc.constantFrom(undefined, 17, 31), (broke, mean, lengthMm) => {
        const [first, ...others] = given.explanations;
        const explanations = first === undefined ? others : [{ ...first, mean, sd: 4 }, ...others];
        const fragment = { mm: broke, low: broke * 0.8, high: broke * 1.2 };
        expectClear(breakPlaces({ ...given, theme, fragment, explanations, lengthMm }));
      }),
      { numRuns: 30 },
    );
  });
});
