import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxBetween,
  type Corner,
  type CropBox,
  isWhole,
  movedBox,
  oppositeCorner,
  resizedBox,
  wholeOf,
} from "./crop-box.ts";
import { filmPoint } from "./film-point.ts";

const film = { columns: 800, rows: 600 };
const coordinate = fc.double({ min: -300, max: 1200, noNaN: true });
const step = fc.record({ columns: fc.integer({ min: -900, max: 900 }), rows: fc.integer({ min: -900, max: 900 }) });
const box: fc.Arbitrary<CropBox> = fc
  .tuple(fc.nat(700), fc.nat(500), fc.integer({ min: 24, max: 100 }), fc.integer({ min: 24, max: 100 }))
  .map(([column, row, columns, rows]) => ({ column, row, columns, rows }));

function expectInside({ column, row, columns, rows }: CropBox) {
  for (const number of [column, row, columns, rows]) expect(Number.isInteger(number)).toBe(true);
  expect(column).toBeGreaterThanOrEqual(0);
  expect(row).toBeGreaterThanOrEqual(0);
  expect(column + columns).toBeLessThanOrEqual(film.columns);
  expect(row + rows).toBeLessThanOrEqual(film.rows);
  expect(Math.min(columns, rows)).toBeGreaterThanOrEqual(24);
}

describe("the part of a picture that becomes a film", () => {
  it("is whole pixels inside the picture between any two corners, or nothing", () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (a, b, c, d) => {
        const found = boxBetween(filmPoint(a, b), filmPoint(c, d), film);
        if (found !== undefined) expectInside(found);
      }),
    );
  });

  it("is the same from either pair of corners", () => {
    expect(boxBetween(filmPoint(100, 200), filmPoint(50, 90), film)).toEqual({
      column: 50,
      row: 90,
      columns: 50,
      rows: 110,
    });
    expect(boxBetween(filmPoint(50, 200), filmPoint(100, 90), film)).toEqual({
      column: 50,
      row: 90,
      columns: 50,
      rows: 110,
    });
  });

  it("is nothing where a side is a slip of the hand", () => {
    expect(boxBetween(filmPoint(100, 100), filmPoint(110, 400), film)).toBeUndefined();
  });

  it("keeps its size when it is moved, and its upper left corner when it is resized", () => {
    fc.assert(
      fc.property(box, step, (start, by) => {
        const moved = movedBox(start, by, film);
        expectInside(moved);
        expect([moved.columns, moved.rows]).toEqual([start.columns, start.rows]);
        const resized = resizedBox(start, by, film);
        expectInside(resized);
        expect([resized.column, resized.row]).toEqual([start.column, start.row]);
      }),
    );
  });

  it("is dragged by any corner while the one across from it stays", () => {
    fc.assert(
      fc.property(box, fc.constantFrom<Corner>(0, 1, 2, 3), (start, corner) => {
        const across = oppositeCorner(start, corner);
        const dragged = oppositeCorner(start, ((corner + 2) % 4) as Corner);
        expect(boxBetween(filmPoint(across.column, across.row), filmPoint(dragged.column, dragged.row), film)).toEqual(
          start,
        );
      }),
    );
  });

  it("knows when nothing is left out", () => {
    expect(isWhole(wholeOf(film), film)).toBe(true);
    expect(isWhole({ ...wholeOf(film), columns: 799 }, film)).toBe(false);
  });
});
