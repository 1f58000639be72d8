import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type PlatformSection, platformSection } from "./platform-section.ts";
import { svgText } from "./svg-text.ts";

const given: PlatformSection = {
  ...{ canalMm: 0.6, platformMm: 1.2, offCentreMm: 0.1, theme: "paper", widthPx: 480 },
  walls: [
    { side: "mesial", mm: 1.3, left: 1 },
    { side: "furcation", mm: 1, left: 0.6 },
  ],
  limits: [
    { mm: 1, words: "recommended from here on" },
    { mm: 0.3, words: "critical below" },
  ],
};
const drawn = (more: Partial<PlatformSection> = {}): string => svgText(platformSection({ ...given, ...more }));
const circle = (text: string, part: string) => {
  const [, cx, cy, r] = new RegExp(`data-part="${part}" cx="([\\d.]+)" cy="([\\d.]+)" r="([\\d.]+)"`).exec(text) ?? [];
  return { x: Number(cx), y: Number(cy), r: Number(r) };
};

describe("platformSection", () => {
  it("draws platform and canal by one scale, the platform off the centre towards the thinnest wall", () => {
    const [platform, canal] = [circle(drawn(), "platform"), circle(drawn(), "canal")];
    expect(platform.r / canal.r).toBeCloseTo(2, 2);
    // The furcation stands where distal is free, to the right; 0.1 mm is a third of the canal's radius.
    expect((platform.x - canal.x) / canal.r).toBeCloseTo(1 / 3, 1);
    expect(platform.y).toBe(canal.y);
  });

  it("names the thinnest wall at the line, and all of them in the list, the furcation's first", () => {
    const text = drawn();
    expect(text).toContain(">furcation 0.60</text>");
    expect(text.indexOf(">furcation: 1.00 mm</text>")).toBeLessThan(text.indexOf(">mesial: 1.30 mm</text>"));
    expect(text.split('data-part="wall"').length - 1).toBe(1);
  });

  it("dashes a root of which not all four sides are known, and draws none where no wall is", () => {
    expect(drawn()).toMatch(/data-part="root"[^>]*stroke-dasharray/);
    const sides = ["buccal", "lingual", "mesial", "distal"] as const;
    expect(drawn({ walls: sides.map((side) => ({ side, mm: 1, left: 0.5 })) })).not.toMatch(
      /data-part="root"[^>]*dasharray/,
    );
    const none = drawn({ walls: [] });
    expect(none).not.toContain('data-part="root"');
    expect(none).toContain(">no wall is known</text>");
  });

  it("says the numbers in words, a wall that is cut through among them", () => {
    expect(platformSection(given).alternative).toBe(
      "Platform of 1.20 mm around a canal of 0.60 mm, 0.10 mm off its centre. Walls: mesial 1.30 mm, 1.00 mm left; furcation 1.00 mm, 0.60 mm left. Limits: 1 mm: recommended from here on; 0.3 mm: critical below.",
    );
    const through = { ...given, walls: [{ side: "distal" as const, mm: 0.3, left: -0.05 }] };
    expect(platformSection(through).alternative).toContain("0.05 mm beyond the root");
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s for any walls and limits", (theme) => {
    const mm = fc.double({ min: 0.1, max: 3, noNaN: true });
    const wall = fc.record({ mm, left: fc.double({ min: -1, max: 3, noNaN: true }) });
    const sides = ["furcation", "mesial", "distal", "buccal", "lingual"] as const;
    fc.assert(
      fc.property(fc.array(wall, { maxLength: 5 }), fc.array(mm, { maxLength: 4 }), (walls, limits) => {
        const figure = platformSection({
          ...{ ...given, theme, walls: walls.map((one, at) => ({ ...one, side: sides[at] ?? "buccal" })) },
          limits: limits.map((one) => ({ mm: one, words: "a limit that some series gave, from memory" })),
        });
        expectClear(figure);
      }),
      { numRuns: 40 },
    );
  });
});
