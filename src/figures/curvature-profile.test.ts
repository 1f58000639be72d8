import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CurvatureProfile, curvatureProfile } from "./curvature-profile.ts";
import { svgText } from "./svg-text.ts";

const arc = [0, 5, 10, 15].map((sMm) => ({ sMm, curvaturePerMm: sMm === 10 ? 0.2 : 0 }));
const profile = (more: Partial<CurvatureProfile> = {}) =>
  curvatureProfile({ samples: arc, theme: "paper", widthPx: 480, ...more });

describe("curvatureProfile", () => {
  it("marks the tightest sample and names its radius, which is one over the curvature", () => {
    expect(profile().alternative).toBe(
      "Curvature along 15.0 mm of canal. The canal is tightest at 10.0 mm: radius 5.0 mm.",
    );
    expect(svgText(profile())).toContain(">tightest at 10.0 mm: radius 5.0 mm</text>");
  });

  it("marks the given place where there is one", () => {
    expect(profile({ tightest: { sMm: 9, curvaturePerMm: 0.25 } }).alternative).toContain("9.0 mm: radius 4.0 mm");
  });

  it("says that a canal is straight, and leaves the mark out", () => {
    const flat = profile({ samples: arc.map(({ sMm }) => ({ sMm, curvaturePerMm: 0 })) });
    expect(flat.alternative).toContain("The canal is straight.");
    expect(svgText(flat)).not.toContain('data-part="tightest"');
    expect(profile({ tightest: { sMm: 3, curvaturePerMm: 0 } }).alternative).toContain("tightest at 3.0 mm: straight");
  });

  it("draws a band where there is one, and says so", () => {
    const band = [
      { sMm: 0, low: 0, high: 0.1 },
      { sMm: 15, low: 0, high: 0.3 },
    ];
    expect(svgText(profile({ band }))).toContain('data-part="band"');
    expect(profile({ band }).alternative).toContain("A band shows the interval.");
    expect(svgText(profile())).not.toContain('data-part="band"');
  });

  it("does not ask on which side a bend lies", () => {
    const mirrored = arc.map(({ sMm, curvaturePerMm }) => ({ sMm, curvaturePerMm: -curvaturePerMm }));
    expect(svgText(profile({ samples: mirrored }))).toBe(svgText(profile()));
  });

  it("names both axes, with units", () => {
    const text = svgText(profile());
    expect(text).toContain(">curvature, 1/mm</text>");
    expect(text).toContain(">mm from the orifice</text>");
  });

  it("keeps the curve inside its axes for any canal, and never writes a number that is none", () => {
    const sample = fc.record({
      sMm: fc.double({ min: 0, max: 40, noNaN: true }),
      curvaturePerMm: fc.double({ min: -3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(sample, { minLength: 2, maxLength: 30 }), (samples) => {
        const text = svgText(profile({ samples, theme: "print" }));
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        const curve = /data-part="curve" d="([^"]*)"/.exec(text)?.[1] ?? "";
        const numbers = (curve.match(/-?[\d.]+/g) ?? []).map(Number);
        for (const y of numbers.filter((_, at) => at % 2 === 1)) expect(y >= 33.99 && y <= 148.01).toBe(true);
      }),
    );
  });
});
