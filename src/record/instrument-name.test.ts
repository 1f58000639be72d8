import { describe, expect, it } from "vitest";
import {
  geometryOf,
  type InstrumentGeometry,
  instrumentName,
  instrumentsByName,
  isSameInstrument,
} from "./instrument-name.ts";

const driven = (size: number, taper: number, more: Partial<InstrumentGeometry> = {}): InstrumentGeometry => ({
  ...{ size, taper, alloy: "nickelTitanium", movement: "continuous", ...more },
});
const profile = [
  { atMm: 0, diameterMm: 0.25 },
  { atMm: 16, diameterMm: 1.05 },
];

describe("the name of an instrument", () => {
  it("is size and taper, two figures at least each", () => {
    expect(instrumentName(driven(25, 0.06))).toBe("25/.06");
    expect(instrumentName(driven(8, 0.02))).toBe("08/.02");
    expect(instrumentName(driven(140, 0))).toBe("140/.00");
    expect(instrumentName(driven(17, 0.045))).toBe("17/.045");
    expect(instrumentName(driven(20, 0.1))).toBe("20/.10");
  });

  it("says that a taper varies", () => {
    expect(instrumentName(driven(25, 0.08, { profile }))).toBe("25/v");
  });
});

describe("the instruments of some rows", () => {
  it("are each geometry once, with its rows, in the order of the first ones", () => {
    const rows = [driven(25, 0.06), driven(20, 0.04), { ...driven(25, 0.06), canal: "MB1", seconds: 12 }];
    expect(instrumentsByName(rows).map(({ name, rows: at }) => [name, at])).toEqual([
      ["25/.06", [0, 2]],
      ["20/.04", [1]],
    ]);
  });

  it("that share a name and no geometry are counted on", () => {
    const rows = [
      driven(25, 0.06),
      driven(25, 0.06, { lengthMm: 21 }),
      driven(25, 0.06, { alloy: "heatTreatedNickelTitanium" }),
      driven(25, 0.06, { lengthMm: 21 }),
    ];
    expect(instrumentsByName(rows).map(({ name, rows: at }) => [name, at])).toEqual([
      ["25/.06", [0]],
      ["25/.06 (2)", [1, 3]],
      ["25/.06 (3)", [2]],
    ]);
  });

  it("keep their geometry alone", () => {
    expect(geometryOf({ ...driven(25, 0.06), ...{ canal: "MB1", rpm: 300 } })).toEqual(driven(25, 0.06));
    expect(instrumentsByName([])).toEqual([]);
  });
});

describe("two descriptions", () => {
  it("are of one instrument where neither contradicts the other", () => {
    expect(isSameInstrument(driven(25, 0.06), driven(25, 0.06, { lengthMm: 25, section: "triangle" }))).toBe(true);
    expect(isSameInstrument(driven(25, 0.06, { lengthMm: 21 }), driven(25, 0.06, { lengthMm: 25 }))).toBe(false);
    expect(isSameInstrument(driven(25, 0.06), driven(25, 0.06, { movement: "hand" }))).toBe(false);
    expect(isSameInstrument(driven(25, 0.06, { profile }), driven(25, 0.06, { profile }))).toBe(true);
    expect(isSameInstrument(driven(25, 0.06), driven(25, 0.04))).toBe(false);
  });
});
