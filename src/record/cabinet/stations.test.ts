import { describe, expect, it } from "vitest";
import { instrumentUse } from "../parts/visit-materials.ts";
import { stationsAtFirst, withStation } from "./stations.ts";

describe("the stations of a variable taper", () => {
  // Size 25 is 0.25 mm at the tip (ISO 3630-1, memory); 0.25 + 0.06 x 16 = 1.21.
  it("begin as the constant taper has them, over 16 mm or its own working part", () => {
    expect(stationsAtFirst({ size: 25, taper: 0.06 })).toEqual([
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 16, diameterMm: 1.21 },
    ]);
    expect(stationsAtFirst({ size: 10, taper: 0, workingMm: 8 })).toEqual([
      { atMm: 0, diameterMm: 0.1 },
      { atMm: 8, diameterMm: 0.1 },
    ]);
  });

  it("never begin wider than the form takes", () => {
    const profile = stationsAtFirst({ size: 160, taper: 0.2, workingMm: 40 });
    const use = { size: 160, taper: 0.2, alloy: "other", movement: "hand", profile };
    expect(instrumentUse.safeParse(use).success).toBe(true);
  });

  it("take one more halfway between the last two", () => {
    const two = [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 16, diameterMm: 1.21 },
    ];
    const three = withStation(two);
    expect(three).toEqual([two[0], { atMm: 8, diameterMm: 0.73 }, two[1]]);
    expect(withStation(three).map(({ atMm }) => atMm)).toEqual([0, 8, 12, 16]);
    expect(withStation([])).toEqual([]);
  });
});
