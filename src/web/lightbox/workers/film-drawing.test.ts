import { describe, expect, it } from "vitest";
import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { plainLook } from "../kernels/film-look.ts";
import { FilmDrawing } from "./film-drawing.ts";

/** Grey is the sample itself: a window over 8 bits, one grey a sample. */
const window = { centre: 128, width: 256, invert: false };
const film = (columns: number, rows: number, sample: (column: number, row: number) => number): FilmPixels => ({
  ...{ columns, rows, bitsStored: 8, photometric: "MONOCHROME2" },
  samples: Uint16Array.from({ length: columns * rows }, (_, at) => sample(at % columns, Math.floor(at / columns))),
  technical: { sourceFormat: "png", wasColour: false, lossy: false },
});
const ramp = film(90, 60, (column, row) => 20 + column + row);
const greysOf = (pixels: Uint32Array) => Array.from(pixels, (pixel) => pixel & 0xff);
const look = (more: Partial<typeof plainLook>) => ({ ...plainLook, ...more });

describe("a film drawn", () => {
  it("shows its samples through the window, opaque and grey", () => {
    const { columns, rows, pixels } = new FilmDrawing(ramp).draw({ window, look: plainLook });
    expect([columns, rows]).toEqual([90, 60]);
    expect(greysOf(pixels)).toEqual([...ramp.samples]);
    const [first = 0] = pixels;
    expect(first).toBe(0xff000000 + 20 * 0x010101);
  });

  it("exchanges black and white", () => {
    const { pixels } = new FilmDrawing(ramp).draw({ window: { ...window, invert: true }, look: plainLook });
    expect(greysOf(pixels)).toEqual(Array.from(ramp.samples, (sample) => 255 - sample));
  });

  it("shows each look as it is asked for, and the plain film again after it", () => {
    const edge = film(80, 40, (column) => (column < 40 ? 80 : 160));
    const drawing = new FilmDrawing(edge);
    const plain = drawing.draw({ window, look: plainLook }).pixels;
    const sharp = drawing.draw({ window, look: look({ sharpening: { amount: 1, radiusPx: 2 } }) }).pixels;
    const wider = drawing.draw({ window, look: look({ sharpening: { amount: 1, radiusPx: 4 } }) }).pixels;
    const beside = (pixels: Uint32Array) => greysOf(pixels).slice(39, 41);
    expect(beside(sharp)[0]).toBeLessThan(80);
    expect(beside(sharp)[1]).toBeGreaterThan(160);
    expect(wider).not.toEqual(sharp);
    expect(drawing.draw({ window, look: plainLook }).pixels).toEqual(plain);
    expect(drawing.draw({ window, look: look({ sharpening: { amount: 1, radiusPx: 2 } }) }).pixels).toEqual(sharp);
  });

  it("draws every third pixel of every third row", () => {
    const { columns, rows, pixels } = new FilmDrawing(ramp).drawThin({ window, look: plainLook }, 3);
    expect([columns, rows]).toEqual([30, 20]);
    expect(greysOf(pixels)).toEqual([...film(30, 20, (column, row) => 20 + 3 * column + 3 * row).samples]);
  });

  it("counts the pixels at the edges that do not come out even", () => {
    const { columns, rows } = new FilmDrawing(film(7, 5, () => 9)).drawThin({ window, look: plainLook }, 2);
    expect([columns, rows]).toEqual([4, 3]);
  });

  it("sharpens a thin film over the same stretch of film", () => {
    // A soft edge, so that every second pixel knows it as well as all of them.
    const edge = film(160, 80, (column) => Math.round(80 + 80 / (1 + Math.exp((80 - column) / 8))));
    const drawing = new FilmDrawing(edge);
    const shown = { window, look: look({ sharpening: { amount: 2, radiusPx: 4 } }) };
    const row = (pixels: Uint32Array, columns: number) => greysOf(pixels).slice(20 * columns, 21 * columns);
    const whole = row(drawing.draw(shown).pixels, 160);
    const thin = row(drawing.drawThin(shown, 2).pixels, 80);
    for (let column = 4; column < 76; column++)
      expect(Math.abs((thin[column] ?? 0) - (whole[2 * column] ?? 0))).toBeLessThanOrEqual(2);
  });

  it("is the film itself where every pixel is wanted", () => {
    const drawing = new FilmDrawing(ramp);
    expect(drawing.drawThin({ window, look: plainLook }, 1)).toEqual(drawing.draw({ window, look: plainLook }));
  });
});
