import { describe, expect, it } from "vitest";
import { largestToLength } from "./largest-to-length.ts";
import type { InstrumentUse } from "./use-of-step.ts";

const used = (size: number, taper: number, depthMm?: number, more: Partial<InstrumentUse> = {}): InstrumentUse => ({
  ...{ size, taper, alloy: "nickelTitanium", movement: "continuous", ...more },
  ...(depthMm === undefined ? {} : { depthMm }),
});

describe("the largest instrument to length", () => {
  it("is the thickest tip that came all the way; the larger taper rules among equals", () => {
    const [thin, same, wide, short] = [
      used(20, 0.06, 19),
      used(25, 0.04, 19),
      used(25, 0.06, 19.5),
      used(40, 0.04, 18.9),
    ];
    expect(largestToLength([short, thin, wide, same], 19)).toBe(wide);
    expect(largestToLength([short, thin, same], 19)).toBe(same);
  });

  it("is none where the length or the depth is unknown, or the depth counts from elsewhere", () => {
    expect(largestToLength([used(25, 0.06, 19)], undefined)).toBeUndefined();
    expect(largestToLength([used(25, 0.06)], 19)).toBeUndefined();
    expect(largestToLength([used(25, 0.06, 19, { depthFrom: "orifice" })], 19)).toBeUndefined();
    expect(largestToLength([], 19)).toBeUndefined();
  });
});
