import { describe, expect, it } from "vitest";
import { splitsWithShare } from "./denominators.ts";

describe("splits that a printed share allows", () => {
  // Spili 2005: 134 of 146 healed with a fragment, 86.7 % with a lesion before; 138 of 146 without one, 92.9 %.
  // The sizes of the groups were worked out from the percentages alone: 15, 30, 45, 60, 75, 83 or 90, and 14, 28 ..
  it("of the matched series with a fragment are those worked out by hand (C10)", () => {
    const splits = splitsWithShare({ events: 134, n: 146 }, 0.867);
    expect(splits.map(({ inside }) => inside.n)).toEqual([15, 30, 45, 60, 75, 83, 90]);
    expect(splits[0]).toEqual({ inside: { events: 13, n: 15 }, outside: { events: 121, n: 131 } });
  });

  it("of the matched series without a fragment begin as those worked out by hand (C10)", () => {
    const sizes = splitsWithShare({ events: 138, n: 146 }, 0.929).map(({ inside }) => inside.n);
    expect(sizes.slice(0, 8)).toEqual([14, 28, 42, 56, 70, 84, 85, 98]);
    // The strata of both arms are unequal: no size is allowed in both.
    const others = splitsWithShare({ events: 134, n: 146 }, 0.867).map(({ inside }) => inside.n);
    expect(sizes.filter((n) => others.includes(n))).toEqual([]);
  });

  it("add up to the whole and print as the share (C10)", () => {
    for (const { inside, outside } of splitsWithShare({ events: 30, n: 40 }, 0.8)) {
      expect([inside.events + outside.events, inside.n + outside.n]).toEqual([30, 40]);
      expect((inside.events / inside.n).toFixed(3)).toBe("0.800");
      expect(outside.events).toBeLessThanOrEqual(outside.n);
    }
  });
});
