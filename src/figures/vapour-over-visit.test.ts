import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";
import { type VapourOverVisit, type VapourPanel, vapourOverVisit } from "./vapour-over-visit.ts";

const point = (tMin: number, ppm: number) => ({ tMin, ppm, lowPpm: ppm / 2, highPpm: ppm * 2 });
const curve = (zone: "near" | "far", most: number) => ({ zone, points: [point(0, 0), point(5, most), point(60, 0)] });
const panel = (averagingMin: VapourPanel["averagingMin"], limits: VapourPanel["limits"], most = 1): VapourPanel => ({
  averagingMin,
  curves: [curve("near", most), curve("far", most / 5)],
  limits,
});
const given: VapourOverVisit = {
  panels: [
    panel(0, [{ label: "A 2008: 50 ppm", ppm: 50 }]),
    panel(15, []),
    panel(60, [{ label: "B 2005: 2 ppm", ppm: 2 }]),
    panel(480, [
      { label: "C: 0.5 ppm", ppm: 0.5 },
      { label: "D 2000: 2 ppm", ppm: 2 },
    ]),
  ],
  doses: [{ atMin: 5, volumeMl: 0.1 }],
  theme: "paper",
  widthPx: 640,
};
const drawn = (more: Partial<VapourOverVisit> = {}): string => svgText(vapourOverVisit({ ...given, ...more }));
const limitsDrawn = (text: string): number => [...text.matchAll(/data-part="limit"/g)].length;

describe("vapourOverVisit", () => {
  it("draws a limit as a line in the panel of its own time alone, and names with an arrow what is off the scale", () => {
    // A is 25 times above the scale of its panel; B, C and D lie on theirs.
    expect(limitsDrawn(drawn())).toBe(3);
    expect(drawn()).toContain(">↑ A 2008: 50 ppm</text>");
    expect(drawn()).toContain(">B 2005: 2 ppm</text>");
    expect(drawn({ panels: [panel(0, [])] })).toContain(">no limit of this time was read</text>");
    expect(limitsDrawn(drawn({ panels: [panel(0, [])] }))).toBe(0);
  });

  it("puts the curve's highest spot above the line of a limit that it passes, and below one that it does not", () => {
    for (const [limit, isAbove] of [
      [0.5, true],
      [1.5, false],
    ] as const) {
      const text = drawn({ panels: [panel(60, [{ label: "B", ppm: limit }])] });
      const line = Number(/data-part="limit" d="M[\d.]+ ([\d.]+)H/.exec(text)?.[1]);
      const spots = [
        ...(/data-part="recorded-near" d="([^"]*)"/.exec(text)?.[1] ?? "").matchAll(/[ML][\d.]+ ([\d.]+)/g),
      ];
      const highest = Math.min(...spots.map(([, y]) => Number(y)));
      expect(highest < line).toBe(isAbove);
    }
  });

  it("tells zones and what is supposed apart by dashes, without colour", () => {
    const supposed = [curve("near", 0.3)];
    const text = drawn({ panels: given.panels.map((one) => ({ ...one, supposed })) });
    const dashOf = (part: string) =>
      /stroke-dasharray="([^"]*)"/.exec(new RegExp(`<path data-part="${part}"[^>]*>`).exec(text)?.[0] ?? "")?.[1] ??
      "full";
    const dashes = ["recorded-near", "recorded-far", "supposed-near"].map(dashOf);
    expect(new Set(dashes).size).toBe(3);
    expect(text).toContain(">what if</text>");
    expect(drawn()).not.toContain("what if");
  });

  it("gathers the words of doses that stand close, and keeps their wedges apart", () => {
    const close = [5, 6, 40].map((atMin) => ({ atMin, volumeMl: 0.1 }));
    const text = drawn({ doses: close });
    expect(text).toContain(">2 doses, 0.2 ml</text>");
    expect(text).toContain(">0.1 ml</text>");
    expect([...text.matchAll(/data-part="dose"/g)]).toHaveLength(3);
  });

  it("says all of it in words: doses, what each mean comes to at most, and its limits", () => {
    const { alternative } = vapourOverVisit(given);
    expect(alternative).toMatch(/^Solvent in the air over the visit\. Doses: 0\.1 ml at minute 5\. /);
    expect(alternative).toContain(
      "At each moment: near the mouth at most 1 ppm, 2 at some rates, in the room at most 0.2 ppm, 0.4 at some rates; against A 2008: 50 ppm.",
    );
    expect(alternative).toContain("Mean over 15 min: near the mouth at most 1 ppm, 2 at some rates");
    expect(alternative).toContain("no limit of this time was read");
  });

  it("keeps every word clear for any concentrations, doses and limits", () => {
    const ppm = fc.double({ min: 1e-4, max: 1e3, noNaN: true });
    const limit = fc.record({
      label: fc.constantFrom("European Union 2000: 2 ppm", "A place with a very long name 1993: 10 ppm"),
      ppm,
    });
    const dose = fc.record({
      atMin: fc.double({ min: 0, max: 240, noNaN: true }),
      volumeMl: fc.constantFrom(0.05, 0.1, 1),
    });
    fc.assert(
      fc.property(ppm, fc.array(limit, { maxLength: 7 }), fc.array(dose, { maxLength: 6 }), (most, limits, doses) => {
        expectClear(
          vapourOverVisit({
            ...given,
            doses,
            panels: ([0, 15, 60, 480] as const).map((one) => panel(one, limits, most)),
          }),
        );
      }),
      { numRuns: 40 },
    );
  });

  it("stands where nothing is in the air, and without doses", () => {
    const nothing = { zone: "far" as const, points: [{ tMin: 0, ppm: 0 }] };
    expectClear(vapourOverVisit({ ...given, doses: [], panels: [{ averagingMin: 0, curves: [nothing], limits: [] }] }));
    expect(drawn({ panels: [{ averagingMin: 0, curves: [nothing], limits: [] }] })).not.toContain('data-part="band');
  });
});
