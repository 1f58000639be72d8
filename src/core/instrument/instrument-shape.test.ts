import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import type { Instrument } from "./instrument-fields.ts";
import { diameterAt, instrumentShape } from "./instrument-shape.ts";

const faultsOf = (instrument: Instrument, path?: string) => {
  try {
    instrumentShape(instrument, path);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown.faults.map((fault) => fault.path);
    throw thrown;
  }
  return [];
};

describe("the shape of an instrument", () => {
  // D(x) = D0 + taper x: hand calculation, exact to rounding.
  it.each([
    [25, 0.02, 3, 0.31],
    [25, 0.02, 16, 0.57],
    [25, 0.06, 3, 0.43],
    [25, 0.06, 16, 1.21],
    [30, 0.09, 3, 0.57],
    [30, 0.09, 5, 0.75],
  ])("size %d taper %d at %d mm is %d mm thick (C1)", (size, taper, at, mm) => {
    expect(diameterAt(instrumentShape({ size, taper }), at)).toBeCloseTo(mm, 9);
  });

  it("is the same by size and by tip, and keeps its diameter beyond the working part (C1)", () => {
    const shape = instrumentShape({ tipMm: 0.25, taper: 0.06, lengthMm: 25 });
    expect(shape).toEqual(instrumentShape({ size: 25, taper: 0.06, lengthMm: 25 }));
    expect(diameterAt(shape, 20)).toBe(diameterAt(shape, 16));
    expect(diameterAt(shape, -1)).toBe(0.25);
  });

  it("runs straight between the stations of a profile, from its tip (C1)", () => {
    const profile = [
      { atMm: 4, diameterMm: 0.57 },
      { atMm: 14, diameterMm: 1.07 },
    ];
    const shape = instrumentShape({ size: 25, profile });
    expect([0, 2, 4, 9, 14].map((at) => diameterAt(shape, at))).toEqual(
      [0.25, 0.41, 0.57, 0.82, 1.07].map((mm) => expect.closeTo(mm, 9)),
    );
    expect(shape.workingMm).toBe(14);
  });

  it("stops widening at its cap, whether it comes by taper or by stations (C1)", () => {
    const shape = instrumentShape({ size: 25, taper: 0.06, maxDiameterMm: 1 });
    // 0.25 + 0.06 x = 1 at x = 12.5.
    expect([12, 12.5, 13, 16].map((at) => diameterAt(shape, at))).toEqual([expect.closeTo(0.97, 9), 1, 1, 1]);
    const profile = [
      { atMm: 0, diameterMm: 0.2 },
      { atMm: 8, diameterMm: 1.2 },
      { atMm: 16, diameterMm: 0.4 },
    ];
    const barrel = instrumentShape({ profile, maxDiameterMm: 0.8 });
    // Rises by 0.125 a mm to 4.8 mm, falls by 0.1 a mm from 12 mm on.
    expect([4, 4.8, 8, 12, 14].map((at) => diameterAt(barrel, at))).toEqual(
      [0.7, 0.8, 0.8, 0.8, 0.6].map((mm) => expect.closeTo(mm, 9)),
    );
  });

  it.each<[string, Instrument, string[]]>([
    ["nothing", {}, ["taper", "size"]],
    [
      "two tips and two tapers",
      { size: 25, tipMm: 0.25, taper: 0.02, profile: [{ atMm: 3, diameterMm: 0.3 }] },
      ["tipMm", "profile"],
    ],
    ["a working part longer than itself", { size: 25, taper: 0.02, workingMm: 26, lengthMm: 25 }, ["workingMm"]],
    ["itself shorter than the usual working part", { size: 25, taper: 0.02, lengthMm: 15 }, ["lengthMm"]],
    ["a taper to less than nothing", { size: 25, taper: -0.02 }, ["taper"]],
    ["a taper to over 2 mm", { size: 25, taper: 0.12 }, ["taper"]],
    ["a cap thinner than the tip", { size: 25, taper: 0.02, maxDiameterMm: 0.2 }, ["maxDiameterMm"]],
    ["a profile without its tip", { profile: [{ atMm: 1, diameterMm: 0.3 }] }, ["size"]],
    ["a profile against its size", { size: 25, profile: [{ atMm: 0, diameterMm: 0.3 }] }, ["profile[0].diameterMm"]],
    ["a profile against its tip", { tipMm: 0.2, profile: [{ atMm: 0, diameterMm: 0.3 }] }, ["profile[0].diameterMm"]],
    ["a profile that ends early", { size: 25, workingMm: 16, profile: [{ atMm: 9, diameterMm: 0.6 }] }, ["profile"]],
    ["a profile longer than itself", { size: 25, lengthMm: 21, profile: [{ atMm: 25, diameterMm: 0.6 }] }, ["profile"]],
    [
      "stations out of order, too thin and too thick",
      {
        size: 25,
        profile: [
          { atMm: 4, diameterMm: 0 },
          { atMm: 4, diameterMm: 2.1 },
        ],
      },
      ["profile[0].diameterMm", "profile[1].atMm", "profile[1].diameterMm"],
    ],
  ])("refuses %s, with every fault (C3)", (_, instrument, paths) => {
    expect(faultsOf(instrument)).toEqual(paths);
    expect(faultsOf(instrument, "uses[1].instrument")).toEqual(paths.map((path) => `uses[1].instrument.${path}`));
  });

  it.each<[string, Instrument]>([
    ["a cap that keeps a wide taper under 2 mm", { size: 25, taper: 0.12, maxDiameterMm: 1.2 }],
    ["a short working part", { size: 25, taper: 0.12, workingMm: 9, lengthMm: 15 }],
    ["exactly 2 mm", { size: 40, taper: 0.1 }],
  ])("takes %s (C3)", (_, instrument) => {
    expect(faultsOf(instrument)).toEqual([]);
  });
});
