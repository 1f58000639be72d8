import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../decode-film.ts";
import { CodedBits } from "./coded-bits.ts";
import { huffmanTableOf } from "./huffman-table.ts";
import { inverseCosines } from "./inverse-cosines.ts";
import type { JpegFault } from "./jpeg-fault.ts";
import { jpegStreamOf } from "./jpeg-stream.ts";
import { losslessSamplesOf } from "./lossless-jpeg.ts";
import { sequentialSamplesOf } from "./sequential-jpeg.ts";

const sample = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../data/samples/${name}`, import.meta.url)));

/** The JPEG inside a DICOM sample. */
function streamIn(name: string): Uint8Array {
  const bytes = sample(`dicom-jpeg/${name}.dcm`);
  return bytes.slice(
    bytes.findIndex((_, at) => bytes[at] === 0xff && bytes[at + 1] === 0xd8 && bytes[at + 2] === 0xff),
  );
}

/** Where the segment of a code begins in a stream. */
const placeOf = (bytes: Uint8Array, code: number) =>
  bytes.findIndex((_, at) => bytes[at] === 0xff && bytes[at + 1] === code);

function changed(bytes: Uint8Array, at: number, ...values: number[]): Uint8Array {
  const copy = bytes.slice();
  copy.set(values, at);
  return copy;
}

function faultOf(read: () => unknown): JpegFault["kind"] | undefined {
  try {
    read();
  } catch (fault) {
    return fault instanceof Error && fault.name === "JpegFault" ? (fault as JpegFault).kind : undefined;
  }
  return undefined;
}

describe("sequentialSamplesOf", () => {
  // The codec turns cosines round in whole numbers; the two may differ in the last step.
  it.each(["grey", "grey-restart"])("agrees with the codec on %s of 8 bits", async (name) => {
    const bytes = sample(`jpeg/${name}.jpg`);
    const own = sequentialSamplesOf(jpegStreamOf(bytes));
    const { samples } = await decodeFilm(bytes, "grey.jpg");
    expect(own.every((value, at) => Math.abs(value - (samples[at] ?? 0)) <= 1)).toBe(true);
    expect(new Set(own).size).toBeGreaterThan(50);
  });

  const stream = streamIn("extended-12");
  const scan = placeOf(stream, 0xda);

  it("refuses colour, scans of a progressive picture and bits that can't be", () => {
    const colour = jpegStreamOf(sample("jpeg/colour.jpg"));
    expect(faultOf(() => sequentialSamplesOf(colour))).toBe("unsupported");
    // The scan's header: length, one component and its tables, first, last, approximation.
    expect(faultOf(() => sequentialSamplesOf(jpegStreamOf(changed(stream, scan + 7, 1))))).toBe("damaged");
    expect(faultOf(() => sequentialSamplesOf(jpegStreamOf(changed(stream, scan + 8, 5))))).toBe("damaged");
    expect(faultOf(() => sequentialSamplesOf(jpegStreamOf(changed(stream, placeOf(stream, 0xc1) + 4, 10))))).toBe(
      "damaged",
    );
    expect(faultOf(() => sequentialSamplesOf(jpegStreamOf(changed(stream, scan + 6, 0x33))))).toBe("damaged");
  });

  it("refuses coded data that end early", () => {
    expect(faultOf(() => sequentialSamplesOf(jpegStreamOf(stream.subarray(0, scan + 40))))).toBe("truncated");
  });
});

describe("inverseCosines", () => {
  const sum = (block: Float64Array) => block.reduce((total, value) => total + value, 0);

  it("makes a level block of the lowest coefficient: an eighth of it (T.81, A.3.3)", () => {
    const block = new Float64Array(64);
    block[0] = 80;
    for (const value of inverseCosines(block)) expect(value).toBeCloseTo(10, 12);
  });

  it("makes a cosine along the row of the second, and along the column of the ninth", () => {
    for (const [place, step] of [
      [1, 1],
      [8, 8],
    ] as const) {
      const block = new Float64Array(64);
      block[place] = 8;
      inverseCosines(block);
      // 1/4 * 8 * sqrt(1/2) * cos((2x + 1) pi / 16)
      for (let x = 0; x < 8; x++)
        expect(block[x * step]).toBeCloseTo(2 * Math.SQRT1_2 * Math.cos(((2 * x + 1) * Math.PI) / 16), 12);
      expect(sum(block)).toBeCloseTo(0, 9);
    }
  });

  it("keeps the sum of squares, as the transform only turns", () => {
    const block = Float64Array.from({ length: 64 }, (_, at) => ((at * 37) % 64) - 31);
    const before = sum(block.map((value) => value ** 2));
    expect(sum(inverseCosines(block).map((value) => value ** 2))).toBeCloseTo(before, 6);
  });
});

describe("losslessSamplesOf", () => {
  const stream = streamIn("lossless-16-restarts");
  const scan = placeOf(stream, 0xda);
  const read = (bytes: Uint8Array) => () => losslessSamplesOf(jpegStreamOf(bytes));

  it("refuses predictors that are none, restarts within a row, and bits that can't be", () => {
    expect(faultOf(read(stream))).toBeUndefined();
    expect(faultOf(read(changed(stream, scan + 7, 0)))).toBe("damaged");
    expect(faultOf(read(changed(stream, scan + 7, 8)))).toBe("damaged");
    expect(faultOf(read(changed(stream, placeOf(stream, 0xdd) + 4, 0, 10)))).toBe("damaged");
    expect(faultOf(read(changed(stream, placeOf(stream, 0xc3) + 4, 17)))).toBe("damaged");
    expect(faultOf(read(changed(stream, placeOf(stream, 0xc3) + 4, 1)))).toBe("damaged");
  });

  it("refuses restart marks that are missing or out of order", () => {
    expect(faultOf(read(changed(stream, placeOf(stream, 0xd0), 0, 0)))).toMatch(/damaged|truncated/);
    expect(faultOf(read(changed(stream, placeOf(stream, 0xd1) + 1, 0xd4)))).toBe("damaged");
  });

  it("refuses data that end early, and a component that has no scan", () => {
    expect(faultOf(read(stream.subarray(0, stream.length - 60)))).toBe("truncated");
    const byComponent = streamIn("lossless-rgb-by-component");
    const last = byComponent.findLastIndex((_, at) => byComponent[at] === 0xff && byComponent[at + 1] === 0xda);
    expect(faultOf(read(byComponent.subarray(0, last)))).toBe("truncated");
  });

  it("refuses components of different size, a size beyond its data, and tables that are not there", () => {
    const colour = streamIn("lossless-rgb-restarts");
    const frame = placeOf(colour, 0xc3);
    expect(faultOf(read(changed(colour, frame + 11, 0x22)))).toBe("unsupported");
    expect(faultOf(read(changed(colour, frame + 5, 0x40, 0, 0x40, 0)))).toBe("truncated");
    expect(faultOf(read(changed(stream, scan + 6, 0x30)))).toBe("damaged");
    expect(faultOf(read(changed(stream, scan + 5, 9)))).toBe("damaged");
  });
});

describe("jpegStreamOf refuses", () => {
  const stream = streamIn("lossless-8");
  it.each<[string, Uint8Array, string]>([
    ["a stream without a frame", Uint8Array.of(0xff, 0xd8, 0xff, 0xd9), "truncated"],
    ["a stream that ends within a segment", stream.subarray(0, 8), "truncated"],
    ["a scan before its frame", changed(stream, placeOf(stream, 0xc3) + 1, 0xe0), "damaged"],
    ["a frame of another coding", changed(stream, placeOf(stream, 0xc3) + 1, 0xc6), "unsupported"],
    ["a frame too short for its components", changed(stream, placeOf(stream, 0xc3) + 9, 4), "damaged"],
    ["a scan of no component", changed(stream, placeOf(stream, 0xda) + 4, 0), "damaged"],
  ])("%s", (_, bytes, kind) => {
    expect(faultOf(() => jpegStreamOf(bytes))).toBe(kind);
  });

  it("two frames, more scans than components, and a short quantisation table", () => {
    const start = placeOf(stream, 0xc3);
    const frame = [...stream.subarray(start, start + 13)];
    const scan = [...stream.subarray(placeOf(stream, 0xda), stream.length)];
    const joined = (...parts: number[][]) => Uint8Array.from(parts.flat());
    const head = [...stream.subarray(0, placeOf(stream, 0xda))];
    expect(faultOf(() => jpegStreamOf(joined(head, frame, scan)))).toBe("damaged");
    const once = scan.slice(0, scan.lastIndexOf(0xd9) - 1);
    expect(faultOf(() => jpegStreamOf(joined(head, once, once, [0xff, 0xd9])))).toBe("damaged");
    expect(faultOf(() => jpegStreamOf(joined([0xff, 0xd8, 0xff, 0xdb, 0, 4, 0, 1], scan)))).toBe("damaged");
  });
});

describe("huffmanTableOf and CodedBits", () => {
  const counts = (...first: number[]) => Uint8Array.from({ length: 16 }, (_, at) => first[at] ?? 0);
  // Codes 0, 10, 110 for 5, 6 and 7.
  const table = huffmanTableOf({ counts: counts(1, 1, 1), symbols: Uint8Array.of(5, 6, 7) });

  it("reads codes, numbers of either sign and a filled-up 0xFF", () => {
    const bits = new CodedBits(Uint8Array.of(0b0101_1001, 0xff, 0x00, 0b1000_0000));
    expect([bits.symbol(table), bits.symbol(table), bits.symbol(table)]).toEqual([5, 6, 7]);
    // 01 of two bits stands for -2, 11 for 3 (T.81, table F.1).
    expect([bits.signed(2), bits.signed(2), bits.signed(0)]).toEqual([-2, 3, 0]);
    expect(bits.bits(6)).toBe(0b111111);
  });

  it("refuses codes of no meaning, and bits behind the end", () => {
    expect(faultOf(() => new CodedBits(Uint8Array.of(0xfe, 0, 0)).symbol(table))).toBe("damaged");
    expect(faultOf(() => new CodedBits(Uint8Array.of(0b1100_0000)).bits(9))).toBe("truncated");
    expect(faultOf(() => new CodedBits(new Uint8Array(0)).symbol(table))).toBe("truncated");
  });

  it("refuses more codes than a length has, and symbols that are not there", () => {
    const symbols = new Uint8Array(300);
    expect(faultOf(() => huffmanTableOf({ counts: counts(3), symbols }))).toBe("damaged");
    expect(faultOf(() => huffmanTableOf({ counts: counts(1, 1), symbols: symbols.subarray(0, 1) }))).toBe("damaged");
  });
});
