import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "./decode-film.ts";
import type { FilmWindow } from "./film-pixels.ts";
import { greyAt, windowToGrey } from "./window-to-grey.ts";

const shapes = ["linear", "linearExact", "sigmoid"] as const;
const window = (center: number, width: number, shape: FilmWindow["function"]): FilmWindow => ({
  center,
  width,
  function: shape,
});

describe("greyAt", () => {
  // DICOM PS3.3 C.11.2.1.2.1, worked to 0..255 outside this code (8 digits, hence the tolerance).
  it.each([
    [0, 0],
    [1, 0.06227106],
    [2047, 127.46886447],
    [2048, 127.53113553],
    [4094, 254.93772894],
    [4095, 255],
  ])("linear 2048/4096 takes %d to %d (VOI-LINEAR)", (value, grey) => {
    expect(greyAt(value, window(2048, 4096, "linear"))).toBeCloseTo(grey, 7);
  });

  // The worked cases of the standard's notes: the last value that is black and the first that is white.
  it.each([
    [2048, 4096, 0, 4095],
    [0, 100, -50, 49],
  ])("linear %d/%d is black up to %d and white from %d (VOI-EXAMPLES)", (center, width, black, white) => {
    const shown = (value: number) => greyAt(value, window(center, width, "linear"));
    expect([shown(black), shown(white)]).toEqual([0, 255]);
    expect(shown(black + 1)).toBeGreaterThan(0);
    expect(shown(white - 1)).toBeLessThan(255);
  });

  it.each([
    [2048, 2047.5],
    [0, -0.5],
  ])("linear %d/1 steps at %d (VOI-EXAMPLES)", (center, step) => {
    const shown = (value: number) => greyAt(value, window(center, 1, "linear"));
    expect([shown(step - 0.25), shown(step), shown(step + 0.25)]).toEqual([0, 0, 255]);
  });

  // DICOM PS3.3 C.11.2.1.3.2.
  it.each([
    [-51, 0],
    [-50, 0],
    [0, 127.5],
    [50, 255],
    [51, 255],
  ])("linear exact 0/100 takes %d to %d", (value, grey) => {
    expect(greyAt(value, window(0, 100, "linearExact"))).toBe(grey);
  });

  // DICOM PS3.3 C.11.2.1.3.1, worked outside this code; never black, never white.
  it.each([
    [0, 30.39674512],
    [2048, 127.5],
    [4095, 224.5770993],
  ])("sigmoid 2048/4096 takes %d to %d (VOI-SIGMOID)", (value, grey) => {
    expect(greyAt(value, window(2048, 4096, "sigmoid"))).toBeCloseTo(grey, 7);
  });

  it("never makes a larger value darker", () => {
    const any = fc.record({
      center: fc.double({ min: -5000, max: 70_000, noNaN: true }),
      width: fc.double({ min: 1, max: 70_000, noNaN: true }),
      function: fc.constantFrom(...shapes),
      value: fc.integer({ min: 0, max: 65_534 }),
    });
    fc.assert(
      fc.property(any, ({ value, ...made }) => {
        expect(greyAt(value + 1, made)).toBeGreaterThanOrEqual(greyAt(value, made));
        expect(greyAt(value, made)).toBeGreaterThanOrEqual(0);
        expect(greyAt(value, made)).toBeLessThanOrEqual(255);
      }),
    );
  });

  it.each([
    window(0, 0.5, "linear"),
    window(0, 0, "linearExact"),
    window(0, -1, "sigmoid"),
    window(Number.NaN, 10, "linear"),
    window(0, Number.POSITIVE_INFINITY, "linear"),
  ])("refuses $function of width $width about $center", (impossible) => {
    expect(() => greyAt(1, impossible)).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });

  it("accepts a width below 1 for the two that allow it", () => {
    expect(greyAt(1, window(0, 0.5, "linearExact"))).toBe(255);
    expect(greyAt(0, window(0, 0.5, "sigmoid"))).toBe(127.5);
  });
});

interface Shown extends FilmWindow {
  readonly film: string;
  readonly sha256: string;
}
/** A film whose samples are values only after a rescale, dark where they are large, and the greys themselves. */
interface Rescaled extends Shown {
  readonly slope: number;
  readonly intercept: number;
  readonly greys: readonly number[];
}
const windows: readonly (Shown | Rescaled)[] = JSON.parse(
  readFileSync(new URL("../../test/reference/films/windows.json", import.meta.url), "utf8"),
);
const isRescaled = (shown: Shown | Rescaled): shown is Rescaled => "greys" in shown;
const filmOf = (name: string) =>
  decodeFilm(new Uint8Array(readFileSync(new URL(`../../data/samples/${name}`, import.meta.url))), "film.dcm");

describe("windowToGrey", () => {
  it.each(windows.filter((one) => !isRescaled(one)))(
    "shows $film under $function $center/$width as dcm2pnm does, byte for byte",
    async ({ film: name, sha256, ...shown }) => {
      const film = await filmOf(name);
      const table = windowToGrey(shown, film.photometric);
      const grey = Uint8Array.from(film.samples, (sample) => table[sample] ?? 0);
      expect(createHash("sha256").update(grey).digest("hex")).toBe(sha256);
    },
  );

  // dcm2pnm rounds the rescaled value as well.
  it.each(windows.filter(isRescaled))(
    "shows $film, turned round, under $function $center/$width within one step of dcm2pnm",
    async ({ film: name, slope, intercept, greys, ...shown }) => {
      const film = await filmOf(name);
      expect([film.photometric, new Set(greys).size > 20]).toEqual(["MONOCHROME1", true]);
      const found = [...film.samples].map((sample) => 255 - Math.floor(greyAt(slope * sample + intercept, shown)));
      expect(Math.max(...greys.map((grey, at) => Math.abs(grey - (found[at] ?? 999))))).toBeLessThanOrEqual(1);
    },
  );

  // dcm2pnm of dcmtk 3.6.7 rounds down: 0.06 to 0, 127.47 to 127, 254.94 to 254.
  it("rounds down, for every stored sample", () => {
    const table = windowToGrey(window(2048, 4096, "linear"), "MONOCHROME2");
    expect(table).toHaveLength(65_536);
    expect([0, 1, 2047, 2048, 4094, 4095, 65_535].map((at) => table[at])).toEqual([0, 0, 127, 127, 254, 255, 255]);
  });

  it("shows MONOCHROME1 the other way round", () => {
    const [straight, turned] = (["MONOCHROME2", "MONOCHROME1"] as const).map((photometric) =>
      windowToGrey(window(2000, 1000, "sigmoid"), photometric),
    );
    expect(straight?.every((grey, at) => grey + (turned?.[at] ?? 0) === 255)).toBe(true);
  });
});
