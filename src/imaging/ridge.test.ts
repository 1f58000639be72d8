import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { FilmPixels } from "./film-pixels.ts";
import { type RidgeOptions, ridge, ridgeCost, ridgeOfStrength, ridgeStrength } from "./ridge.ts";

const bits = 16;
const full = 2 ** bits - 1;
/** A film from what its grey is at each place, from 0 to 1. */
function film(columns: number, rows: number, grey: (column: number, row: number) => number): FilmPixels {
  const samples = Uint16Array.from({ length: columns * rows }, (_, index) =>
    Math.round(full * grey(index % columns, Math.floor(index / columns))),
  );
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return { columns, rows, bitsStored: bits, samples, photometric: "MONOCHROME2", technical };
}
const largest = (values: Float32Array) => values.reduce((most, value) => Math.max(most, value), 0);
const refusal = expect.objectContaining({ code: "input.impossible" });

describe("ridgeStrength", () => {
  const [columns, rows, middle] = [121, 61, 30 * 121 + 60];
  const bar = (width: number, depth = 1) =>
    film(columns, rows, (column) => 1 - depth * (Math.abs(column - 60) <= (width - 1) / 2 ? 1 : 0));
  const atMiddle = (of: FilmPixels, options: RidgeOptions) => ridgeStrength(of, options)[middle] ?? 0;

  // The second derivative of a bar of width w under a Gaussian is (w / sigma^3) phi(w / 2 sigma) on its middle. Differences
  // over one pixel stand for it and pixels are a pixel wide: 2 % at sigma 3, less above.
  it.each([
    [7, 3],
    [13, 6.5],
    [13, 4],
    [13, 10],
  ])("is (w / s) phi(w / 2s) on a full-range bar of width %d at sigma %d", (width, sigma) => {
    const u = width / sigma;
    const known = (u * Math.exp(-(u * u) / 8)) / Math.sqrt(2 * Math.PI);
    const found = atMiddle(bar(width), { line: "dark", scalesPx: [sigma] });
    expect(Math.abs(found / known - 1)).toBeLessThan(0.02);
  });

  // Whose maximum over sigma is at w / 2.
  it.each([9, 13, 21])("is strongest on a bar of width %d at half of it", (width) => {
    const scales = [0.25, 0.35, 0.5, 0.7, 0.9].map((share) => share * width);
    const found = scales.map((scale) => atMiddle(bar(width), { line: "dark", scalesPx: [scale] }));
    expect(found.indexOf(Math.max(...found))).toBe(2);
  });

  it("takes the strongest of its scales", () => {
    const one = (scalesPx: number[]) => ridgeStrength(bar(9), { line: "dark", scalesPx });
    const [narrow, wide, both] = [one([2]), one([6]), one([2, 6])];
    expect([...both]).toEqual([...narrow].map((value, at) => Math.max(value, wide[at] ?? 0)));
  });

  it("is proportional to the contrast", () => {
    const [faint, strong] = [bar(9, 0.2), bar(9, 0.8)].map((of) => atMiddle(of, { line: "dark", scalesPx: [4] }));
    // Grey is rounded to one in 65,535.
    expect((strong ?? 0) / (faint ?? 1)).toBeCloseTo(4, 3);
  });

  it("sees dark lines as dark ones, bright ones as bright ones, and MONOCHROME1 the other way round", () => {
    const dark = bar(9);
    const bright = film(columns, rows, (column) => (Math.abs(column - 60) <= 4 ? 1 : 0));
    const at = (of: FilmPixels, line: "dark" | "bright") => atMiddle(of, { line, scalesPx: [4] });
    expect(at(dark, "dark")).toBeCloseTo(at(bright, "bright"), 6);
    expect([at(dark, "bright"), at(bright, "dark")]).toEqual([0, 0]);
    expect(at({ ...bright, photometric: "MONOCHROME1" }, "dark")).toBeCloseTo(at(dark, "dark"), 6);
  });

  it("looks for lines half as wide on a small picture", () => {
    const grey = (column: number) => 0.6 - 0.2 * Math.exp(-(((column % 40) - 20) ** 2));
    const [small, large] = [film(120, 499, grey), film(500, 500, grey)];
    const [asUsual, asSmall] = [large, small].map((of) => ridgeStrength(of, { line: "dark" }));
    expect([...(asSmall ?? [])]).toEqual([...ridgeStrength(small, { line: "dark", scalesPx: [1, 2, 4] })]);
    expect([...(asUsual ?? [])]).toEqual([...ridgeStrength(large, { line: "dark", scalesPx: [2, 4, 8] })]);
  });

  it("turns with the film", () => {
    const grey = (column: number, row: number) => (Math.abs(column - 20 - 0.5 * row) < 3 ? 0.2 : 0.7);
    const [upright, turned] = [film(40, 40, grey), film(40, 40, (column, row) => grey(row, column))].map((of) =>
      ridgeStrength(of, { line: "dark", scalesPx: [2, 3] }),
    );
    upright?.forEach((value, index) => {
      expect(turned?.[(index % 40) * 40 + Math.floor(index / 40)]).toBeCloseTo(value, 6);
    });
  });

  const reference: {
    columns: number;
    rows: number;
    bitsStored: number;
    scalesPx: number[];
    samples: number[];
    strength: number[];
    bend: number[];
    sato: number[];
  } = JSON.parse(readFileSync(new URL("../../test/reference/ridge/answers.json", import.meta.url), "utf8"));
  // The borders are continued in another way by each program, and left out.
  const inside = (values: ArrayLike<number>): number[] =>
    Array.from(values).filter((_, at) => {
      const [column, row] = [at % reference.columns, Math.floor(at / reference.columns)];
      return column >= 12 && row >= 12 && column < reference.columns - 12 && row < reference.rows - 12;
    });
  const ofReference = (): number[] => {
    const made = { ...film(1, 1, () => 0), ...reference, samples: Uint16Array.from(reference.samples) };
    return inside(ridgeStrength(made, { line: "dark", scalesPx: reference.scalesPx }));
  };

  // SciPy differentiates the Gaussian itself, here the smoothed film is differenced: that smooths by a sixth of a pixel
  // squared more, 3 % of the strongest at sigma 3. It looks aside between pixels, here the nearest pixel is taken: that
  // matters in few places, at the ends of lines and where two meet.
  it("agrees with SciPy's Gaussian derivatives, and with how evenly they rise", () => {
    const known = inside(reference.strength);
    const apart = ofReference().map((value, at) => Math.abs(value - (known[at] ?? 0)) / Math.max(...known));
    const ranked = apart.sort((a, b) => a - b);
    expect(ranked[Math.floor(0.99 * ranked.length)]).toBeLessThan(0.03);
    expect(ranked.at(-1)).toBeLessThan(0.2);
  });

  // Evenness takes away and never adds. scikit-image differences over two pixels: 4 % of the strongest at sigma 3.
  it.each(["bend", "sato"] as const)(
    "is nowhere above and at its strongest the same as %s of SciPy and scikit-image",
    (name) => {
      const [found, known] = [ofReference(), inside(reference[name])];
      const strongest = Math.max(...known);
      found.forEach((value, at) => {
        expect(value).toBeLessThan((known[at] ?? 0) + 0.05 * strongest);
      });
      expect(Math.abs(Math.max(...found) / strongest - 1)).toBeLessThan(0.05);
    },
  );

  it("is 0 at the foot and the head of an edge, sharp or smooth, whichever way it lies", () => {
    for (const softness of [0.01, 3, 8])
      for (const turn of [0, 0.4, 1.2, Math.PI / 2]) {
        const away = (column: number, row: number) => (column - 45) * Math.cos(turn) + (row - 45) * Math.sin(turn);
        const edge = film(90, 90, (column, row) => 0.2 + 0.5 / (1 + Math.exp(-away(column, row) / softness)));
        for (const line of ["dark", "bright"] as const) {
          const found = ridgeStrength(edge, { line, scalesPx: [2, 4, 8] });
          // Along the borders half of what lies aside is continued, not seen.
          const within = [...found].filter((_, at) => Math.hypot((at % 90) - 45, Math.floor(at / 90) - 45) < 25);
          expect(Math.max(...within)).toBeLessThan(0.004);
        }
      }
  });

  it("is strongest on a faint canal within a bright root, and not beside the root", () => {
    const middle = (row: number) => 60 + 6 * Math.sin(row / 30);
    const root = film(120, 160, (column, row) => {
      const off = Math.abs(column - middle(row));
      return 0.2 + 0.6 / (1 + Math.exp((off - 22) / 2)) - 0.05 * Math.exp(-((off / 3) ** 2));
    });
    const found = ridge(root, { line: "dark" });
    for (let row = 20; row < 140; row += 1) {
      const line = [...found.subarray(row * 120, row * 120 + 120)];
      expect(Math.abs(line.indexOf(Math.max(...line)) - middle(row))).toBeLessThan(1.5);
    }
  });

  it("is the same in parts as at once", () => {
    const grey = (column: number, row: number) => 0.5 + 0.2 * Math.sin(column / 5) * Math.cos(row / 4);
    const made = film(50, 47, grey);
    const options = { line: "dark", scalesPx: [1.5, 4] } as const;
    const parts = [0, 1, 20, 46].map((from, at, all) =>
      ridgeStrength(made, { ...options, rows: { from, to: all[at + 1] ?? 47 } }),
    );
    expect(parts.flatMap((part) => [...part])).toEqual([...ridgeStrength(made, options)]);
  });

  it("tells its progress after each scale", () => {
    const told: number[] = [];
    ridgeStrength(bar(9), { line: "dark", scalesPx: [1, 2, 3, 4], onProgress: (done) => told.push(done) });
    expect(told).toEqual([0.25, 0.5, 0.75, 1]);
  });

  it("finds nothing where no line fits", () => {
    for (const [columns, rows] of [
      [1, 1],
      [2, 9],
      [9, 2],
    ] as const)
      expect(
        largest(
          ridgeStrength(
            film(columns, rows, (column) => column % 2),
            { line: "dark" },
          ),
        ),
      ).toBe(0);
  });

  it.each<[string, Partial<RidgeOptions>]>([
    ["no scale", { scalesPx: [] }],
    ["a scale below 0.5", { scalesPx: [0.4] }],
    ["a scale above 64", { scalesPx: [65] }],
    ["a scale that is no number", { scalesPx: [Number.NaN] }],
    ["no rows", { rows: { from: 3, to: 3 } }],
    ["rows outside", { rows: { from: 0, to: 62 } }],
    ["rows before the first", { rows: { from: -1, to: 3 } }],
    ["half a row", { rows: { from: 0.5, to: 3 } }],
  ])("refuses %s", (_, options) => {
    expect(() => ridgeStrength(bar(9), { line: "dark", ...options })).toThrow(refusal);
  });
});

describe("ridge", () => {
  it("is 0 on a level film and on one that slopes evenly, up to its borders", () => {
    // Slopes in whole samples, so that no rounding makes steps.
    for (const slope of [() => 0.3, (column: number, row: number) => (1000 + 300 * column + 100 * row) / full])
      expect(largest(ridge(film(90, 70, slope), { line: "dark", scalesPx: [1, 3, 8] }))).toBeLessThan(1e-6);
  });

  it("is 1 on the strongest line and between 0 and 1 elsewhere", () => {
    const found = ridge(
      film(60, 40, (column) => (column === 30 ? 0.1 : 0.6)),
      { line: "dark" },
    );
    expect(largest(found)).toBe(1);
    expect(found.every((value) => value >= 0 && value <= 1)).toBe(true);
  });

  it("does not blow noise up to a line", () => {
    expect(largest(ridgeOfStrength(Float32Array.of(0, 0.0001)))).toBeCloseTo(0.1, 6);
  });
});

describe("ridgeCost", () => {
  it("falls from 1 beside a line to 1/5 on the strongest, and is half at 0.25", () => {
    const costs = ridgeCost(Float32Array.of(0, 0.25, 1));
    expect(costs[0]).toBe(1);
    expect(costs[1]).toBeCloseTo(0.5, 6);
    expect(costs[2]).toBeCloseTo(0.2, 6);
  });
});
