import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRandom } from "../statistics/seeded-random.ts";
import { type ImagePoint, px } from "../units.ts";
import { type FilmScale, lengthOnFilm } from "./length-on-film.ts";
import { pointsInPlane } from "./points-in-plane.ts";

const at = (column: number, row: number): ImagePoint => ({ column: px(column), row: px(row) });
const square: FilmScale = { mmPerPx: { column: 0.05, row: 0.05 }, relativeSigma: 0.01, sigmaPx: 1 };

describe("pointsInPlane", () => {
  it("takes columns and rows by their own spacing, and keeps order", () => {
    expect(pointsInPlane([at(10, 10), at(0, -4)], { column: 0.1, row: 0.05 })).toEqual([
      { x: 1, y: 0.5 },
      { x: 0, y: -0.2 },
    ]);
  });
});

describe("lengthOnFilm", () => {
  it("C8: of two clicks errs by sqrt(2) clicks and by the scale's share", () => {
    // 300-400-500 triangle: 25 mm; clicks sqrt(2) * 0.05 = 0.0707 mm; scale 1 % of 25 = 0.25 mm.
    const length = lengthOnFilm([at(0, 0), at(300, 400)], square);
    expect(length.mm).toBeCloseTo(25, 12);
    expect(length.clickSigmaMm).toBeCloseTo(0.0707106781, 9);
    expect(length.scaleSigmaMm).toBeCloseTo(0.25, 12);
    expect(length.sigmaMm).toBeCloseTo(Math.hypot(0.0707106781, 0.25), 9);
  });

  it("C8: a click on a straight course adds nothing, and the scale errs once for all of it", () => {
    const three = lengthOnFilm([at(0, 0), at(200, 0), at(400, 0)], square);
    const two = lengthOnFilm([at(0, 0), at(400, 0)], square);
    expect(three.sigmaMm).toBeCloseTo(two.sigmaMm, 12);
    expect(three.scaleSigmaMm).toBeCloseTo(0.2, 12);
  });

  it("C8: a click at a right angle pulls on both axes: variance 1 + 2 + 1 of a click", () => {
    const bent = lengthOnFilm([at(0, 0), at(200, 0), at(200, 200)], square);
    expect(bent.clickSigmaMm).toBeCloseTo(0.05 * 2, 12);
  });

  it("C2: lengths are taken in mm on pixels that are not square", () => {
    const flat: FilmScale = { mmPerPx: { column: 0.1, row: 0.05 }, relativeSigma: 0, sigmaPx: 1 };
    expect(lengthOnFilm([at(0, 0), at(30, 80)], flat).mm).toBeCloseTo(5, 12);
    expect(lengthOnFilm([at(0, 0), at(30, 0)], flat).clickSigmaMm).toBeCloseTo(0.1 * Math.SQRT2, 12);
    expect(lengthOnFilm([at(0, 0), at(0, 30)], flat).clickSigmaMm).toBeCloseTo(0.05 * Math.SQRT2, 12);
  });

  it("leaves the scale's part out where the scale's error isn't known", () => {
    const length = lengthOnFilm([at(0, 0), at(300, 400)], { mmPerPx: square.mmPerPx, sigmaPx: 1 });
    expect(length.scaleSigmaMm).toBeUndefined();
    expect(length.sigmaMm).toBe(length.clickSigmaMm);
  });

  it("takes clicks on one place as no step", () => {
    expect(lengthOnFilm([at(5, 5), at(5, 5), at(5, 105)], square).mm).toBeCloseTo(5, 12);
    expect(lengthOnFilm([at(5, 5), at(5, 5)], square)).toEqual({ mm: 0, sigmaMm: 0, clickSigmaMm: 0, scaleSigmaMm: 0 });
  });

  it("refuses a single point", () => {
    expect(() => lengthOnFilm([at(0, 0)], square)).toThrow(
      expect.objectContaining({ code: "trace.tooFewPoints", faults: [expect.objectContaining({ path: "points" })] }),
    );
    expect(() => lengthOnFilm([], square)).toThrow(expect.objectContaining({ code: "trace.tooFewPoints" }));
  });

  const place = fc.integer({ min: -2000, max: 2000 });
  const course = fc.array(fc.tuple(place, place), { minLength: 2, maxLength: 12 });
  const close = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThan(1e-9 * (1 + Math.abs(b)));

  it("is the same the other way round and turned a quarter with its spacing", () => {
    fc.assert(
      fc.property(course, fc.double({ min: 0.01, max: 0.2, noNaN: true }), (points, row) => {
        const scale: FilmScale = { mmPerPx: { column: 0.05, row }, relativeSigma: 0.01, sigmaPx: 1 };
        const turnedScale: FilmScale = { ...scale, mmPerPx: { column: row, row: 0.05 } };
        const straight = lengthOnFilm(
          points.map(([u, v]) => at(u, v)),
          scale,
        );
        const back = lengthOnFilm(
          [...points].reverse().map(([u, v]) => at(u, v)),
          scale,
        );
        const turned = lengthOnFilm(
          points.map(([u, v]) => at(-v, u)),
          turnedScale,
        );
        for (const other of [back, turned]) {
          close(other.mm, straight.mm);
          close(other.sigmaMm, straight.sigmaMm);
        }
      }),
    );
  });

  it("grows with the film's scale, error and all", () => {
    fc.assert(
      fc.property(course, fc.double({ min: 0.1, max: 10, noNaN: true }), (points, factor) => {
        const clicks = points.map(([u, v]) => at(u, v));
        const larger: FilmScale = { ...square, mmPerPx: { column: 0.05 * factor, row: 0.05 * factor } };
        close(lengthOnFilm(clicks, larger).mm, factor * lengthOnFilm(clicks, square).mm);
        close(lengthOnFilm(clicks, larger).sigmaMm, factor * lengthOnFilm(clicks, square).sigmaMm);
      }),
    );
  });

  it("C8: states the spread that clicking again and again shows", () => {
    const { normal } = seededRandom(20261124);
    const truth = [at(100, 100), at(130, 300), at(220, 420), at(360, 470)];
    const scale: FilmScale = { mmPerPx: { column: 0.06, row: 0.04 }, relativeSigma: 0.01, sigmaPx: 2 };
    const stated = lengthOnFilm(truth, scale).sigmaMm;
    const lengths = Array.from({ length: 20_000 }, () => {
      const off = 1 + 0.01 * normal();
      const clicks = truth.map(({ column, row }) => at(column + 2 * normal(), row + 2 * normal()));
      return lengthOnFilm(clicks, { ...scale, mmPerPx: { column: 0.06 * off, row: 0.04 * off } }).mm;
    });
    const mean = lengths.reduce((sum, one) => sum + one, 0) / lengths.length;
    const spread = Math.sqrt(lengths.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (lengths.length - 1));
    // The standard error of a spread from 20 000 trials is 0.5 %; four of them.
    expect(spread / stated).toBeGreaterThan(0.98);
    expect(spread / stated).toBeLessThan(1.02);
  });
});
