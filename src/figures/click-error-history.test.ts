import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClickErrorHistory, clickErrorHistory } from "./click-error-history.ts";
import { svgText } from "./svg-text.ts";

type Done = ClickErrorHistory["exercises"][number];
const done = (sigmaPx: number, more: Partial<Done> = {}): Done => ({
  ...{ day: "29 Nov 2026", sigmaPx, low: sigmaPx * 0.9, high: sigmaPx * 1.1, isUsed: false },
  ...more,
});
const drawn = (exercises: readonly Done[], more: Partial<ClickErrorHistory> = {}): string =>
  svgText(clickErrorHistory({ exercises, theme: "paper", widthPx: 560, ...more }));
const count = (text: string, part: string): number => text.split(`data-part="${part}"`).length - 1;

describe("clickErrorHistory", () => {
  it("tells every exercise in words, with the one that is in use", () => {
    const { alternative } = clickErrorHistory({
      exercises: [done(1.04, { day: "3 Oct 2026" }), done(0.8, { isUsed: true })],
      ...{ theme: "paper", widthPx: 560 },
    });
    expect(alternative).toBe(
      "Click error of 2 exercises. 3 Oct 2026: 1.04 px, 0.94 to 1.14. 29 Nov 2026: 0.80 px, 0.72 to 0.88, in use.",
    );
  });

  it("draws an interval for each, fills the one in use by shape and names it, and draws what is assumed", () => {
    const text = drawn([done(1), done(0.8, { isUsed: true }), done(0.7)], { assumedPx: 1 });
    expect([count(text, "interval"), count(text, "exercise"), count(text, "used")]).toEqual([3, 2, 1]);
    expect(text).toContain(">in use</text>");
    expect(text).toContain(">assumed, 1</text>");
    expect(drawn([done(1)])).not.toContain("assumed");
  });

  it("has errors higher up the larger they are, by one scale", () => {
    const heights = [...drawn([done(0.5), done(1), done(2)]).matchAll(/cy="([\d.]+)"/g)].map(([, y]) => Number(y));
    const [half = 0, one = 0, two = 0] = heights;
    expect(half - one).toBeGreaterThan(0);
    expect((one - two) / (half - one)).toBeCloseTo(2, 1);
  });

  it("writes at most six days under many exercises", () => {
    const many = Array.from({ length: 20 }, (_, at) => done(1, { day: `day ${at}` }));
    expect(drawn(many).split(">day ").length - 1).toBeLessThanOrEqual(6);
  });

  it("keeps every mark inside its axes for any history, and never writes a number that is none", () => {
    const one = fc.double({ min: 0, max: 20, noNaN: true }).map((sigmaPx) => done(sigmaPx));
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 25 }), (exercises) => {
        const text = drawn(exercises, { assumedPx: 1 });
        expect(text).not.toMatch(/NaN|Infinity|undefined/);
        for (const [, x, y] of text.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g))
          expect(Number(x) > 48 && Number(x) < 470 && Number(y) >= 33.9 && Number(y) <= 168.1).toBe(true);
      }),
    );
  });
});
