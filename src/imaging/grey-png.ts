import { zlibSync } from "fflate";
import { pngChunk, pngOf } from "./png-chunks.ts";

/** A grey picture whose rows of bytes are ready for a PNG: high byte first where a sample has two. */
export interface GreyRows {
  readonly columns: number;
  readonly rows: number;
  readonly depth: 8 | 16;
  readonly bytes: Uint8Array;
}

/** Packing effort: 6 takes a third less room than 1 on films, and more gains next to nothing. */
const packingLevel = 6;

/**
 * A grey PNG of given rows, with nothing in it but the picture.
 * Takes the rows and further chunks to put before the picture. Gives the file's bytes, the same for the same input.
 * @source W3C, Portable Network Graphics third edition, 2025, clauses 9 and 11 (memory)
 */
export function greyPng(picture: GreyRows, extraChunks: readonly Uint8Array[] = []): Uint8Array {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, picture.columns);
  view.setUint32(4, picture.rows);
  view.setUint8(8, picture.depth);
  const packed = zlibSync(filteredRows(picture), { level: packingLevel });
  return pngOf([
    pngChunk("IHDR", header),
    ...extraChunks,
    pngChunk("IDAT", packed),
    pngChunk("IEND", new Uint8Array(0)),
  ]);
}

type Filter = (left: number, up: number, upLeft: number) => number;

/** What each filter takes a byte to be, from its neighbours; the file keeps the difference. */
const filters: readonly Filter[] = [
  () => 0,
  (left) => left,
  (_left, up) => up,
  (left, up) => (left + up) >> 1,
  (left, up, upLeft) => nearest(left + up - upLeft, { left, up, upLeft }),
];

function nearest(guess: number, { left, up, upLeft }: { left: number; up: number; upLeft: number }): number {
  const [toLeft, toUp, toUpLeft] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - upLeft)];
  if (toLeft <= toUp && toLeft <= toUpLeft) return left;
  return toUp <= toUpLeft ? up : upLeft;
}

/** Each row behind the number of the filter that leaves the smallest differences in it. */
function filteredRows({ columns, rows, depth, bytes }: GreyRows): Uint8Array {
  const step = depth / 8;
  const length = columns * step;
  const filtered = new Uint8Array(rows * (length + 1));
  const candidate = new Uint8Array(length);
  for (let row = 0; row < rows; row++) {
    const current = bytes.subarray(row * length, (row + 1) * length);
    const above = row === 0 ? new Uint8Array(length) : bytes.subarray((row - 1) * length, row * length);
    let smallest = Number.POSITIVE_INFINITY;
    filters.forEach((filter, kind) => {
      const sum = applyFilter(filter, { current, above, step }, candidate);
      if (sum >= smallest) return;
      smallest = sum;
      filtered[row * (length + 1)] = kind;
      filtered.set(candidate, row * (length + 1) + 1);
    });
  }
  return filtered;
}

/** Writes a row's differences and gives their sum, taken as signed bytes. */
function applyFilter(
  filter: Filter,
  row: { current: Uint8Array; above: Uint8Array; step: number },
  into: Uint8Array,
): number {
  const { current, above, step } = row;
  let sum = 0;
  for (let at = 0; at < current.length; at++) {
    const guess = filter(current[at - step] ?? 0, above[at] ?? 0, above[at - step] ?? 0);
    const difference = ((current[at] ?? 0) - guess) & 0xff;
    into[at] = difference;
    sum += difference < 128 ? difference : 256 - difference;
  }
  return sum;
}
