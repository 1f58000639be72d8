import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { autoWindow, windowOf } from "./auto-window.ts";
import { brightIsHigh } from "./bright-is-high.ts";
import { cropFilm } from "./crop.ts";
import { decodeFilm } from "./decode-film.ts";
import { encodePng16 } from "./encode-png16.ts";
import type { FilmPixels, FilmWindow } from "./film-pixels.ts";
import { invertFilm } from "./invert.ts";
import { encodePreview, previewOf } from "./preview.ts";
import { turnedFilm } from "./turned-film.ts";
import { greyAt } from "./window-to-grey.ts";

const technical = { sourceFormat: "dicom", wasColour: false, lossy: false } as const;
const filmOf = (columns: number, samples: number[], bitsStored = 12): FilmPixels => ({
  columns,
  rows: samples.length / columns,
  bitsStored,
  samples: Uint16Array.from(samples),
  photometric: "MONOCHROME2",
  technical,
});

const anyFilm = fc
  .record({
    columns: fc.integer({ min: 1, max: 9 }),
    rows: fc.integer({ min: 1, max: 9 }),
    bits: fc.integer({ min: 1, max: 16 }),
    photometric: fc.constantFrom<FilmPixels["photometric"]>("MONOCHROME1", "MONOCHROME2"),
  })
  .chain(({ columns, rows, bits, photometric }) =>
    fc
      .array(fc.integer({ min: 0, max: 2 ** bits - 1 }), { minLength: columns * rows, maxLength: columns * rows })
      .map((samples): FilmPixels => ({ ...filmOf(columns, samples, bits), photometric })),
  );

describe("encodePng16", () => {
  it("comes back from decoding bit for bit, with its depth, always as MONOCHROME2", async () => {
    await fc.assert(
      fc.asyncProperty(anyFilm, async (film) => {
        const back = await decodeFilm(encodePng16(film), "film.png");
        // Packed quickly the file is another one, and the film the same.
        expect(await decodeFilm(encodePng16(film, "quick"), "film.png")).toEqual(back);
        const largest = 2 ** film.bitsStored - 1;
        const known =
          film.photometric === "MONOCHROME2" ? film.samples : film.samples.map((sample) => largest - sample);
        expect(back).toEqual({
          ...film,
          samples: known,
          photometric: "MONOCHROME2",
          technical: { sourceFormat: "png", wasColour: false, lossy: false },
        });
      }),
      { numRuns: 150 },
    );
  });

  it("holds the picture, its size and its depth, and nothing else", () => {
    const bytes = encodePng16({ ...filmOf(2, [1, 2, 3, 4]), technical: { ...technical, magnification: 1.25 } });
    const view = new DataView(bytes.buffer);
    const types: string[] = [];
    for (let at = 8; at < bytes.length; at += 12 + view.getUint32(at))
      types.push(String.fromCharCode(...bytes.subarray(at + 4, at + 8)));
    expect(types).toEqual(["IHDR", "biTs", "IDAT", "IEND"]);
  });
});

describe("cropFilm", () => {
  const film = filmOf(4, [0, 1, 2, 3, 10, 11, 12, 13, 20, 21, 22, 23]);

  it("cuts out a part and leaves all else", () => {
    const cut = cropFilm(film, { column: 1, row: 1, columns: 3, rows: 2 });
    expect([cut.columns, cut.rows, [...cut.samples]]).toEqual([3, 2, [11, 12, 13, 21, 22, 23]]);
    expect(cut.technical).toEqual(film.technical);
    expect(cropFilm(film, { column: 0, row: 0, columns: 4, rows: 3 })).toEqual(film);
  });

  it.each([
    { column: 2, row: 0, columns: 3, rows: 1 },
    { column: 0, row: 2, columns: 1, rows: 2 },
    { column: -1, row: 0, columns: 2, rows: 2 },
    { column: 0, row: -1, columns: 2, rows: 2 },
    { column: 0, row: 0, columns: 0, rows: 2 },
    { column: 0, row: 0, columns: 2, rows: 0 },
    { column: 0.5, row: 0, columns: 2, rows: 2 },
  ])("refuses $columns x $rows from $column, $row", (part) => {
    expect(() => cropFilm(film, part)).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });
});

describe("invertFilm", () => {
  it("shows every pixel the other way round, and as it was when done twice", () => {
    fc.assert(
      fc.property(anyFilm, (film) => {
        const window: FilmWindow = { center: 128, width: 256, function: "linear" };
        const [straight, inverted] = [film, invertFilm(film)].map((of) => previewOf(of, { window }).grey);
        expect([...(inverted ?? [])]).toEqual([...(straight ?? [])].map((grey) => 255 - grey));
        expect(invertFilm(invertFilm(film))).toEqual(film);
      }),
    );
  });

  it("is kept by a PNG", async () => {
    const back = await decodeFilm(encodePng16(invertFilm(filmOf(3, [0, 1, 4095]))), "film.png");
    expect([back.photometric, [...back.samples]]).toEqual(["MONOCHROME2", [4095, 4094, 0]]);
  });
});

describe("brightIsHigh", () => {
  it.each(["linear", "linearExact", "sigmoid"] as const)("looks the same under its own %s window", (shape) => {
    const window: FilmWindow = { center: 1000, width: 600, function: shape };
    const film = { ...invertFilm(filmOf(5, [0, 700, 1000, 1299, 4095])), technical: { ...technical, window } };
    const turned = brightIsHigh(film);
    expect(turned.photometric).toBe("MONOCHROME2");
    // What MONOCHROME1 shows is 255 minus the grey of its sample; both are exact up to the last bits of a double.
    film.samples.forEach((sample, at) => {
      expect(greyAt(turned.samples[at] ?? 0, windowOf(turned))).toBeCloseTo(255 - greyAt(sample, window), 9);
    });
  });

  it("leaves a film alone whose larger samples are brighter", () => {
    const film = filmOf(1, [7]);
    expect(brightIsHigh(film)).toBe(film);
  });

  it("leaves out what a stored 0 stood for", () => {
    const signed = { ...invertFilm(filmOf(1, [0])), technical: { ...technical, signedOffset: -2048 } };
    expect(brightIsHigh(signed).technical).toEqual(technical);
  });
});

describe("turnedFilm", () => {
  const film = filmOf(3, [1, 2, 3, 4, 5, 6]);

  // 1 2 3 over 4 5 6, turned by hand as the Exif standard's picture of the eight orientations shows.
  it.each([
    [2, 3, [3, 2, 1, 6, 5, 4]],
    [3, 3, [6, 5, 4, 3, 2, 1]],
    [4, 3, [4, 5, 6, 1, 2, 3]],
    [5, 2, [1, 4, 2, 5, 3, 6]],
    [6, 2, [4, 1, 5, 2, 6, 3]],
    [7, 2, [6, 3, 5, 2, 4, 1]],
    [8, 2, [3, 6, 2, 5, 1, 4]],
  ])("applies orientation %i", (orientation, columns, samples) => {
    const turned = turnedFilm(film, orientation);
    expect([turned.columns, turned.rows, [...turned.samples]]).toEqual([columns, 6 / columns, samples]);
    expect(turned.technical.orientationApplied).toBe(orientation);
  });

  it.each([undefined, 0, 1, 9])("leaves the film as it is for %s", (orientation) => {
    expect(turnedFilm(film, orientation)).toBe(film);
  });
});

describe("autoWindow", () => {
  it("is black just at the lowest and white just at the highest sample within the shares", () => {
    // 1000 samples: five at 0 and five at 4095 (half a hundredth each), the others 1000 to 1989.
    const samples = Array.from({ length: 1000 }, (_, at) => (at < 5 ? 0 : at >= 995 ? 4095 : 995 + at));
    const window = autoWindow(filmOf(1000, samples), { dark: 0.006, bright: 0.995 });
    expect(greyAt(1000, window)).toBe(0);
    expect(greyAt(1001, window)).toBeGreaterThan(0);
    expect(greyAt(1989, window)).toBe(255);
    expect(greyAt(1988, window)).toBeLessThan(255);
  });

  it("spans all samples for shares of 0 and 1", () => {
    expect(autoWindow(filmOf(2, [100, 299]), { dark: 0, bright: 1 })).toEqual({
      center: 200,
      width: 200,
      function: "linear",
    });
  });

  it("answers for a film of one grey and for the largest range", () => {
    expect(autoWindow(filmOf(2, [7, 7])).width).toBe(1);
    expect(autoWindow(filmOf(2, [0, 65_535], 16))).toEqual({ center: 32_768, width: 65_536, function: "linear" });
  });

  it.each([
    { dark: 0.5, bright: 0.5 },
    { dark: -0.1, bright: 1 },
    { dark: 0, bright: 1.1 },
    { dark: Number.NaN, bright: 1 },
  ])("refuses shares $dark and $bright", (shares) => {
    expect(() => autoWindow(filmOf(1, [1]), shares)).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });

  it("gives way to the film's own window", () => {
    const window: FilmWindow = { center: 1, width: 2, function: "sigmoid" };
    expect(windowOf({ ...filmOf(1, [1]), technical: { ...technical, window } })).toBe(window);
    expect(windowOf(filmOf(2, [100, 299]))).toEqual(autoWindow(filmOf(2, [100, 299])));
  });
});

describe("previewOf", () => {
  const window: FilmWindow = { center: 128, width: 256, function: "linear" };

  it("averages boxes and windows them", () => {
    const film = filmOf(4, [0, 40, 100, 100, 80, 120, 200, 200], 8);
    // Means 60 and 150 under 128/256, which takes 0..255 to itself.
    expect(previewOf(film, { maxSide: 2, window })).toEqual({ columns: 2, rows: 1, grey: Uint8Array.of(60, 150) });
  });

  it("leaves a small film at its size", () => {
    const film = filmOf(2, [1, 2, 3, 4], 8);
    expect([...previewOf(film, { window }).grey]).toEqual([1, 2, 3, 4]);
  });

  it("shows MONOCHROME1 bright where its samples are small", () => {
    const film = { ...filmOf(2, [0, 255], 8), photometric: "MONOCHROME1" as const };
    expect([...previewOf(film, { window }).grey]).toEqual([255, 0]);
  });

  it("keeps an even film even at any size, and its longer side within what was asked", () => {
    const sizes = fc.record({
      columns: fc.integer({ min: 1, max: 40 }),
      rows: fc.integer({ min: 1, max: 40 }),
      maxSide: fc.integer({ min: 1, max: 50 }),
    });
    fc.assert(
      fc.property(sizes, ({ columns, rows, maxSide }) => {
        const preview = previewOf(filmOf(columns, Array(columns * rows).fill(77), 8), { maxSide, window });
        expect(preview.grey.every((grey) => grey === 77)).toBe(true);
        expect(Math.max(preview.columns, preview.rows)).toBe(Math.min(maxSide, Math.max(columns, rows)));
      }),
    );
  });

  it("is encoded as an 8-bit PNG that reads back as it was", async () => {
    const preview = previewOf(filmOf(3, [5, 6, 7, 200, 201, 255], 8), { window });
    const back = await decodeFilm(encodePreview(preview), "preview.png");
    expect([back.columns, back.rows, back.bitsStored, [...back.samples]]).toEqual([3, 2, 8, [...preview.grey]]);
  });

  it.each([0, 1.5, Number.NaN])("refuses a side of %d", (maxSide) => {
    expect(() => previewOf(filmOf(1, [1]), { maxSide })).toThrow(expect.objectContaining({ code: "input.impossible" }));
  });
});
