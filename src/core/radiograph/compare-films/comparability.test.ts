import { describe, expect, it } from "vitest";
import { mm } from "../../units.ts";
import { type Geometry, reasonsAgainst, residualNear, residualOf, stretchOf } from "./comparability.ts";
import { type Homography, still } from "./homography.ts";
import { placeAt } from "./homography-of-landmarks.ts";
import { areaRatioOf } from "./lesion-change.ts";
import { regionOf } from "./region.ts";

const shift = (column: number, right: number, down = 0) => ({ at: placeAt(column, 0), right, down });

describe("whether two films can be compared (C5)", () => {
  const fine: Geometry = {
    residualPx: 4.9,
    residualMm: undefined,
    stretch: 1.09,
    correlation: 0.9,
    overlap: 0.9,
    shifts: { shifts: [shift(0, 1)], looked: 2 },
  };

  it("they can where nothing speaks against it", () => {
    expect(reasonsAgainst(fine)).toEqual([]);
    expect(reasonsAgainst({ ...fine, residualPx: 9, residualMm: 0.19 })).toEqual([]);
  });

  it.each<[string, Partial<Geometry>]>([
    ["5.1 px off, over 5 px", { residualPx: 5.1 }],
    ["0.21 mm off, over 0.2 mm", { residualPx: 3, residualMm: 0.21 }],
    ["stretched by 11 % against the other, over 10 %", { stretch: 1.11 }],
    ["correlate by 0.59", { correlation: 0.59 }],
    ["share 29 % of the first; 30 %", { overlap: 0.29 }],
    ["Of 3 pieces of the first film 1 are found", { shifts: { shifts: [shift(0, 1)], looked: 3 } }],
    ["No piece", { shifts: { shifts: [], looked: 0 } }],
  ])("they can't: %s", (says, change) => {
    expect(reasonsAgainst({ ...fine, ...change })).toEqual([expect.stringContaining(says)]);
  });
});

it("the residual is the root mean square of the best nine tenths, and near a place of the nearest (C4)", () => {
  const shifts = [...Array.from({ length: 9 }, (_, at) => shift(at, 3, 4)), shift(50, 40)];
  expect(residualOf(shifts)).toBeCloseTo(5, 12);
  expect(residualOf([])).toBe(0);
  const mixed = [
    ...Array.from({ length: 6 }, (_, at) => shift(at, 1)),
    ...shifts.map((one) => ({ ...one, at: placeAt(900, 0) })),
  ];
  expect(residualNear(mixed, placeAt(0, 0))).toBe(1);
  expect(residualNear(mixed, placeAt(900, 0))).toBe(5);
});

describe("how unevenly a map stretches (C5)", () => {
  it.each<[string, Homography, number]>([
    ["nothing", still, 1],
    ["a turn by 30 degrees and twice the size", [Math.sqrt(3), -1, 5, 1, Math.sqrt(3), 5, 0, 0, 1], 1],
    ["1.2 to the right and 0.8 down", [1.2, 0, 0, 0, 0.8, 0, 0, 0, 1], 1.5],
    ["a shear by 1: the golden ratio squared", [1, 1, 0, 0, 1, 0, 0, 0, 1], ((1 + Math.sqrt(5)) / 2) ** 2],
    // Along u the map is u / (1 + u/1000): slope 1 at 0 and 1/1.21 at 100, which is the smallest of all.
    ["perspective", [1, 0, 0, 0, 1, 0, 1e-3, 0, 1], 1.21],
  ])("%s: %d", (_, map, stretch) => {
    expect(stretchOf(map, { columns: 100, rows: 0 })).toBeCloseTo(stretch, 6);
  });
});

describe("the ratio of areas (C6)", () => {
  const round = (radius: number, column = 200, row = 150) =>
    Array.from({ length: 60 }, (_, at) => ({
      x: mm(column + radius * Math.cos((at * Math.PI) / 30)),
      y: mm(row + radius * Math.sin((at * Math.PI) / 30)),
    }));
  const errors = { sigmaPx: 0, residualPx: 0 };

  it("is that of the outlines brought back: half the radius is a quarter, whatever the films' scale", () => {
    const twice: Homography = [2, 0, 10, 0, 2, -30, 0, 0, 1];
    const { ratio, interval } = areaRatioOf(round(40), round(40, 410, 270), twice, errors);
    expect(ratio).toBeCloseTo(0.25, 12);
    expect(interval).toEqual({ low: expect.closeTo(0.25, 12), high: expect.closeTo(0.25, 12), level: 0.95 });
  });

  // A regular polygon of n corners: sigma of the area is s r sin(2 pi / n) sqrt(n); two alike add in squares.
  it("has an interval of both outlines' clicks and of the residual", () => {
    const share = (1.5 * 40 * Math.sin(Math.PI / 30) * Math.sqrt(60)) / (30 * 40 ** 2 * Math.sin(Math.PI / 30));
    const clicks = areaRatioOf(round(40), round(40), still, { sigmaPx: 1.5, residualPx: 0 }).interval;
    expect(Math.log(clicks.high) / 1.959964).toBeCloseTo(Math.SQRT2 * share, 6);
    const left = areaRatioOf(round(40), round(40), still, { sigmaPx: 0, residualPx: 2 }).interval;
    expect(Math.log(left.high) / 1.959964).toBeCloseTo((Math.SQRT2 * 2) / (2 * 40), 3);
    expect(left.low).toBeCloseTo(1 / left.high, 12);
  });
});

it("a region is what lies within the outlines and outside those left out", () => {
  const square = (from: number, to: number) => [
    placeAt(from, from),
    placeAt(to, from),
    placeAt(to, to),
    placeAt(from, to),
  ];
  const size = { columns: 30, rows: 20 };
  const count = (region: { counts: Uint8Array }) => region.counts.reduce((sum, one) => sum + one, 0);
  expect(count(regionOf(size, [], []))).toBe(600);
  expect(count(regionOf(size, [square(1.5, 11.5)], []))).toBe(100);
  expect(count(regionOf(size, [square(1.5, 11.5)], [square(3.5, 5.5)]))).toBe(96);
  expect(count(regionOf(size, [square(-5.5, 9.5)], []))).toBe(100);
});
