import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AttemptsClock, attemptsClock } from "./attempts-clock.ts";
import { expectClear, labelsIn } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";

const attempt = (minutes: number) => ({ at: "12 Mar, 09:40", minutes, tool: "ultrasonic tip", moved: "nothing moved" });
const given: AttemptsClock = { attempts: [attempt(20), attempt(30)], stopAfterMin: 45, theme: "paper", widthPx: 640 };
const drawn = (more: Partial<AttemptsClock> = {}): string => svgText(attemptsClock({ ...given, ...more }));
const boxes = (text: string, part: string) =>
  [...text.matchAll(new RegExp(`data-part="${part}" x="([\\d.]+)"[^>]* width="([\\d.]+)"`, "g"))].map(
    ([, x, width]) => ({
      from: Number(x),
      to: Number(x) + Number(width),
    }),
  );

describe("attemptsClock", () => {
  it("lays attempts end to end, and hatches what lies past the rule", () => {
    const text = drawn();
    const [within, past] = [boxes(text, "within"), boxes(text, "past")];
    expect(within[1]?.from).toBeCloseTo(within[0]?.to ?? Number.NaN, 1);
    expect(past).toHaveLength(1);
    const stop = Number(/data-part="stop" d="M([\d.]+)/.exec(text)?.[1]);
    expect(past[0]?.from).toBeCloseTo(stop, 1);
    // 5 of 50 minutes are past the rule.
    const perMinute = ((within[0]?.to ?? 0) - (within[0]?.from ?? 0)) / 20;
    expect(((past[0]?.to ?? 0) - (past[0]?.from ?? 0)) / perMinute).toBeCloseTo(5, 1);
  });

  it("says how much is past the rule, or left of it, or that there is none", () => {
    expect(attemptsClock(given).alternative).toBe(
      "Attempts by the clock. 50 min together. 5 min past the rule of 45 min. 1. 12 Mar, 09:40: ultrasonic tip, 20 min, nothing moved. 2. 12 Mar, 09:40: ultrasonic tip, 30 min, nothing moved.",
    );
    expect(attemptsClock({ ...given, attempts: [attempt(20)] }).alternative).toContain(
      "25 min below the rule of 45 min",
    );
    expect(attemptsClock({ ...given, stopAfterMin: undefined }).alternative).toContain("No rule for the time was set");
    expect(drawn({ stopAfterMin: undefined })).toContain(">no rule for the time was set</text>");
    expect(drawn({ stopAfterMin: undefined })).not.toContain('data-part="past"');
  });

  it("keeps a bar's words off the line of the rule: past it where they would touch it, beside the bar where not", () => {
    for (const minutes of [38, 5]) {
      const figure = attemptsClock({ ...given, attempts: [attempt(minutes)] });
      const stop = Number(/data-part="stop" d="M([\d.]+)/.exec(svgText(figure))?.[1]);
      const words = labelsIn(figure).find(({ text }) => text.endsWith("nothing moved"));
      expect(minutes === 38 ? (words?.left ?? 0) - stop : stop - (words?.right ?? stop)).toBeGreaterThanOrEqual(6.9);
    }
  });

  const minutes = fc.double({ min: 0, max: 300, noNaN: true });
  it("keeps every word clear for any log, and off the line of the rule", () => {
    fc.assert(
      fc.property(fc.array(minutes, { minLength: 1, maxLength: 6 }), minutes, (all, stopAfterMin) => {
        const figure = attemptsClock({ ...given, attempts: all.map(attempt), stopAfterMin });
        const stop = Number(/data-part="stop" d="M([\d.]+)/.exec(svgText(figure))?.[1]);
        const bars = labelsIn(figure).filter(({ text }) => text.endsWith("nothing moved"));
        expect(bars.filter(({ left, right }) => left < stop + 6.9 && right > stop - 6.9)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it("keeps every word clear for any log", () => {
    fc.assert(
      fc.property(fc.array(minutes, { maxLength: 10 }), fc.option(minutes, { nil: undefined }), (all, stopAfterMin) => {
        expectClear(attemptsClock({ ...given, attempts: all.map(attempt), stopAfterMin }));
      }),
      { numRuns: 40 },
    );
  });
});
