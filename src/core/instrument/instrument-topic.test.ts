import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../radiograph/drawn-measures/bent-course-for-tests.ts";
import { answer } from "../topic.ts";
import { instrumentTopic } from "./instrument-topic.ts";

const of = (input: object) => answer(instrumentTopic, input);
const at = (input: object, mm: number) => of(input).profile.find(({ atMm }) => Math.abs(atMm - mm) < 1e-9);

const series = [6, 8, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 110, 120, 130, 140];

describe("an instrument's diameters", () => {
  // ISO 3630-1 (memory): d at 16 mm exceeds the tip's by 0.32 mm for taper .02, for every size of the series.
  it.each(series)("size %d of taper .02 is 0.32 mm thicker at 16 mm (C1)", (size) => {
    expect(at({ size, taper: 0.02 }, 0)?.diameterMm).toBeCloseTo(size / 100, 9);
    expect(at({ size, taper: 0.02 }, 16)?.diameterMm).toBeCloseTo(size / 100 + 0.32, 9);
  });

  // ISO 3630-1 (memory; the six colours in turn seen on a teaching page). A public page gives black for 10, wrongly.
  it.each([
    ["pink grey purple", [6, 8, 10]],
    ["white yellow red blue green black", [15, 20, 25, 30, 35, 40]],
    ["white yellow red blue green black", [45, 50, 55, 60, 70, 80]],
    ["white yellow red blue green black", [90, 100, 110, 120, 130, 140]],
  ])("has the colours %s (C2)", (colours, sizes) => {
    expect(sizes.map((size) => of({ size, taper: 0.02 }).colour).join(" ")).toBe(colours);
  });

  // ISO 3630-1 (memory): 0.02 mm to size 60, 0.04 mm above. So 8 and 10 overlap, 10 and 15 do not, 70 ends below 80.
  it("has the standard's tolerance, so that neighbours overlap or not (C2)", () => {
    const tip = (size: number) => at({ size, taper: 0.02 }, 0) ?? { low: 0, high: 0 };
    expect([tip(8).high, tip(8).low]).toEqual([expect.closeTo(0.1, 9), expect.closeTo(0.06, 9)]);
    expect(tip(8).high).toBeGreaterThan(tip(10).low);
    expect(tip(10).high).toBeLessThan(tip(15).low);
    expect([tip(70).high, tip(80).low]).toEqual([expect.closeTo(0.74, 9), expect.closeTo(0.76, 9)]);
    expect([60, 70].map((size) => of({ size, taper: 0.02 }).toleranceMm)).toEqual([0.02, 0.04]);
  });

  it("is listed every 0.5 mm to the working end and at each station (C1)", () => {
    const places = (input: object) => of(input).profile.map(({ atMm }) => atMm);
    expect(places({ size: 25, taper: 0.06 })).toEqual(Array.from({ length: 33 }, (_, index) => index / 2));
    expect(places({ size: 25, taper: 0.06, workingMm: 1.2 })).toEqual([0, 0.5, 1, 1.2]);
    const profile = [
      { atMm: 0.7, diameterMm: 0.3 },
      { atMm: 1, diameterMm: 0.32 },
      { atMm: 3, diameterMm: 0.5 },
    ];
    expect(places({ size: 25, profile, workingMm: 1 })).toEqual([0, 0.5, 0.7, 1, 3]);
  });

  it("of a custom size is marked, without a colour, with its neighbours' tolerance (C2)", () => {
    const custom = of({ size: 17, taper: 0.04 });
    expect(custom).toMatchObject({ custom: true, toleranceMm: 0.02 });
    expect(custom.colour).toBeUndefined();
    expect(custom.notComputed.map(({ name }) => name)).toEqual(["colour", "found"]);
    expect(custom.cautions.join()).toContain("Size 17 is not in the standard's series");
    expect(of({ tipMm: 0.65, taper: 0.02 }).cautions.join()).toContain("A tip of 0.65 mm");
    expect(of({ tipMm: 0.25, taper: 0.02 })).toMatchObject({ custom: false, colour: "red", cautions: [] });
  });

  it("of a thin custom tip never goes below 0 (C2)", () => {
    expect(at({ tipMm: 0.01, taper: 0.02 }, 0)?.low).toBe(0);
  });

  it("of a profile that ends early says so (C1)", () => {
    const short = of({ size: 25, profile: [{ atMm: 9, diameterMm: 0.7 }] });
    expect(short.profile.at(-1)).toMatchObject({ atMm: 9, diameterMm: 0.7 });
    expect(short.cautions.join()).toContain("The profile ends 9 mm from the tip");
  });
});

describe("the place of a diameter", () => {
  // (0.599 - 0.30) / 0.09 = 3.322 mm; 0.02 mm of tolerance are 0.02 / 0.09 = 0.222 mm of length.
  it("follows from the taper, as sure as the tolerance allows (C4)", () => {
    const { found } = of({ size: 30, taper: 0.09, find: { diameterMm: 0.599 } });
    expect(found?.atMm).toBeCloseTo(3.322, 3);
    expect(found?.interval).toEqual({ low: expect.closeTo(3.1, 6), high: expect.closeTo(3.544, 3), level: 0.95 });
  });

  it("is where the diameter is, on every taper (C4, property)", () => {
    const instrument = fc.record({
      size: fc.constantFrom(...series),
      taper: fc.integer({ min: 1, max: 3 }).map((steps) => steps / 100),
    });
    fc.assert(
      fc.property(instrument, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (input, share) => {
        const placeMm = 16 * share;
        const { found } = of({ ...input, find: { diameterMm: input.size / 100 + input.taper * placeMm } });
        expect(found?.atMm).toBeCloseTo(placeMm, 5);
        expect(found?.interval.low).toBeLessThan(found?.atMm ?? 0);
        expect(found?.interval.high).toBeGreaterThan(found?.atMm ?? 0);
      }),
      { numRuns: 60 },
    );
  });

  it("at the ends of the instrument has an interval that ends with it (C4)", () => {
    expect(of({ size: 25, taper: 0.06, find: { diameterMm: 0.25 } }).found).toEqual({
      atMm: expect.closeTo(0, 6),
      interval: { low: 0, high: expect.closeTo(1 / 3, 6), level: 0.95 },
    });
    // Thinner than the nominal tip, and inside its tolerance.
    expect(of({ size: 25, taper: 0.06, find: { diameterMm: 0.24 } }).found?.atMm).toBeCloseTo(0, 6);
    expect(of({ size: 25, taper: 0.06, find: { diameterMm: 1.22 } }).found?.atMm).toBeCloseTo(16, 6);
  });

  it.each([
    ["thinner than the tip", { size: 25, taper: 0.06, find: { diameterMm: 0.22 } }, "input.impossible"],
    ["thicker than the shaft", { size: 25, taper: 0.06, find: { diameterMm: 1.24 } }, "input.impossible"],
    ["on no taper at all", { size: 25, taper: 0, find: { diameterMm: 0.25 } }, "input.notDeterminable"],
    ["on a capped part", { size: 25, taper: 0.06, maxDiameterMm: 1, find: { diameterMm: 1 } }, "input.notDeterminable"],
    [
      "on both sides of a belly",
      {
        profile: [
          { atMm: 0, diameterMm: 0.3 },
          { atMm: 2, diameterMm: 0.7 },
          { atMm: 4, diameterMm: 0.4 },
        ],
        find: { diameterMm: 0.6 },
      },
      "input.notDeterminable",
    ],
  ])("%s is refused (C4)", (_, input, code) => {
    expect(refusalOf(instrumentTopic, input)).toMatchObject({ code, faults: [{ path: "find.diameterMm" }] });
  });
});

it.each([
  [{ size: 25, taper: 0.02, workingMm: 30, lengthMm: 25 }, "input.impossible", "workingMm"],
  [{ size: 25, taper: 0.2 }, "input.impossible", "taper"],
  [{ size: -25, taper: 0.02 }, "input.invalid", "size"],
  [{ size: 25, taper: "six" }, "input.invalid", "taper"],
])("refuses %#: an instrument that can't be (C3)", (input, code, path) => {
  expect(refusalOf(instrumentTopic, input)).toMatchObject({ code, faults: [{ path }] });
});
