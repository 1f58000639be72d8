import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../decode-film.ts";
import { jpeg2000SizeOf, jpegLsSizeOf } from "./codestream-size.ts";
import { type Attribute, dicom, fragmentsOf } from "./written-dicom.ts";

const read = (bytes: Uint8Array) => decodeFilm(bytes, "film.dcm");
const sample = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../data/samples/${name}`, import.meta.url)));
const rle = "1.2.840.10008.1.2.5";
const eightBits: Attribute[] = [
  ["00280100", "US", 8],
  ["00280101", "US", 8],
  ["00280102", "US", 7],
];

/** A run-length packed frame of given segments (DICOM PS3.5, annex G). */
function rleFrameOf(...segments: number[][]): Uint8Array {
  const bytes = new Uint8Array(64 + segments.flat().length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, segments.length, true);
  let at = 64;
  for (const [nth, segment] of segments.entries()) {
    view.setUint32(4 + 4 * nth, at, true);
    bytes.set(segment, at);
    at += segment.length;
  }
  return bytes;
}
const packed = (syntax: string, fragments: Uint8Array[], changes: Attribute[] = []) =>
  dicom(fragmentsOf(...fragments), [["00020010", "UI", syntax], ...changes], "explicit", "OB");

describe("decodeDicom reads run-length packed frames", () => {
  // Three that stand there, then one three times: 10 20 30 7 7 7; and a byte that says nothing.
  const known = [10, 20, 30, 7, 7, 7];
  const frame = rleFrameOf([2, 10, 20, 30, 128, 254, 7]);

  it("of 8 bits, in one fragment or several", async () => {
    for (const fragments of [[frame], [frame.subarray(0, 30), frame.subarray(30, 66), frame.subarray(66)]])
      expect([...(await read(packed(rle, fragments, eightBits))).samples]).toEqual(known);
  });

  it("of 16 bits, the high bytes first", async () => {
    const film = await read(packed(rle, [rleFrameOf([251, 1], [5, 0, 1, 2, 3, 4, 5])]));
    expect([...film.samples]).toEqual([256, 257, 258, 259, 260, 261]);
  });

  it("without the mark that ends the fragments", async () => {
    const whole = packed(rle, [frame], eightBits);
    expect([...(await read(whole.subarray(0, whole.length - 8))).samples]).toEqual(known);
  });

  it.each<[string, Uint8Array[], string]>([
    ["too few segments", [rleFrameOf()], "file.damaged"],
    ["too many segments", [rleFrameOf([5, 1, 2, 3, 4, 5, 6], [5, 1, 2, 3, 4, 5, 6])], "file.damaged"],
    ["a segment that ends early", [rleFrameOf([4, 1, 2, 3, 4, 5])], "file.truncated"],
    ["a frame without a header", [frame.subarray(0, 20)], "file.truncated"],
    ["no fragment", [], "file.truncated"],
  ])("and refuses %s", async (_, fragments, code) => {
    await expect(read(packed(rle, fragments, eightBits))).rejects.toMatchObject({ code });
  });

  it("and refuses segments out of order, fragments beyond the file and what is no fragment", async () => {
    const turned = frame.slice();
    new DataView(turned.buffer).setUint32(4, 900, true);
    await expect(read(packed(rle, [turned], eightBits))).rejects.toMatchObject({ code: "file.damaged" });
    const whole = packed(rle, [frame], eightBits);
    await expect(read(whole.subarray(0, whole.length - 12))).rejects.toMatchObject({ code: "file.truncated" });
    const spoiled = whole.slice();
    spoiled.fill(7, whole.length - 8, whole.length - 6);
    await expect(read(spoiled)).rejects.toMatchObject({ code: "file.damaged" });
  });

  it("and refuses a size that its bytes can't make up, before taking memory for it", async () => {
    const large: Attribute[] = [...eightBits, ["00280010", "US", 10_000], ["00280011", "US", 12_000]];
    await expect(read(packed(rle, [frame], large))).rejects.toMatchObject({ code: "file.truncated" });
  });
});

describe("decodeDicom and the size in a packed frame's own header", () => {
  /** A sample with its columns in the data set changed, while the packed frame says the old. */
  function withColumns(name: string, columns: number): Uint8Array {
    const bytes = sample(name);
    const at = bytes.findIndex(
      (_, place) => bytes[place] === 0x28 && bytes[place + 2] === 0x11 && bytes[place + 4] === 0x55,
    );
    new DataView(bytes.buffer).setUint16(at + 8, columns, true);
    return bytes;
  }

  it.each([
    "dicom-jpeg/lossless-8.dcm",
    "dicom-jpeg/extended-8.dcm",
    "dicom-synthetic/io_jpegls_lossless.dcm",
    "dicom-synthetic/io_j2k_lossless.dcm",
  ])("refuses %s where it differs from the data set's", async (name) => {
    await expect(read(withColumns(name, 22))).rejects.toMatchObject({ code: "file.damaged" });
  });

  it("is read of JPEG-LS and JPEG 2000 without decoding", () => {
    const from = (name: string, first: number, second: number) => {
      const bytes = sample(name);
      return bytes.subarray(
        bytes.findIndex((_, at) => bytes[at] === first && bytes[at + 1] === second && bytes[at + 2] === 0xff),
      );
    };
    // What dcmdump shows of the two headers.
    const known = { columns: 480, rows: 640, components: 1, bits: 12 };
    expect(jpegLsSizeOf(from("dicom-synthetic/io_jpegls_near2.dcm", 0xff, 0xd8))).toEqual(known);
    const stream = from("dicom-synthetic/io_j2k_lossless.dcm", 0xff, 0x4f);
    expect(jpeg2000SizeOf(stream)).toEqual({ ...known, bits: 16 });
    // Tiles of one pixel would be 307,200.
    const tiles = stream.slice();
    tiles.set([0, 0, 0, 1, 0, 0, 0, 1], 24);
    expect(jpeg2000SizeOf(tiles)).toBeUndefined();
    expect(jpeg2000SizeOf(stream.subarray(0, 30))).toBeUndefined();
    expect(jpegLsSizeOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xda, 0, 4, 1, 1))).toBeUndefined();
    expect(jpegLsSizeOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xf7, 0, 40))).toBeUndefined();
    expect(jpegLsSizeOf(Uint8Array.of(1, 2, 3))).toBeUndefined();
  });
});

describe("decodeDicom says whether a packed frame lost something", () => {
  it.each([
    ["dicom-jpeg/lossless-8.dcm", false],
    ["dicom-jpeg/rle-12.dcm", false],
    ["dicom-jpeg/ls-rgb.dcm", false],
    // Two bits were left away, in a syntax that is called lossless.
    ["dicom-jpeg/lossless-12-shortened.dcm", true],
    ["dicom-synthetic/io_jpegls_near2.dcm", true],
    ["dicom-mit/JPEG2000.dcm", true],
  ])("%s: %s", async (name, lossy) => {
    expect((await read(sample(name))).technical.lossy).toBe(lossy);
  });
});

describe("decodeDicom refuses", () => {
  it("a JPEG 2000 picture without the mark that ends it, of which the codec would make half a film", async () => {
    const bytes = sample("dicom-mit/MR_small_jp2klossless.dcm");
    const end = bytes.findLastIndex((_, at) => bytes[at] === 0xff && bytes[at + 1] === 0xd9);
    bytes.fill(0, end, end + 2);
    await expect(read(bytes)).rejects.toMatchObject({ code: "file.truncated" });
  });

  it.each([
    ["dicom-mit/emri_small_RLE.dcm", "file.unsupported", "it holds 10 frames"],
    ["dicom-mit/UN_sequence.dcm", "file.unsupported", "without a picture"],
    // Its header was overwritten with the mark that ends fragments; what comes after must not be taken for the end.
    ["dicom-mit/JPEG2000-embedded-sequence-delimiter.dcm", "file.damaged", "header of its packed picture"],
  ])("%s", async (name, code, says) => {
    await expect(read(sample(name))).rejects.toMatchObject({ code, message: expect.stringContaining(says) });
  });

  it("a way of packing that it does not know, by name where it has one", async () => {
    const video = packed("1.2.840.10008.1.2.4.100", [new Uint8Array(8)]);
    await expect(read(video)).rejects.toMatchObject({ message: expect.stringContaining("MPEG-2 video") });
    const unknown = packed("1.2.3.4", [new Uint8Array(8)]);
    await expect(read(unknown)).rejects.toMatchObject({ message: expect.stringContaining("transfer syntax 1.2.3.4") });
  });
});
