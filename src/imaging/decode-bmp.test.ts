import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "./decode-film.ts";

const sample = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../data/samples/bmp/${name}.bmp`, import.meta.url)));
const read = (bytes: Uint8Array) => decodeFilm(bytes, "film.bmp");

const [columns, rows] = [13, 9];
const plane = (value: (column: number, row: number) => number) =>
  Array.from({ length: columns * rows }, (_, at) => value(at % columns, Math.floor(at / columns)));
const eight = (column: number, row: number) => (column * 19 + row * 7) % 256;
const colour = (value: number) => Math.round(0.2126 * value + 0.7152 * (255 - value) + 0.0722 * Math.floor(value / 2));

/** A sample with 32-bit numbers put at places. */
function changed(name: string, ...changes: [at: number, value: number][]): Uint8Array {
  const bytes = sample(name);
  for (const [at, value] of changes) new DataView(bytes.buffer).setInt32(at, value, true);
  return bytes;
}

describe("decodeBmp", () => {
  // The formulas stand in data/samples/bmp/make-samples.py; the files were written by Pillow and netpbm.
  it.each([
    ["grey-8", false, plane(eight)],
    ["grey-1", false, plane((column, row) => ((column + row) % 2 === 0 ? 255 : 0))],
    ["palette-4", true, plane((column, row) => colour(((column + row) % 16) * 16))],
    ["palette-4-old-header", true, plane((column, row) => colour(((column + row) % 16) * 16))],
    ["rgb-24", true, plane((column, row) => colour(eight(column, row)))],
    ["rgb-24-top-down", true, plane((column, row) => colour(eight(column, row)))],
    ["rgba-32", true, plane((column, row) => colour(eight(column, row)))],
  ])("reads %s", async (name, wasColour, known) => {
    const film = await read(sample(name));
    expect(film).toMatchObject({ columns, rows, bitsStored: 8, photometric: "MONOCHROME2" });
    expect(film.technical).toEqual({ sourceFormat: "bmp", wasColour, lossy: false });
    expect([...film.samples]).toEqual(known);
  });

  it("reads 32 bits whose masks name the usual order", async () => {
    // Twelve more bytes of header hold the masks; the picture begins behind them.
    const plain = sample("rgba-32");
    const masks = Uint8Array.of(0, 0, 255, 0, 0, 255, 0, 0, 255, 0, 0, 0);
    const from = new DataView(plain.buffer).getUint32(10, true);
    const bytes = new Uint8Array(54 + 12 + (plain.length - from));
    bytes.set(plain.subarray(0, 54));
    bytes.set(masks, 54);
    bytes.set(plain.subarray(from), 66);
    const view = new DataView(bytes.buffer);
    view.setUint32(10, 66, true);
    view.setUint32(14, 40, true);
    view.setUint32(30, 3, true);
    expect([...(await read(bytes)).samples]).toEqual(plane((column, row) => colour(eight(column, row))));
    view.setUint32(54, 0xff, true);
    await expect(read(bytes)).rejects.toMatchObject({ code: "file.unsupported" });
  });

  it.each<[string, Uint8Array, string]>([
    [
      "a text that begins like one",
      new TextEncoder().encode("BMW drove by, and nothing else happened"),
      "file.damaged",
    ],
    ["a header cut off", sample("grey-8").subarray(0, 30), "file.damaged"],
    ["no more than its mark", sample("grey-8").subarray(0, 4), "file.damaged"],
    ["packed runs", changed("grey-8", [30, 1]), "file.unsupported"],
    ["16 bits", changed("rgb-24", [28, 16]), "file.unsupported"],
    ["no rows", changed("rgb-24", [22, 0]), "file.impossibleSize"],
    ["columns below nought", changed("rgb-24", [18, -5]), "file.impossibleSize"],
    ["more columns than a film has", changed("rgb-24", [18, 20_001]), "file.impossibleSize"],
    ["a picture that ends early", sample("rgb-24").subarray(0, 200), "file.truncated"],
    ["a picture that begins beyond the file", changed("rgb-24", [10, 900_000]), "file.truncated"],
  ])("refuses %s", async (_, bytes, code) => {
    await expect(read(bytes)).rejects.toMatchObject({ code });
  });
});
