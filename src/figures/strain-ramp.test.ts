import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { strainColour, strainStep, strainStretches, strainText } from "./strain-ramp.ts";
import { themes } from "./theme.ts";

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (a: string, b: string): number => {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
};
const one = [0.005, 0.02, 0.04, 0.08, 0.2];

describe("the ramp of strain", () => {
  it("has its steps at 1, 2.5, 5 and 10 %, each beginning at its end", () => {
    expect([0, 0.0099, 0.01, 0.0249, 0.025, 0.05, 0.0999, 0.1, 1].map(strainStep)).toEqual([0, 0, 1, 1, 2, 3, 3, 4, 4]);
    expect(strainText(0.043)).toBe("4.3 %");
  });

  it.each(["paper", "print", "dark"] as const)("stands out on %s by 3 to 1 at every step (WCAG 1.4.11)", (name) => {
    for (const strain of one) expect(contrast(strainColour(strain, name), themes[name].surface)).toBeGreaterThan(3);
  });

  it.each([
    ["paper", -1],
    ["dark", 1],
    ["film", 1],
  ] as const)("runs in lightness from step to step on %s, so that it reads without hue", (name, way) => {
    const all = one.map((strain) => way * luminance(strainColour(strain, name)));
    all.slice(1).forEach((light, at) => {
      expect(light).toBeGreaterThan(all[at] ?? 0);
    });
  });

  it("cuts a profile where its strain passes from step to step", () => {
    const line = [0, 0.1].map((strain, at) => ({ fromTipMm: 10 * at, strain }));
    expect(
      strainStretches(line).map(({ fromMm, toMm, step }) => [fromMm, toMm, step].map((one) => Number(one.toFixed(9)))),
    ).toEqual([
      [0, 1, 0],
      [1, 2.5, 1],
      [2.5, 5, 2],
      [5, 10, 3],
    ]);
  });

  it("covers any profile from its tip to its end without a gap, each stretch unlike its neighbour", () => {
    const strains = fc.array(fc.double({ min: 0, max: 0.3, noNaN: true }), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(strains, (all) => {
        const found = strainStretches(all.map((strain, at) => ({ fromTipMm: at, strain })));
        expect(found[0]?.fromMm).toBe(0);
        expect(found.at(-1)?.toMm).toBe(all.length - 1);
        found.slice(1).forEach((stretch, at) => {
          expect(stretch.fromMm).toBeCloseTo(found[at]?.toMm ?? Number.NaN, 9);
          expect(stretch.step).not.toBe(found[at]?.step);
        });
      }),
    );
  });
});
