import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type StrainAlong, strainAlong } from "./strain-along.ts";
import { svgText } from "./svg-text.ts";

const profile = [0, 4, 8, 16].map((fromTipMm) => ({ fromTipMm, strain: fromTipMm === 4 ? 0.043 : 0.01 }));
const given: StrainAlong = {
  profile,
  peak: { fromTipMm: 4, strain: 0.043, interval: { low: 0.041, high: 0.045 } },
  theme: "paper",
  widthPx: 480,
};
const drawn = (more: Partial<StrainAlong> = {}): string => svgText(strainAlong({ ...given, ...more }));
const numbersOf = (text: string, part: string): number[] =>
  (new RegExp(`data-part="${part}" d="([^"]+)"`).exec(text)?.[1]?.match(/-?[\d.]+/g) ?? []).map(Number);

describe("strainAlong", () => {
  it("names the largest strain with its interval and its place", () => {
    expect(drawn()).toContain(">most 4.3 % (4.1 to 4.5 %), 4.0 mm from the tip</text>");
    expect(strainAlong(given).alternative).toBe(
      "Strain along 16.0 mm of the file. Most 4.3 % (4.1 to 4.5 %), 4.0 mm from the tip. All of it lies below 10 %.",
    );
  });

  it("says that a straight canal does not bend it, and marks nothing", () => {
    const flat = { profile: profile.map((one) => ({ ...one, strain: 0 })), peak: undefined };
    expect(strainAlong({ ...given, ...flat }).alternative).toContain("The canal is straight there");
    expect(drawn(flat)).not.toContain('data-part="peak"');
  });

  it("has the line of 10 % where it is asked for or near, at the height of ten", () => {
    expect(drawn()).not.toContain('data-part="tenPercent"');
    expect(drawn({ profile: profile.map((one) => ({ ...one, strain: 0.08 })) })).toContain('data-part="tenPercent"');
    const text = drawn({ tenPercent: true });
    const [, y] = numbersOf(text, "tenPercent");
    const ten = Number(/y="([\d.]+)"[^>]*>10<\/text>/.exec(text)?.[1]);
    // The number's baseline lies 4 below the middle of its line.
    expect(y).toBeCloseTo(ten - 4, 1);
  });

  it("says where a part lies over 10 %", () => {
    const over = profile.map((one) => ({ ...one, strain: 0.12 }));
    expect(strainAlong({ ...given, profile: over }).alternative).toContain("A part of it lies over 10 %.");
  });

  it("shows a place that is pointed at, on the curve", () => {
    expect(drawn()).not.toContain('data-part="place"');
    const text = drawn({ placeMm: 4 });
    const [x, top = 0] = numbersOf(text, "place");
    const cx = Number(/data-part="peak" cx="([\d.]+)" cy="([\d.]+)"/.exec(text)?.[1]);
    const cy = Number(/data-part="peak" cx="([\d.]+)" cy="([\d.]+)"/.exec(text)?.[2]);
    expect([x, top + 6]).toEqual([cx, expect.closeTo(cy, 1)]);
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s for any profile", (theme) => {
    const strains = fc.array(fc.double({ min: 0, max: 0.4, noNaN: true }), { minLength: 2, maxLength: 24 });
    fc.assert(
      fc.property(strains, fc.boolean(), (all, tenPercent) => {
        const some = all.map((strain, at) => ({ fromTipMm: at * 0.7, strain }));
        const peak = some.reduce((most, one) => (one.strain > most.strain ? one : most));
        expectClear(strainAlong({ profile: some, peak, tenPercent, theme, widthPx: 480, placeMm: 1 }));
      }),
      { numRuns: 40 },
    );
  });
});
