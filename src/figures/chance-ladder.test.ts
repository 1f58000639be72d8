import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChanceLadder, chanceLadder } from "./chance-ladder.ts";
import { svgText } from "./svg-text.ts";
import { themes } from "./theme.ts";

const rungs: ChanceLadder["rungs"] = [
  { label: "Beforehand", says: "8 series", chance: { mean: 0.5, interval: { low: 0.25, high: 0.75 } } },
  { label: "Straight film, not seen", says: "LR 0.91", chance: { mean: 0.4, interval: { low: 0.2, high: 0.7 } } },
  { label: "Dye, not found", says: "its accuracy is not known" },
  { label: "CBCT, not seen", says: "LR 0.08", chance: { mean: 0.07, interval: { low: 0.01, high: 0.3 } } },
];
const given: ChanceLadder = { that: "a third root is there", rungs, theme: "paper", widthPx: 480 };
const drawn = (more: Partial<ChanceLadder> = {}): string => svgText(chanceLadder({ ...given, ...more }));
const count = (text: string, part: string): number => text.split(`data-part="${part}"`).length - 1;

describe("chanceLadder", () => {
  it("tells by shape what was known beforehand, each step, and where it stands now", () => {
    const text = drawn();
    expect(["beforehand", "step", "now", "interval", "way"].map((part) => count(text, part))).toEqual([1, 1, 1, 3, 1]);
    expect(text).toMatch(new RegExp(`data-part="now"[^>]* fill="${themes.paper.ink}"`));
    expect(text).toMatch(new RegExp(`data-part="step"[^>]* fill="${themes.paper.surface}"`));
  });

  it("writes a step that was not reckoned in, and draws no dot for it", () => {
    expect(drawn()).toContain(">not reckoned in</text>");
    expect(drawn({ rungs: rungs.slice(0, 2) })).not.toContain("not reckoned in");
  });

  it("says the same in words, row by row", () => {
    expect(chanceLadder(given).alternative).toBe(
      "Chance that a third root is there, step by step. Beforehand, 8 series; 50 % (25 to 75 %). Straight film, not seen, LR 0.91; 40 % (20 to 70 %). Dye, not found, its accuracy is not known; not reckoned in. CBCT, not seen, LR 0.08; 7.0 % (1.0 to 30 %).",
    );
  });

  it("puts half of 0 to 100 % in the middle, and steps evenly across", () => {
    const at = (mean: number): number => {
      const [, x = ""] =
        /cx="([\d.]+)"/.exec(drawn({ rungs: [...rungs.slice(0, 1), { label: "x", chance: { mean } }] })) ?? [];
      return Number(x);
    };
    const [none, quarter, half, all] = [at(0), at(0.25), at(0.5), at(1)];
    expect(half).toBeCloseTo((none + all) / 2, 1);
    expect(quarter).toBeCloseTo((none + half) / 2, 1);
  });

  it("draws no interval where none is known, and no way from a single rung, which then is full", () => {
    const text = drawn({ rungs: [{ label: "Beforehand", chance: { mean: 0.3 } }] });
    expect([count(text, "interval"), count(text, "way"), count(text, "beforehand")]).toEqual([0, 0, 1]);
    expect(text).toMatch(new RegExp(`data-part="beforehand"[^>]* fill="${themes.paper.ink}"`));
    expect(text).toContain(">30 %</text>");
  });

  it("breaks long names over lines instead of running into the plot, larger letters sooner", () => {
    const long = [{ label: "A persistent lesion round one root only: yes", says: "", chance: { mean: 0.3 } }];
    expect(drawn({ rungs: long }).match(/font-weight="500"/g)).toHaveLength(2);
    expect(drawn({ rungs: long, letters: 1.5 }).match(/font-weight="500"/g)).toHaveLength(3);
  });

  it.each(["paper", "dark", "print"] as const)("takes the colours of %s alone", (theme) => {
    const colours = [...drawn({ theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(colours.filter((colour) => !Object.values<string>({ ...themes[theme] }).includes(colour))).toEqual([]);
  });

  it("keeps every dot inside the quarters for any ladder, and never writes a number that is none", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const rung = fc.tuple(share, share, fc.boolean()).map(([a, b, known]) => ({
      label: "Angled film, not seen",
      ...(known ? { chance: { mean: (a + b) / 2, interval: { low: Math.min(a, b), high: Math.max(a, b) } } } : {}),
    }));
    fc.assert(
      fc.property(fc.array(rung, { minLength: 1, maxLength: 9 }), fc.constantFrom(1, 1.5), (some, letters) => {
        const text = drawn({ rungs: some, letters });
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        const quarters = [...text.matchAll(/<path d="M([\d.]+) 4V/g)].map(([, x]) => Number(x));
        for (const [, x] of text.matchAll(/cx="([\d.]+)"/g))
          expect(Number(x) >= Math.min(...quarters) - 0.1 && Number(x) <= Math.max(...quarters) + 0.1).toBe(true);
        expect(text.match(/data-part="(step|now|beforehand)"/g)?.length ?? 0).toBe(
          some.filter((one) => "chance" in one).length,
        );
      }),
      { numRuns: 40 },
    );
  });
});
