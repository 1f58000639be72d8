import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClear } from "./drawn-for-tests.ts";
import { type FragmentAmongPublished, fragmentAmongPublished } from "./fragment-among-published.ts";
import { svgText } from "./svg-text.ts";

const given: FragmentAmongPublished = {
  ...{ mm: 3, percentile: 0.79, theme: "paper", widthPx: 560 },
  series: [
    { mean: 2, sd: 0.5, n: 216, source: "Known 2005" },
    { mean: 3.32, sd: 0.73, source: "Other 2012" },
  ],
};
const drawn = (more: Partial<FragmentAmongPublished> = {}): string =>
  svgText(fragmentAmongPublished({ ...given, ...more }));

describe("fragmentAmongPublished", () => {
  it("draws mean, spread and this piece by one ruler", () => {
    const text = drawn();
    const zero = Number(/data-part="ruler" d="M([\d.]+)/.exec(text)?.[1]);
    const piece = Number(/data-part="fragment" d="M([\d.]+)/.exec(text)?.[1]);
    const mean = Number(/data-part="mean" cx="([\d.]+)"/.exec(text)?.[1]);
    const [, from, wide] = /data-part="sd-2" x="([\d.]+)"[^>]* width="([\d.]+)"/.exec(text) ?? [];
    const perMm = (piece - zero) / 3;
    expect((mean - zero) / perMm).toBeCloseTo(2, 2);
    expect((Number(from) - zero) / perMm).toBeCloseTo(1, 2);
    expect(Number(wide) / perMm).toBeCloseTo(2, 2);
  });

  it("says the numbers in words, with n where it is printed", () => {
    expect(fragmentAmongPublished(given).alternative).toBe(
      "Length of the piece among published ones. 3.0 mm; 79 % are shorter, were each series normal. Known 2005: 2 mm, SD 0.5, n 216. Other 2012: 3.32 mm, SD 0.73.",
    );
    expect(drawn()).toContain(">this piece 3.0 mm: 79 % are shorter</text>");
  });

  it.each(["paper", "dark", "print"] as const)("keeps every word clear on %s for any piece and series", (theme) => {
    const one = fc.record({
      mean: fc.double({ min: 0.5, max: 6, noNaN: true }),
      sd: fc.double({ min: 0.05, max: 3, noNaN: true }),
      source: fc.constantFrom("Known 2005", "a series with a long name from a clinic 2012"),
    });
    const mm = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(mm, fc.array(one, { maxLength: 5 }), fc.constantFrom(1, 1.4), (long, series, letters) => {
        expectClear(fragmentAmongPublished({ ...given, theme, mm: long, series, letters }));
      }),
      { numRuns: 30 },
    );
  });
});
