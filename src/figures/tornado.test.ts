import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";
import { type Tornado, tornado } from "./tornado.ts";

const given: Tornado = {
  ...{ of: "healed when taken out, less when left", base: -2, unit: "points", theme: "paper", widthPx: 640 },
  drivers: [
    { name: "narrow", low: 0.1, high: 0.2, atLow: -3, atHigh: -1 },
    { name: "wide", low: "33 %", high: "79 %", atLow: 6, atHigh: -8 },
  ],
};
const drawn = (more: Partial<Tornado> = {}): string => svgText(tornado({ ...given, ...more }));

describe("tornado", () => {
  it("has the widest bar first, and a filled end where the input is high", () => {
    const text = drawn();
    expect(text.indexOf(">wide</text>")).toBeLessThan(text.indexOf(">narrow</text>"));
    const [low, high] = ["at-low", "at-high"].map((part) =>
      Number(new RegExp(`"${part}" cx="([\\d.]+)"`).exec(text)?.[1]),
    );
    expect(high).toBeLessThan(low ?? 0);
  });

  it("draws bars by one scale: the base lies between its ends in their measure", () => {
    const text = drawn();
    const base = Number(
      /data-part="base" d="M([\d.]+)|d="M([\d.]+)[^"]*" fill="none" data-part="base"/
        .exec(text)
        ?.slice(1)
        .find(Boolean),
    );
    const [low = 0, high = 0] = ["at-low", "at-high"].map((part) =>
      Number(new RegExp(`"${part}" cx="([\\d.]+)"`).exec(text)?.[1]),
    );
    // -2 lies 8 of 14 on the way from 6 down to -8.
    expect((base - low) / (high - low)).toBeCloseTo(8 / 14, 2);
  });

  it("says the numbers in words", () => {
    expect(tornado(given).alternative).toBe(
      "What drives the result: healed when taken out, less when left. With every input at its middle −2 points. wide from 33 % to 79 %: 6 to −8 points. narrow from 0.1 to 0.2: −3 to −1 points.",
    );
  });

  it("keeps every word clear for any drivers", () => {
    const end = fc.double({ min: -60, max: 60, noNaN: true });
    const one = fc.record({
      atLow: end,
      atHigh: end,
      name: fc.constantFrom("a", "healing where a lesion was there before treatment"),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 8 }), end, fc.constantFrom(1, 1.3), (some, base, letters) => {
        const drivers = some.map((more) => ({ low: 0.1, high: 0.9, ...more }));
        expectClear(tornado({ ...given, drivers, base, letters }));
      }),
      { numRuns: 40 },
    );
  });
});
