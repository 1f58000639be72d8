import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Refusal } from "../core/refusal.ts";
import { decodeFilm } from "./decode-film.ts";
import { dicom, words } from "./dicom/written-dicom.ts";
import { encodePng16 } from "./encode-png16.ts";
import { previewOf } from "./preview.ts";
import { ridge } from "./ridge.ts";

const samples = new URL("../../data/samples/", import.meta.url);
const sample = (name: string) => new Uint8Array(readFileSync(new URL(name, samples)));
const pictures = readdirSync(samples, { recursive: true })
  .map((name) => String(name).replaceAll("\\", "/"))
  .filter((name) => /\.(bmp|dcm|jpg|png|tif)$/.test(name))
  .sort();

async function outcomeOf(bytes: Uint8Array, name: string): Promise<Refusal | "read"> {
  const outcome = await decodeFilm(bytes, name).catch((error: unknown) => error);
  if (outcome instanceof Refusal) return outcome;
  if (outcome instanceof Error) throw outcome;
  return "read";
}

/** A sample with big- or little-endian numbers put over its own size. */
function resized(name: string, big: boolean, ...places: [at: number, bytes: 2 | 4, value: number][]): Uint8Array {
  const copy = sample(name);
  const view = new DataView(copy.buffer);
  for (const [at, bytes, value] of places)
    if (bytes === 2) view.setUint16(at, value, !big);
    else view.setUint32(at, value, !big);
  return copy;
}

const indexOf = (name: string, ...wanted: number[]): number => {
  const bytes = sample(name);
  return bytes.findIndex((_, at) => wanted.every((byte, nth) => bytes[at + nth] === byte));
};
const side = 60_000;

/** Where each kind says its columns and rows. */
function claims(): [string, Uint8Array][] {
  const frame = (name: string, code: number) => indexOf(name, 0xff, code);
  const ofDicom = (name: string): [string, Uint8Array] => {
    const rows = indexOf(name, 0x28, 0, 0x10, 0) + 8;
    return [name, resized(name, false, [rows, 2, side], [rows + 10, 2, side])];
  };
  const ofJpeg = (name: string, code: number): [string, Uint8Array] => {
    const at = frame(name, code) + 5;
    return [name, resized(name, true, [at, 2, side], [at + 2, 2, side])];
  };
  const tiffTag = (tag: number) => indexOf("tiff/grey-8.tif", tag, 1, 3, 0, 1, 0, 0, 0) + 8;
  return [
    ["png/grey-8.png", resized("png/grey-8.png", true, [16, 4, side], [20, 4, side])],
    ["bmp/grey-8.bmp", resized("bmp/grey-8.bmp", false, [18, 4, side], [22, 4, side])],
    ["tiff/grey-8.tif", resized("tiff/grey-8.tif", false, [tiffTag(0), 2, side], [tiffTag(1), 2, side])],
    ofJpeg("jpeg/grey.jpg", 0xc0),
    ofJpeg("jpeg/grey-progressive.jpg", 0xc2),
    ...[
      ...["dicom-mit/CT_small.dcm", "dicom-mit/MR_small_implicit.dcm", "dicom-jpeg/rle-12.dcm"],
      ...["dicom-jpeg/lossless-8.dcm", "dicom-jpeg/extended-12.dcm", "dicom-jpeg/ls-rgb.dcm"],
      ...["dicom-jpeg/2000-rgb.dcm", "dicom-jpeg/baseline-rgb.dcm"],
    ].map(ofDicom),
  ];
}

describe("a picture that claims 60,000 by 60,000", () => {
  it.each(claims())("%s is refused from its header, by its numbers", async (name, bytes) => {
    const refusal = await outcomeOf(bytes, name);
    expect(refusal).toMatchObject({ code: "file.impossibleSize", facts: { columns: side, rows: side } });
    expect(String(refusal)).toContain(`Cannot read ${name}: its header declares 60000 columns and 60000 rows`);
  });
});

describe("a picture of one pixel", () => {
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  const one = { columns: 1, rows: 1, bitsStored: 12, photometric: "MONOCHROME2", technical } as const;
  const size = (rows: number): Parameters<typeof dicom>[1] => [
    ["00280010", "US", rows],
    ["00280011", "US", 1],
  ];
  /** One pixel of 24 bits, filled up to four bytes; one of 8 bits in one strip. */
  const bmp = () => {
    const bytes = sample("bmp/rgb-24.bmp").slice(0, 58);
    const view = new DataView(bytes.buffer);
    view.setInt32(18, 1, true);
    view.setInt32(22, 1, true);
    bytes.set([200, 200, 200, 0], 54);
    return bytes;
  };
  const tiff = () => {
    const bytes = sample("tiff/grey-8.tif");
    const view = new DataView(bytes.buffer);
    for (const tag of [0, 1]) view.setUint16(indexOf("tiff/grey-8.tif", tag, 1, 3, 0, 1, 0, 0, 0) + 8, 1, true);
    return bytes;
  };

  it.each<[string, Uint8Array, number]>([
    ["PNG", encodePng16({ ...one, samples: Uint16Array.of(3000) }), 3000],
    ["DICOM", dicom(words([3000]), size(1)), 3000],
    ["BMP", bmp(), 200],
    ["TIFF", tiff(), 0],
    ["JPEG", sample("jpeg/one-pixel.jpg"), 200],
  ])("%s is read, shown and holds no line", async (_, bytes, value) => {
    const film = await decodeFilm(bytes, "one.bin");
    expect([film.columns, film.rows, [...film.samples]]).toEqual([1, 1, [value]]);
    expect(previewOf(film)).toMatchObject({ columns: 1, rows: 1 });
    expect([...ridge(film, { line: "dark" })]).toEqual([0]);
  });

  it("one column of many rows is read", async () => {
    const film = await decodeFilm(dicom(words([1, 2, 3, 4]), size(4)), "column.dcm");
    expect([film.columns, [...film.samples]]).toEqual([1, [1, 2, 3, 4]]);
  });
});

describe("a file that breaks off", () => {
  it.each(pictures)("%s is refused and never taken for a film, wherever in its second half", async (name) => {
    const whole = sample(name);
    const ends = [0.5, 0.7, 0.9].map((share) => Math.floor(share * whole.length));
    for (const end of ends) {
      const refusal = await outcomeOf(whole.subarray(0, end), name);
      expect(refusal, `${end} of ${whole.length} bytes`).toMatchObject({
        code: expect.stringMatching(/^file\.(truncated|damaged|unsupported|impossibleSize)$/),
      });
      expect(String(refusal)).toContain(`Cannot read ${name}: `);
    }
  });
});

describe("a file under another's name", () => {
  it.each(["png/grey-8.png", "jpeg/grey.jpg", "tiff/grey-16.tif", "bmp/grey-8.bmp", "dicom-mit/CT_small.dcm"])(
    "%s is read by its content",
    async (name) => {
      const known = await decodeFilm(sample(name), name);
      for (const ending of ["dcm", "png", "jpg", "pdf", ""])
        expect(await decodeFilm(sample(name), `film.${ending}`)).toEqual(known);
    },
  );
});
