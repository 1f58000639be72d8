import { describe, expect, it } from "vitest";
import { filmGrid } from "./film-grid.ts";

const film = { columns: 1000, rows: 760 };

describe("a grid over a film", () => {
  it("runs in millimetres of its scale", () => {
    // 0.04 mm a pixel: a millimetre is 25 pixels, on the screen 25 at zoom 1.
    const { columns, rows, step } = filmGrid(film, 1, { column: 0.04, row: 0.04 });
    expect(step).toBe("1\u202fmm");
    expect(columns.map(({ at }) => at).slice(0, 3)).toEqual([-0.5, 24.5, 49.5]);
    // 40 mm by 30.4 mm.
    expect([columns.length, rows.length]).toEqual([41, 31]);
    expect(columns.at(-1)?.at).toBe(999.5);
  });

  it("has every fifth line strong", () => {
    const { columns } = filmGrid(film, 1, { column: 0.04, row: 0.04 });
    expect(columns.flatMap(({ isStrong }, index) => (isStrong ? [index] : []))).toEqual([
      0, 5, 10, 15, 20, 25, 30, 35, 40,
    ]);
  });

  it.each([
    [0.2, "5\u202fmm"],
    [0.5, "2\u202fmm"],
    [0.7, "1\u202fmm"],
    [2, "0.5\u202fmm"],
    [30, "0.5\u202fmm"],
    [0.02, "20\u202fmm"],
  ])("at zoom %d keeps its lines apart with a step of %s", (zoom, step) => {
    expect(filmGrid(film, zoom, { column: 0.04, row: 0.04 }).step).toBe(step);
  });

  it("runs in pixels where there is no scale", () => {
    const { columns, step } = filmGrid(film, 1);
    expect([step, columns[1]?.at]).toEqual(["20\u202fpx", 19.5]);
  });

  it("honours unequal scales", () => {
    const { columns, rows } = filmGrid(film, 1, { column: 0.04, row: 0.02 });
    expect((rows[1]?.at ?? 0) + 0.5).toBeCloseTo(2 * ((columns[1]?.at ?? 0) + 0.5), 9);
  });

  it("never puts lines nearer than they can be told apart while a step is left", () => {
    for (let zoom = 0.05; zoom < 20; zoom *= 1.3) {
      const { columns } = filmGrid(film, zoom, { column: 0.03, row: 0.03 });
      const between = ((columns[1]?.at ?? 0) - (columns[0]?.at ?? 0)) * zoom;
      expect(between).toBeGreaterThanOrEqual(16);
    }
  });
});
