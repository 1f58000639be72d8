import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SeriesStrip, seriesStrip } from "./series-strip.ts";
import { svgText } from "./svg-text.ts";
import { themes } from "./theme.ts";

const row = (name: string, n: number, of: number) => ({
  ...{ name, n, of, mean: n / of },
  interval: { low: (0.8 * n) / of, high: Math.min(1, (1.2 * n) / of) },
});
const given: SeriesStrip = {
  what: "a third root",
  series: [row("Taiwan, 2009", 41, 123), row("Germany, 2009", 7, 1024)],
  next: { mean: 0.09, interval: { low: 0.003, high: 0.47 } },
  ...{ theme: "paper", widthPx: 480 },
};
const drawn = (more: Partial<SeriesStrip> = {}): string => svgText(seriesStrip({ ...given, ...more }));
const squares = (text: string) =>
  [...text.matchAll(/data-part="series" x="([-\d.]+)" y="([-\d.]+)" width="([\d.]+)"/g)].map(([, x, y, width]) => ({
    middle: Number(x) + Number(width) / 2,
    y: Number(y),
    side: Number(width),
  }));

describe("seriesStrip", () => {
  it("goes from the rarest up, with the larger square for the larger series", () => {
    const [germany, taiwan] = squares(drawn());
    expect(germany && taiwan && germany.y < taiwan.y && germany.middle < taiwan.middle).toBe(true);
    expect(germany && taiwan && germany.side > taiwan.side).toBe(true);
    expect(drawn()).toContain(">7/1024 · 0.7 %</text>");
  });

  it("draws the next population as wide as its interval, and nothing of it where there is none", () => {
    const [, from, to] = /data-part="next" d="M([\d.]+) [\d.]+L[\d.]+ [\d.]+L([\d.]+)/.exec(drawn()) ?? [];
    const quarters = [...drawn().matchAll(/<path d="M([\d.]+) 4V/g)].map(([, x]) => Number(x));
    const whole = Math.max(...quarters) - Math.min(...quarters);
    expect((Number(to) - Number(from)) / whole).toBeCloseTo(0.467, 2);
    expect(drawn({ next: undefined })).not.toMatch(/next|Next/);
  });

  it("says the same in words", () => {
    expect(seriesStrip(given).alternative).toBe(
      "How often published series found a third root. Germany, 2009, 7 of 1024; 0.7 % (0.5 to 0.8 %). Taiwan, 2009, 41 of 123; 33 % (27 to 40 %). Next population, where 95 % of such lie; 9.0 % (0.3 to 47 %).",
    );
  });

  it.each(["paper", "dark", "print"] as const)("takes the colours of %s alone", (theme) => {
    const colours = [...drawn({ theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(colours.filter((colour) => !Object.values<string>({ ...themes[theme] }).includes(colour))).toEqual([]);
  });

  it("gives each series a row of its own in any number, and never writes a number that is none", () => {
    const one = fc
      .integer({ min: 1, max: 6000 })
      .chain((of) => fc.integer({ min: 0, max: of }).map((n) => row("A land", n, of)));
    fc.assert(
      fc.property(fc.array(one, { maxLength: 30 }), fc.constantFrom(1, 1.5), (series, letters) => {
        const text = drawn({ series, letters });
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        const rows = squares(text).map(({ y, side }) => Math.round(y + side / 2));
        expect(new Set(rows).size).toBe(series.length);
      }),
      { numRuns: 40 },
    );
  });
});
