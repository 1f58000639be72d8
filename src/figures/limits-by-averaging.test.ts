import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type LimitOfAir, type LimitsByAveraging, limitsByAveraging } from "./limits-by-averaging.ts";
import { svgText } from "./svg-text.ts";

const row = (ratio: number, more: Partial<LimitOfAir> = {}): LimitOfAir => ({
  label: "NIOSH (United States) 2005",
  says: "mean over 60 min near the mouth, 0.51 of 2 ppm",
  ratio,
  stands: ratio > 1 ? "above" : "below",
  ...more,
});
const given: LimitsByAveraging = { rows: [row(0.14), row(3)], theme: "paper", widthPx: 640 };
const drawn = (rows: readonly LimitOfAir[]): string => svgText(limitsByAveraging({ ...given, rows }));
const lineAt = (text: string): number => Number(/data-part="limit" d="M([\d.]+)/.exec(text)?.[1]);

describe("limitsByAveraging", () => {
  it("puts what is below left of the line and what is above right of it, equally far for equal factors", () => {
    const text = drawn([row(0.1), row(10)]);
    const below = Number(/data-part="below" cx="([\d.]+)"/.exec(text)?.[1]);
    const above = Number(/data-part="above" d="M([\d.]+)/.exec(text)?.[1]);
    expect(lineAt(text) - below).toBeGreaterThan(20);
    expect(above - lineAt(text)).toBeCloseTo(lineAt(text) - below, 0);
  });

  it("tells below, above and what depends on the rate apart by shape, and in words", () => {
    const text = drawn([row(0.5), row(2), row(0.9, { stands: "dependsOnRate", within: { low: 0.4, high: 1.9 } })]);
    // One of each in the rows, one of each in the key.
    for (const [part, tag] of [
      ["below", "circle"],
      ["above", "path"],
      ["dependsOnRate", "rect"],
    ] as const)
      expect([...text.matchAll(new RegExp(`<${tag} data-part="${part}"`, "g"))]).toHaveLength(2);
    expect(text).toContain(">0.9, depends on the rate</text>");
    expect(text).toContain(">0.4 to 1.9</text>");
  });

  it("lays the range over the line where the rate decides", () => {
    const text = drawn([row(0.9, { stands: "dependsOnRate", within: { low: 0.4, high: 1.9 } })]);
    const [, from, to] = /data-part="range" d="M([\d.]+) [\d.]+H([\d.]+)/.exec(text) ?? [];
    expect(Number(from)).toBeLessThan(lineAt(text));
    expect(Number(to)).toBeGreaterThan(lineAt(text));
  });

  it("draws what is supposed as a triangle of its own, with a key, and only then", () => {
    const supposed = { ratio: 0.05, stands: "below" } as const;
    expect(drawn([row(0.14, { supposed })])).toContain(">if: 0.05, below</text>");
    expect(drawn([row(0.14)])).not.toContain("what if");
  });

  it("says each row in words: whose, what is held against it, by how much, and over the rates", () => {
    const { alternative } = limitsByAveraging({ ...given, rows: [row(0.14, { within: { low: 0.06, high: 0.31 } })] });
    expect(alternative).toBe(
      "Each limit with what is held against it, the strictest first. NIOSH (United States) 2005: mean over 60 min near the mouth, 0.51 of 2 ppm; 7.1 times below it, below, over the rates 0.06 to 0.31.",
    );
    expect(limitsByAveraging({ ...given, rows: [] }).alternative).toContain("No limit was read.");
  });

  it("keeps every word clear for any ratios, and with nothing in the air", () => {
    const ratio = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e5, noNaN: true }));
    const any = fc.tuple(ratio, fc.option(fc.tuple(ratio, ratio), { nil: undefined }), fc.boolean());
    fc.assert(
      fc.property(fc.array(any, { maxLength: 10 }), (all) => {
        const rows = all.map(([value, ends, supposes]) => {
          const [a = value, b = value] = ends ?? [];
          const within = { low: Math.min(a, b, value), high: Math.max(a, b, value) };
          return row(value, {
            within: ends && within,
            ...(supposes ? { supposed: { ratio: value / 2, stands: "below" } } : {}),
          });
        });
        expectClear(limitsByAveraging({ ...given, rows }));
      }),
      { numRuns: 60 },
    );
  });
});
