import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CoursePoint } from "./drawn-course.ts";
import { expectClear } from "./drawn-for-tests.ts";
import { type SeatedFile, seatedFile } from "./seated-file.ts";
import { svgText } from "./svg-text.ts";

const course: CoursePoint[] = [0, 4, 8, 12, 16].map((y) => [y > 10 ? (y - 10) * 0.3 : 0, y]);
const profile = Array.from({ length: 31 }, (_, at) => ({ fromTipMm: at / 2, strain: at < 10 ? 0.06 : 0 }));
const given: SeatedFile = {
  ...{ name: "25/.06", course, tipDepthMm: 15, profile, bound: "no less than that", theme: "paper", widthPx: 440 },
  diameters: [0, 16].map((atMm) => ({ atMm, diameterMm: 0.25 + 0.06 * atMm })),
  tightest: { fromTipMm: 4.5, strain: 0.06 },
};
const drawn = (more: Partial<SeatedFile> = {}): string => svgText(seatedFile({ ...given, ...more }));

describe("seatedFile", () => {
  it("says file, depth, where it is bent most and what that says about the true strain", () => {
    expect(seatedFile(given).alternative).toBe(
      "File 25/.06 seated in its canal, as the film shows it. Its tip lies 15.0 mm from the orifice. It is bent most 4.5 mm from the tip, 10.5 mm from the orifice: strain 6.0 %; no less than that.",
    );
    const inSpace = course.map(([x, y]): CoursePoint => [x, 0, y]);
    expect(seatedFile({ ...given, course: inSpace }).alternative).toContain("square to the plane that it lies in best");
  });

  it("counts from where the course begins", () => {
    const words = { ...given, beginsAt: "the reference point" };
    expect(seatedFile(words).alternative).toContain("Its tip lies 15.0 mm from the reference point.");
    expect(svgText(seatedFile(words))).toContain(">reference point</text>");
  });

  it("draws the file stretch by stretch in the steps of its strain", () => {
    const steps = [...drawn().matchAll(/data-part="file" data-step="(\d)"/g)].map(([, step]) => step);
    expect(steps).toEqual(["3", "2", "1", "0"]);
  });

  it("crosses what lies over 10 % by strokes as well, and says so", () => {
    const over = profile.map((one) => ({ ...one, strain: 2 * one.strain }));
    expect(drawn({ profile: over })).toContain('data-part="overTen"');
    expect(seatedFile({ ...given, profile: over }).alternative).toContain("bent beyond 10 %");
    expect(drawn()).not.toContain('data-part="overTen"');
  });

  it("marks the tightest place, and a place that is pointed at", () => {
    expect(drawn()).toContain('data-part="tightest"');
    expect(drawn()).not.toContain('data-part="place"');
    expect(drawn({ placeMm: 3 })).toContain('data-part="place"');
    const straight = drawn({ tightest: undefined });
    expect(straight).not.toContain('data-part="tightest"');
    expect(straight).toContain(">straight</text>");
  });

  it("is as broad as the instrument by its own scale", () => {
    const flat = profile.map((one) => ({ ...one, strain: 0 }));
    const text = drawn({ profile: flat, course: course.map(([, y]): CoursePoint => [0, y]) });
    const xs = (/data-part="file"[^>]* d="([^"]+)"/.exec(text)?.[1]?.match(/-?[\d.]+/g) ?? [])
      .map(Number)
      .filter((_, at) => at % 2 === 0);
    const bar = Number(/data-part="scale" d="M[\d.]+ [\d.]+v8M[\d.]+ [\d.]+h([\d.]+)/.exec(text)?.[1]);
    const mm = Number(/>(\d) mm<\/text>/.exec(text)?.[1]);
    // 15 mm from the tip it is 1.15 mm thick.
    expect((Math.max(...xs) - Math.min(...xs)) / (bar / mm)).toBeCloseTo(1.15, 1);
  });

  it.each(["paper", "dark", "print"] as const)(
    "keeps every word clear on %s wherever the tip and the bend are",
    (theme) => {
      const bound = "no bound: one film can't show that the true turn is below 35 degrees, past which it may show more";
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 15, noNaN: true }),
          fc.double({ min: 0, max: 1, noNaN: true }),
          (tip, share) => {
            const seated = profile.filter(({ fromTipMm }) => fromTipMm <= tip);
            const tightest = { fromTipMm: tip * share, strain: 0.06 };
            expectClear(
              seatedFile({ ...given, theme, bound, tipDepthMm: tip, profile: seated, tightest, placeMm: tip / 2 }),
            );
          },
        ),
        { numRuns: 30 },
      );
    },
  );
});
