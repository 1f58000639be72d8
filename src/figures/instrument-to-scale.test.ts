import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear, labelsIn } from "./drawn-for-tests.ts";
import { type InstrumentToScale, instrumentToScale, type ScaledInstrument } from "./instrument-to-scale.ts";
import { svgText } from "./svg-text.ts";

/** Size 25 taper .06 by its definition: 0.25 mm and 0.06 mm more for each mm, each within 0.02 mm. */
const red: ScaledInstrument = {
  ...{ name: "25/.06", says: "nickel-titanium", lengthMm: 25, colour: "red" },
  profile: [0, 16].map((atMm) => {
    const diameterMm = 0.25 + 0.06 * atMm;
    return { atMm, diameterMm, low: diameterMm - 0.02, high: diameterMm + 0.02 };
  }),
};
const given: InstrumentToScale = { instruments: [red], theme: "paper", widthPx: 640 };
const drawn = (more: Partial<InstrumentToScale> = {}): string => svgText(instrumentToScale({ ...given, ...more }));
const places = (text: string, part: string): number[] =>
  (new RegExp(`data-part="${part}" d="([^"]+)"`).exec(text)?.[1]?.match(/-?[\d.]+/g) ?? []).map(Number);

/** How broad and how high the drawn instrument is, and a mm of its ruler. */
function sizes(text: string) {
  const body = places(text, "instrument");
  const ys = body.filter((_, at) => at % 2 === 1);
  const xs = body.filter((_, at) => at % 2 === 0);
  const [from = 0] = places(text, "ruler");
  const ticks = [...(/data-part="ruler" d="([^"]+)"/.exec(text)?.[1] ?? "").matchAll(/M([\d.]+) [\d.]+v/g)];
  const perMm = Number(ticks[1]?.[1]) - Number(ticks[0]?.[1]);
  return {
    long: Math.max(...xs) - Math.min(...xs),
    high: Math.max(...ys) - Math.min(...ys),
    perMm,
    from,
  };
}

describe("instrumentToScale", () => {
  it("draws lengths and widths by its own ruler", () => {
    const { long, high, perMm } = sizes(drawn());
    expect(long / perMm).toBeCloseTo(16, 1);
    // The working part is 1.21 mm thick at its end: 0.25 + 16 x 0.06.
    expect(high / perMm).toBeCloseTo(1.21, 1);
  });

  it("draws widths larger only when asked to, and says so", () => {
    const { high, perMm } = sizes(drawn({ widthTimes: 4 }));
    expect(high / perMm).toBeCloseTo(4.84, 1);
    expect(drawn({ widthTimes: 4 })).toContain("widths drawn 4 times as large</text>");
    expect(drawn()).toContain("true to scale</text>");
    expect(instrumentToScale({ ...given, widthTimes: 4 }).alternative).toContain("widths drawn 4 times as large");
  });

  it("has the standard's colour at the handle and its name in words; a size without one has a dashed rim", () => {
    expect(drawn()).toMatch(/data-part="handle"[^>]* fill="#c93a32"/);
    expect(drawn()).toContain(">red</text>");
    const custom = drawn({ instruments: [{ ...red, colour: undefined }] });
    expect(custom).toMatch(/data-part="handle"[^>]* stroke-dasharray="3 2"/);
    expect(custom).toContain(">no colour</text>");
  });

  it("draws no handle where the length is not known, and says so", () => {
    const text = drawn({ instruments: [{ ...red, lengthMm: undefined }] });
    expect(text).not.toContain('data-part="handle"');
    expect(text).toContain(">length not known</text>");
  });

  it("puts a tip as far from the canal's end as it stayed short of it", () => {
    const text = drawn({ instruments: [{ ...red, shortMm: 4 }], canal: { name: "MB1", lengthMm: 20 } });
    const tip = Math.min(...places(text, "instrument").filter((_, at) => at % 2 === 0));
    const { perMm, from } = sizes(text);
    expect((tip - from) / perMm).toBeCloseTo(4, 1);
  });

  it("says all of it in words", () => {
    const canal = { name: "MB1", lengthMm: 20.5, ends: [{ atMm: 5, words: "bend begins" }] };
    expect(instrumentToScale({ ...given, canal, instruments: [{ ...red, shortMm: 0.5 }] }).alternative).toBe(
      "Instruments to scale. 25/.06, red, nickel-titanium, 0.25 mm (0.23 to 0.27) at 0 mm, 1.21 mm (1.19 to 1.23) at 16 mm, 25 mm to the handle, 0.5 mm short of the canal's end. Canal MB1, 20.5 mm long; bend begins at 5.0 mm. In mm from the end of the canal; true to scale.",
    );
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s for any instruments", (theme) => {
    const one = fc.record({
      lengthMm: fc.constantFrom(undefined, 17, 21, 25, 31),
      colour: fc.constantFrom(undefined, "white", "purple"),
      shortMm: fc.double({ min: 0, max: 9, noNaN: true }),
      says: fc.constantFrom(undefined, "heat-treated nickel-titanium, reciprocating"),
    });
    const canal = {
      name: "MB1",
      lengthMm: 19.5,
      ends: [4, 5, 19].map((atMm) => ({ atMm, words: "bend begins here" })),
    };
    fc.assert(
      fc.property(fc.array(one, { maxLength: 7 }), fc.boolean(), fc.constantFrom(1, 4), (some, beside, widthTimes) => {
        const instruments = some.map((more) => ({ ...red, ...more }));
        const figure = instrumentToScale({
          ...{ instruments, theme, widthPx: 640, widthTimes },
          ...(beside ? { canal } : {}),
        });
        expectClear(figure);
        expect(labelsIn(figure).length).toBeGreaterThan(0);
      }),
      { numRuns: 30 },
    );
  });
});
