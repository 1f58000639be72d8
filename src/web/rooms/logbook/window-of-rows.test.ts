import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { windowOfRows } from "./window-of-rows.ts";

describe("the window of rows", () => {
  it("draws few of many", () => {
    const { first, last } = windowOfRows(10_000, 40, 200_000, 800);
    expect([first, last]).toEqual([4_988, 5_032]);
  });

  it("holds every row in sight, and its spaces fill up the rest", () => {
    const wide = fc.record({
      count: fc.nat(10_000),
      scroll: fc.nat(400_000),
      height: fc.integer({ min: 1, max: 3_000 }),
    });
    fc.assert(
      fc.property(wide, ({ count, scroll, height }) => {
        const { first, last, abovePx, belowPx } = windowOfRows(count, 40, scroll, height);
        expect(abovePx + (last - first) * 40 + belowPx).toBe(count * 40);
        for (const seen of [scroll, scroll + height - 1].map((px) => Math.floor(px / 40)))
          if (seen < count) expect(seen >= first && seen < last).toBe(true);
      }),
    );
  });
});
