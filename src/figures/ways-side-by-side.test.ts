import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { svgText } from "./svg-text.ts";
import { themes } from "./theme.ts";
import { type SideBySideWay, type WaysSideBySide, waysSideBySide } from "./ways-side-by-side.ts";

const leave: SideBySideWay = {
  ...{ way: "leave it", words: "fill to it", from: "Known 2005, 134/146" },
  healed: { mean: 0.25, interval: { low: 0.25, high: 0.75 } },
  kept: { mean: 0.95, interval: { low: 0.9, high: 0.98 } },
};
const given: WaysSideBySide = { ways: [leave], theme: "paper", widthPx: 720 };
const drawn = (more: Partial<WaysSideBySide> = {}): string => svgText(waysSideBySide({ ...given, ...more }));
const count = (text: string, part: string): number => text.split(`data-part="${part}"`).length - 1;

describe("waysSideBySide", () => {
  it("has a column for healing and one for the tooth kept, told apart by shape as well", () => {
    const text = drawn();
    expect(text).toMatch(/<circle data-part="healed"/);
    expect(text).toMatch(/<rect data-part="kept"/);
    expect(text).toContain(">periapical healing</text>");
    expect(text).toContain(">tooth kept</text>");
    expect(drawn({ headings: { healed: "the bone heals", kept: "you keep the tooth" } })).toContain(
      ">the bone heals</text>",
    );
  });

  it("puts dot and interval in their share of the way from 0 to 100 %", () => {
    const text = drawn();
    const quarters = [...text.matchAll(/<path d="M([\d.]+) [\d.]+v20"/g)].slice(0, 5).map(([, x]) => Number(x));
    const [, from, to] = /data-part="interval" d="M([\d.]+) [\d.]+H([\d.]+)/.exec(text) ?? [];
    expect([Number(from), Number(to)]).toEqual([quarters[1], quarters[3]]);
    expect(Number(/data-part="healed" cx="([\d.]+)"/.exec(text)?.[1])).toBeCloseTo(quarters[1] ?? Number.NaN, 1);
  });

  it("draws a figure that serves two ways once, and says in the lower row that it is the one above", () => {
    const pass: SideBySideWay = { ...leave, way: "pass it", keptAsAbove: true };
    const text = drawn({ ways: [leave, pass] });
    expect([count(text, "healed"), count(text, "kept"), count(text, "kept-bar")]).toEqual([2, 1, 1]);
    expect(text.split(">the same figure as above</text>")).toHaveLength(2);
    expect(waysSideBySide({ ...given, ways: [leave, pass] }).alternative).toContain(
      "pass it, fill to it: periapical healing 25 % (25 to 75 %), tooth kept the same figure as above; from",
    );
    const plain = { ...given, ways: [leave, pass], asAbove: "as told above" };
    expect(svgText(waysSideBySide(plain))).toContain(">as told above</text>");
    expect(waysSideBySide(plain).alternative).toContain("tooth kept as told above");
  });

  it("writes none where a way has no healing, and draws no dot for it", () => {
    const gone: SideBySideWay = { way: "extraction", kept: { mean: 0 }, from: "by definition" };
    const text = drawn({ ways: [gone] });
    expect(text).toContain(">none</text>");
    expect([count(text, "healed"), count(text, "kept")]).toEqual([0, 1]);
  });

  it("says the numbers in words, in the order given, and that the order is none of worth", () => {
    const gone: SideBySideWay = { way: "extraction", kept: { mean: 0 }, from: "by definition" };
    expect(waysSideBySide({ ...given, ways: [leave, gone] }).alternative).toBe(
      "Ways side by side, in no order of worth. leave it, fill to it: periapical healing 25 % (25 to 75 %), tooth kept 95 % (90 to 98 %); from Known 2005, 134/146. extraction: periapical healing none, tooth kept 0 %; from by definition.",
    );
  });

  it.each(["paper", "dark", "print"] as const)("takes the colours of %s alone", (theme) => {
    const colours = [...drawn({ theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(colours.filter((colour) => !Object.values<string>({ ...themes[theme] }).includes(colour))).toEqual([]);
  });

  it("keeps every word clear for any ways, also with large letters", () => {
    const one = fc.record({
      mean: fc.double({ min: 0, max: 1, noNaN: true }),
      from: fc.constantFrom(
        "by definition",
        "Known 2005, 134/146, read; Other 2010, 161/199, from memory; ".repeat(4).trim(),
      ),
      keptAsAbove: fc.boolean(),
      words: fc.constantFrom(undefined, "first, else pass it, else leave it, and surgery where the lesion stays"),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 5 }), fc.constantFrom(1, 1.4), (some, letters) => {
        const ways = some.map(({ mean, ...more }) => ({
          ...leave,
          ...more,
          healed: { mean, interval: { low: 0, high: 1 } },
        }));
        expectClear(waysSideBySide({ ...given, ways, letters }));
      }),
      { numRuns: 30 },
    );
  });
});
