import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeOf, supposedScales, valueAtPlace } from "./supposed-scales.ts";

const scales = supposedScales({ volumeMl: 3, roomM3: 31.2, airChangesPerHour: 60 });
const scale = (name: string) => {
  const found = scales.find((one) => one.name === name);
  if (found === undefined) throw new Error(name);
  return found;
};

describe("supposedScales", () => {
  it("reaches past what is recorded", () => {
    expect(scale("volumeMl").most).toBe(6);
    expect(scale("airChangesPerHour").most).toBe(60);
    expect(supposedScales({}).find(({ name }) => name === "volumeMl")?.most).toBe(2);
  });

  it("lets a closed room and nothing at all be supposed", () => {
    expect(scale("airChangesPerHour").least).toBe(0);
    expect(valueAtPlace(scale("volumeMl"), 0)).toBe(0);
  });

  it("gives back a value that stands on a step, on every scale", () => {
    fc.assert(
      fc.property(fc.constantFrom(...scales), fc.double({ min: 0, max: 1, noNaN: true }), (one, share) => {
        const value = valueAtPlace(one, one.least + share * (one.most - one.least));
        expect(valueAtPlace(one, placeOf(one, value))).toBeCloseTo(value, 2);
      }),
    );
  });

  it("writes steps without a tail of digits, and rates in three figures", () => {
    expect(valueAtPlace(scale("volumeMl"), 0.15000000000000002)).toBe(0.15);
    expect(valueAtPlace(scale("ratePerMin"), Math.log10(0.03181))).toBe(0.0318);
    expect(placeOf(scale("ratePerMin"), 0)).toBe(-2);
  });
});
