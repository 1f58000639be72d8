import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../../refusal.ts";
import { after, areaScaleAt, type Homography, mapped, resized, reversed, scaled, still } from "./homography.ts";
import { homographyOfLandmarks, type Landmark, landmarkResidual, placeAt } from "./homography-of-landmarks.ts";

const small = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
/** Maps as two films of one tooth have them: turned, sheared, shifted, and a little perspective. */
const anyMap = fc
  .tuple(small(0.2), small(0.2), small(80), small(0.2), small(0.2), small(80), small(1e-4), small(1e-4))
  .map(([a, b, c, d, e, f, g, h]): Homography => [1 + a, b, c, d, 1 + e, f, g, h, 1]);
const anyPlace = fc.tuple(small(500), small(500)).map(([u, v]) => placeAt(500 + u, 500 + v));

const corners = [placeAt(100, 80), placeAt(900, 120), placeAt(850, 700), placeAt(60, 640)];
const marked = (map: Homography, places = corners): Landmark[] =>
  places.map((before) => ({ before, after: mapped(map, before) }));

describe("projective maps (C1)", () => {
  it("undone, doubled and resized do what they say, for any map", () => {
    fc.assert(
      fc.property(anyMap, anyPlace, (map, place) => {
        const there = mapped(map, place);
        const back = mapped(reversed(map), there);
        expect(back.column).toBeCloseTo(place.column, 6);
        expect(back.row).toBeCloseTo(place.row, 6);
        const twice = mapped(after(map, map), place);
        expect(twice.column).toBeCloseTo(mapped(map, there).column, 5);
        const half = mapped(resized(map, 0.5), placeAt(place.column / 2, place.row / 2));
        expect(half.column).toBeCloseTo(there.column / 2, 6);
        expect(half.row).toBeCloseTo(there.row / 2, 6);
      }),
      { seed: 1 },
    );
  });

  it("change a small area as a small square shows", () => {
    fc.assert(
      fc.property(anyMap, anyPlace, (map, place) => {
        const step = 1e-3;
        const [o, u, v] = [[0, 0] as const, [step, 0] as const, [0, step] as const].map(([x, y]) =>
          mapped(map, placeAt(place.column + x, place.row + y)),
        );
        if (!o || !u || !v) throw new Error("three places");
        const area = ((u.column - o.column) * (v.row - o.row) - (u.row - o.row) * (v.column - o.column)) / step ** 2;
        expect(areaScaleAt(map, place) / area).toBeCloseTo(1, 3);
      }),
      { seed: 2 },
    );
    expect(areaScaleAt(still, placeAt(3, 4))).toBe(1);
  });

  it("are found from four landmarks exactly, and from more in spite of clicks", () => {
    fc.assert(
      fc.property(anyMap, anyPlace, (map, place) => {
        const found = homographyOfLandmarks(marked(map));
        expect(mapped(found, place).column).toBeCloseTo(mapped(map, place).column, 4);
        expect(mapped(found, place).row).toBeCloseTo(mapped(map, place).row, 4);
      }),
      { seed: 3 },
    );
    const many = Array.from({ length: 36 }, (_, index) => placeAt(100 * (index % 6), 100 * Math.floor(index / 6)));
    const map: Homography = [1.02, -0.08, 12, 0.09, 0.99, -7, 2e-5, -1e-5, 1];
    const off = marked(map, many).map((one, index) => ({
      ...one,
      after: placeAt(one.after.column + (index % 2 ? 1 : -1), one.after.row + (index % 3) - 1),
    }));
    const found = homographyOfLandmarks(off);
    expect(Math.abs(mapped(found, placeAt(250, 250)).column - mapped(map, placeAt(250, 250)).column)).toBeLessThan(0.5);
    expect(landmarkResidual(map, off)).toBeCloseTo(Math.sqrt(1 + 2 / 3), 9);
  });

  // A square seen as this trapezoid: worked by hand from the four equations, h = 1/3.
  it("is the one of a square and a trapezoid", () => {
    const square = [placeAt(0, 0), placeAt(1, 0), placeAt(1, 1), placeAt(0, 1)];
    const trapezoid = [placeAt(0, 0), placeAt(4, 0), placeAt(3, 3), placeAt(1, 3)];
    const map = scaled(homographyOfLandmarks(square.map((before, at) => ({ before, after: trapezoid[at] ?? before }))));
    [4, 2, 0, 0, 6, 0, 0, 1, 1].forEach((value, at) => {
      expect(map[at]).toBeCloseTo(value, 9);
    });
  });

  it.each([
    ["in line", [placeAt(0, 0), placeAt(100, 100), placeAt(200, 200), placeAt(300, 300)], still],
    ["three in line", [placeAt(0, 0), placeAt(100, 0), placeAt(200, 0), placeAt(50, 90)], still],
    ["nearly in line", [placeAt(0, 0), placeAt(100, 0.01), placeAt(200, 0), placeAt(50, 90)], still],
    ["one place", [placeAt(5, 5), placeAt(5, 5), placeAt(5, 5), placeAt(5, 5)], still],
    ["mirrored", corners, [-1, 0, 1000, 0, 1, 0, 0, 0, 1] as Homography],
  ])("%s is refused", (_, places, map) => {
    const attempt = () => homographyOfLandmarks(marked(map, places));
    expect(attempt).toThrow(Refusal);
    expect(attempt).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });
});
