import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear, labelsIn } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";
import { type VisitTimelineDrawn, visitTimeline } from "./visit-timeline.ts";

const given: VisitTimelineDrawn = {
  ...{ minutes: 60, theme: "paper", widthPx: 700 },
  lanes: [
    { name: "Anaesthetic", marks: [{ fromMin: 3, says: "articaine 4 %, 1 × 1.7 ml" }] },
    { name: "Irrigants", marks: [{ fromMin: 20, toMin: 30, says: "sodium hypochlorite 3 %, 5 ml, 10 min" }] },
  ],
  withoutMinute: [{ name: "Instruments", says: ["MB1 25/.06", "DB 25/.04"] }],
};

const placesIn = (text: string, part: string) =>
  [...text.matchAll(new RegExp(`data-part="${part}" (?:x|cx)="([\\d.]+)"`, "g"))].map(([, x]) => Number(x));
const tickAt = (figure: ReturnType<typeof visitTimeline>, minute: number): number => {
  const tick = labelsIn(figure).find(({ text }) => text === String(minute));
  return ((tick?.left ?? Number.NaN) + (tick?.right ?? Number.NaN)) / 2;
};

describe("visitTimeline", () => {
  it("puts a moment at its minute and a bar from its first to its last, on the axis that is read", () => {
    const figure = visitTimeline(given);
    const text = svgText(figure);
    const perMinute = (tickAt(figure, 30) - tickAt(figure, 0)) / 30;
    expect((placesIn(text, "at")[0] ?? 0) - tickAt(figure, 0)).toBeCloseTo(3 * perMinute, 1);
    expect((placesIn(text, "lasting")[0] ?? 0) - tickAt(figure, 0)).toBeCloseTo(20 * perMinute, 1);
    const bar = Number(/data-part="lasting"[^>]* width="([\d.]+)"/.exec(text)?.[1]);
    expect(bar).toBeCloseTo(10 * perMinute, 1);
  });

  it("keeps what has no minute off the axis, in words below it", () => {
    const figure = visitTimeline(given);
    const words = labelsIn(figure);
    const heading = words.find(({ text }) => text === "no minute noted");
    const said = words.find(({ text }) => text.includes("MB1 25/.06"));
    expect(said?.top ?? 0).toBeGreaterThan(heading?.bottom ?? Number.POSITIVE_INFINITY);
    expect(svgText(visitTimeline({ ...given, withoutMinute: [] }))).not.toContain("no minute noted");
  });

  it("draws the line of now while the clock runs, and none after", () => {
    const figure = visitTimeline({ ...given, nowMin: 30 });
    const line = Number(/data-part="now" d="M([\d.]+)/.exec(svgText(figure))?.[1]);
    expect(line).toBeCloseTo(tickAt(figure, 30), 1);
    expect(figure.alternative).toContain("Now: minute 30.");
    expect(svgText(visitTimeline(given))).not.toContain('data-part="now"');
  });

  it("keeps a long name clear of what is said beside it, with and without a minute", () => {
    const name = "Left in the tooth between two visits";
    expectClear(visitTimeline({ ...given, withoutMinute: [{ name, says: ["calcium hydroxide"] }] }));
    expectClear(visitTimeline({ ...given, lanes: [{ name, marks: [{ fromMin: 0, says: "cement" }] }] }));
  });

  it("says in words what it draws", () => {
    expect(visitTimeline(given).alternative).toBe(
      "The visit by the clock. 60 min long. Anaesthetic: at 3 min articaine 4 %, 1 × 1.7 ml. Irrigants: 20 to 30 min sodium hypochlorite 3 %, 5 ml, 10 min. Instruments, no minute noted: MB1 25/.06; DB 25/.04.",
    );
    expect(visitTimeline({ ...given, minutes: undefined }).alternative).toContain("Its length is not noted.");
  });

  it("draws an empty visit as an axis", () => {
    const figure = visitTimeline({ ...given, minutes: undefined, lanes: [], withoutMinute: [] });
    expectClear(figure);
    expect(labelsIn(figure).map(({ text }) => text)).toContain("10");
  });

  const mark = fc.record({
    fromMin: fc.integer({ min: 0, max: 600 }),
    lasts: fc.option(fc.double({ min: 0.01, max: 120, noNaN: true }), { nil: undefined }),
    says: fc.string({ minLength: 1, maxLength: 120, unit: fc.constantFrom("a", "m", "1", " ", "%", "W") }),
  });
  it("keeps every word clear with 90 rows, at both widths, and none of them off the page", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(mark, { maxLength: 30 }), { minLength: 3, maxLength: 3 }),
        fc.constantFrom(700, 1100),
        fc.option(fc.integer({ min: 0, max: 600 }), { nil: undefined }),
        (lanes, widthPx, nowMin) => {
          const drawn = lanes.map((marks, at) => ({
            name: ["Irrigants", "Solvent", "Notes"][at] ?? "",
            marks: marks.map(({ fromMin, lasts, says }) => ({
              ...{ fromMin, says },
              toMin: lasts === undefined ? undefined : fromMin + lasts,
            })),
          }));
          expectClear(visitTimeline({ ...given, lanes: drawn, widthPx, nowMin }));
        },
      ),
      { numRuns: 40 },
    );
  });

  it("keeps 90 injections of one minute apart", () => {
    const marks = Array.from({ length: 90 }, () => ({ fromMin: 5, says: "sodium hypochlorite 3 %, 5 ml, 1 min" }));
    expectClear(visitTimeline({ ...given, lanes: [{ name: "Irrigants", marks }] }));
  });
});
