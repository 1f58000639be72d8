import { readFileSync } from "node:fs";
import { zlibSync } from "fflate";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../decode-film.ts";
import { unpackRuns } from "../unpack-runs.ts";
import { unpackLzw } from "./unpack-lzw.ts";

const sample = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../data/samples/tiff/${name}.tif`, import.meta.url)));
const read = (bytes: Uint8Array, options = {}) => decodeFilm(bytes, "film.tif", options);

const [columns, rows] = [37, 29];
const plane = (value: (column: number, row: number) => number, across = columns, down = rows) =>
  Array.from({ length: across * down }, (_, at) => value(at % across, Math.floor(at / across)));
const eight = (column: number, row: number) => (column * 19 + row * 7) % 256;
const sixteen = (column: number, row: number) => (column * 5003 + row * 977) % 65_536;
const colour = (value: number, largest = 255) =>
  Math.round(0.2126 * value + 0.7152 * (largest - value) + 0.0722 * Math.floor(value / 2));

describe("decodeTiff", () => {
  // The formulas stand in data/samples/tiff/make-samples.py; the files were written by libtiff and Pillow.
  it.each([
    ["grey-8", 8, false, plane(eight)],
    ["grey-8-runs", 8, false, plane(eight)],
    ["grey-8-deflate", 8, false, plane(eight)],
    ["grey-4", 4, false, plane((column, row) => Math.floor(eight(column, row) / 16))],
    ["grey-8-big-endian-lzw", 8, false, plane(eight)],
    ["grey-16", 16, false, plane(sixteen)],
    ["grey-16-big-endian", 16, false, plane(sixteen)],
    ["grey-16-lzw-differences", 16, false, plane(sixteen)],
    ["grey-16-deflate-tiles", 16, false, plane(sixteen)],
    ["grey-16-big-endian-deflate-differences", 16, false, plane(sixteen)],
    ["grey-16-runs", 16, false, plane(sixteen)],
    ["rgb-16", 16, true, plane((column, row) => colour(sixteen(column, row), 65_535))],
    ["rgb-16-big-endian-deflate-differences", 16, true, plane((column, row) => colour(sixteen(column, row), 65_535))],
    ["rgb-16-tiles-lzw", 16, true, plane((column, row) => colour(sixteen(column, row), 65_535))],
    ["grey-1", 1, false, plane((column, row) => ((column + row) % 2 === 0 ? 1 : 0))],
    ["grey-alpha-8", 8, false, plane(eight)],
    ["rgb-8-lzw-differences", 8, true, plane((column, row) => colour(eight(column, row)))],
    ["rgb-8-apart", 8, true, plane((column, row) => colour(eight(column, row)))],
    ["rgb-8-apart-tiles", 8, true, plane((column, row) => colour(eight(column, row)))],
    ["palette-8", 8, true, plane((column, row) => colour(((column + row) % 16) * 16))],
    ["orientation-6", 8, false, plane(eight)],
  ])("reads %s", async (name, bitsStored, wasColour, known) => {
    const film = await read(sample(name));
    expect(film).toMatchObject({ columns, rows, bitsStored, photometric: "MONOCHROME2" });
    expect(film.technical).toMatchObject({ sourceFormat: "tiff", wasColour, lossy: false });
    expect([...film.samples]).toEqual(known);
  });

  it("reads LZW codes of every length", async () => {
    const film = await read(sample("grey-16-lzw-long"));
    const uneven = (column: number, row: number) =>
      (column * column * 7919 + row * 104_729 + column * row * 31) % 65_536;
    expect([...film.samples]).toEqual(plane(uneven, 120, 90));
  });

  it("says of a film in which a larger number is darker that it is", async () => {
    const film = await read(sample("grey-8-dark-is-high"));
    expect(film.photometric).toBe("MONOCHROME1");
    expect([...film.samples]).toEqual(plane(eight));
  });
});

type Field = [tag: number, type: 1 | 3 | 4, numbers: number[]];
/** A TIFF of 4 columns by 2 rows, 8 bits, whose one strip holds the given bytes; fields may be replaced. */
function tiff(strip: Uint8Array, changes: Field[] = []): Uint8Array {
  const usual: Field[] = [
    [256, 3, [4]],
    [257, 3, [2]],
    [258, 3, [8]],
    [259, 3, [1]],
    [262, 3, [1]],
    [273, 4, [8]],
    [277, 3, [1]],
    [278, 3, [2]],
    [279, 4, [strip.length]],
  ];
  const fields = [...new Map([...usual, ...changes].map((field) => [field[0], field])).values()].sort(
    (a, b) => a[0] - b[0],
  );
  const bytes = new Uint8Array(8 + strip.length + 2 + 12 * fields.length + 4 + 64);
  const view = new DataView(bytes.buffer);
  bytes.set([0x49, 0x49, 0x2a, 0]);
  view.setUint32(4, 8 + strip.length, true);
  bytes.set(strip, 8);
  view.setUint16(8 + strip.length, fields.length, true);
  let more = bytes.length - 64;
  for (const [nth, [tag, type, numbers]] of fields.entries()) {
    const entry = 8 + strip.length + 2 + 12 * nth;
    const size = { 1: 1, 3: 2, 4: 4 }[type];
    view.setUint16(entry, tag, true);
    view.setUint16(entry + 2, type, true);
    view.setUint32(entry + 4, numbers.length, true);
    const elsewhere = numbers.length * size > 4;
    if (elsewhere) view.setUint32(entry + 8, more, true);
    for (const [index, number] of numbers.entries()) {
      const at = (elsewhere ? more : entry + 8) + index * size;
      if (type === 3) view.setUint16(at, number, true);
      else if (type === 4) view.setUint32(at, number, true);
      else view.setUint8(at, number);
    }
    if (elsewhere) more += numbers.length * size;
  }
  return bytes;
}
const strip = Uint8Array.of(1, 2, 3, 4, 5, 6, 7, 8);

describe("decodeTiff on files made by hand", () => {
  it("reads strips without a length, and a palette of 16 bits", async () => {
    expect([...(await read(tiff(strip))).samples]).toEqual([...strip]);
    const greys = Array.from({ length: 2 }, () => [100, 200, 60_000, 5]).flat();
    const film = await read(
      tiff(Uint8Array.of(0x1b, 0xe4), [
        [258, 3, [2]],
        [262, 3, [3]],
        [320, 3, [...greys, 100, 200, 60_000, 5]],
      ]),
    );
    // 0x1b is 0 1 2 3 in twos of bits, 0xe4 is 3 2 1 0.
    expect([...film.samples]).toEqual([100, 200, 60_000, 5, 5, 60_000, 200, 100]);
    expect(film.bitsStored).toBe(16);
  });

  it("leaves out what a deflated strip holds beyond its rows", async () => {
    const film = await read(tiff(zlibSync(Uint8Array.of(...strip, 9, 9, 9, 9)), [[259, 3, [8]]]));
    expect([...film.samples]).toEqual([...strip]);
  });

  it.each<[string, Field[]]>([
    ["fax", [[259, 3, [2]]]],
    ["JPEG inside", [[259, 3, [7]]]],
    ["colours that are not read", [[262, 3, [5]]]],
    ["numbers with a sign", [[339, 3, [2]]]],
    ["bits the other way round", [[266, 3, [2]]]],
    ["12 bits", [[258, 3, [12]]]],
    [
      "channels of different bits",
      [
        [258, 3, [8, 16]],
        [277, 3, [2]],
      ],
    ],
    [
      "two channels as colour",
      [
        [262, 3, [2]],
        [277, 3, [2]],
      ],
    ],
    ["differences of another kind", [[317, 3, [3]]]],
  ])("refuses %s", async (_, changes) => {
    await expect(read(tiff(strip, changes))).rejects.toMatchObject({ code: "file.unsupported" });
  });

  it("says by name how a TIFF is packed or coloured, where it has one", async () => {
    const message = expect.stringMatching(/is a TIFF packed as JPEG, which is not read; save the one picture as PNG/);
    await expect(read(tiff(strip, [[259, 3, [7]]]))).rejects.toMatchObject({ message });
    const inks = expect.stringContaining("a TIFF whose colours are inks");
    await expect(read(tiff(strip, [[262, 3, [5]]]))).rejects.toMatchObject({ message: inks });
  });

  it.each<[string, Uint8Array, string]>([
    ["no columns", tiff(strip, [[256, 3, [0]]]), "file.impossibleSize"],
    ["more rows than a film has", tiff(strip, [[257, 3, [20_001]]]), "file.impossibleSize"],
    [
      "tiles of no width",
      tiff(strip, [
        [322, 3, [0]],
        [323, 3, [16]],
        [324, 4, [8]],
        [325, 4, [8]],
      ]),
      "file.impossibleSize",
    ],
    [
      "tiles of a size that none has",
      tiff(strip, [
        [322, 4, [60_000]],
        [323, 4, [60_000]],
        [324, 4, [8]],
        [325, 4, [8]],
      ]),
      "file.impossibleSize",
    ],
    ["a strip that ends early", tiff(strip.subarray(0, 5)), "file.truncated"],
    ["a strip beyond the file", tiff(strip, [[273, 4, [100_000]]]), "file.truncated"],
    [
      "a packed strip that is empty",
      tiff(strip, [
        [259, 3, [5]],
        [279, 4, [0]],
      ]),
      "file.truncated",
    ],
    ["a packed strip that holds too little", tiff(Uint8Array.of(2, 1, 2, 3), [[259, 3, [32773]]]), "file.truncated"],
    ["a deflated strip that is none", tiff(strip, [[259, 3, [8]]]), "file.damaged"],
    ["a directory beyond the file", Uint8Array.of(0x49, 0x49, 0x2a, 0, 200, 0, 0, 0), "file.damaged"],
    ["no directory", Uint8Array.of(0x49, 0x49, 0x2a, 0, 0, 0, 0, 0), "file.damaged"],
    ["directories in a circle", Uint8Array.of(0x49, 0x49, 0x2a, 0, 8, 0, 0, 0, 0, 0, 8, 0, 0, 0), "file.damaged"],
  ])("refuses %s", async (_, bytes, code) => {
    await expect(read(bytes)).rejects.toMatchObject({ code });
  });

  it("refuses several pages by their number", async () => {
    await expect(read(sample("two-pages"))).rejects.toMatchObject({ message: expect.stringContaining("2 pages") });
  });

  it("refuses more channels than the limit has room for", async () => {
    const wide = tiff(strip, [
      [262, 3, [2]],
      [277, 3, [8]],
      [256, 3, [1000]],
      [257, 3, [1000]],
    ]);
    await expect(read(wide, { maxBytes: 4_000_000 })).rejects.toMatchObject({ code: "file.impossibleSize" });
  });
});

describe("unpackRuns and unpackLzw", () => {
  it("stop where the room is full", () => {
    const room = new Uint8Array(3);
    expect(unpackRuns(Uint8Array.of(254, 7, 3, 1, 2, 3, 4), room)).toBe(3);
    expect([...room]).toEqual([7, 7, 7]);
    expect(unpackRuns(Uint8Array.of(5, 1), room)).toBe(1);
  });

  it("read the example of the LZW rules: 7 7 7 8 8 7 7 6 6 (TIFF 6.0, section 13)", () => {
    // The codes the text gives: clear, 7, 258, 8, 8, 258, 6, 6, end, of nine bits each.
    const codes = [256, 7, 258, 8, 8, 258, 6, 6, 257];
    const text = codes
      .map((code) => code.toString(2).padStart(9, "0"))
      .join("")
      .padEnd(88, "0");
    const packed = Uint8Array.from({ length: 11 }, (_, at) => Number.parseInt(text.slice(8 * at, 8 * at + 8), 2));
    const room = new Uint8Array(12);
    expect(unpackLzw(packed, room)).toBe(9);
    expect([...room.subarray(0, 9)]).toEqual([7, 7, 7, 8, 8, 7, 7, 6, 6]);
    // A code that has not been made yet ends it.
    expect(unpackLzw(Uint8Array.of(0xff, 0xff), room)).toBe(0);
  });
});
