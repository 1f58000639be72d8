import { InflatedTooLarge, inflateWithin } from "../inflate-within.ts";
import { unpackRuns } from "../unpack-runs.ts";
import type { TiffPage } from "./tiff-page.ts";
import { unpackLzw } from "./unpack-lzw.ts";

/** Thrown where a piece of the picture is not there or holds less than its size needs. */
export class PieceIncomplete extends Error {
  override readonly name = "PieceIncomplete";
  constructor(
    readonly expectedBytes: number,
    readonly foundBytes: number,
  ) {
    super(`a piece of the picture needs ${expectedBytes} bytes, found ${foundBytes}`);
  }
}

/**
 * The samples of a TIFF page, put together from its strips or tiles.
 * Takes the file's bytes, the page, and whether the low byte of a number stands first.
 * Gives one sample a channel, pixel by pixel.
 * @throws PieceIncomplete; Error from the inflater for damaged data.
 * @source TIFF revision 6.0, 1992, sections 3, 14 and 15 (memory)
 */
export function tiffSamplesOf(bytes: Uint8Array, page: TiffPage, littleEndian: boolean): Uint16Array {
  const { columns, rows, channels, piece, apart } = page;
  const across = Math.ceil(columns / piece.columns);
  const count = across * Math.ceil(rows / piece.rows);
  const channelsEach = apart ? 1 : channels;
  const samples = new Uint16Array(columns * rows * channels);
  const rowBytes = Math.ceil((piece.columns * channelsEach * page.depth) / 8);
  for (let nth = 0; nth < count * (apart ? channels : 1); nth++) {
    const inPlane = nth % count;
    const [left, top] = [(inPlane % across) * piece.columns, Math.floor(inPlane / across) * piece.rows];
    // The last strip ends with the picture; a tile is always whole.
    const pieceRows = piece.columns === columns ? Math.min(piece.rows, rows - top) : piece.rows;
    const unpacked = pieceOf(bytes, page, { nth, expectedBytes: rowBytes * pieceRows });
    const first = Math.floor(nth / count);
    placePiece(unpacked, { page, samples, littleEndian, rowBytes, left, top, first, channelsEach });
  }
  return samples;
}

function pieceOf(bytes: Uint8Array, page: TiffPage, { nth, expectedBytes }: { nth: number; expectedBytes: number }) {
  const from = page.offsets[nth] ?? bytes.length;
  const packed = bytes.subarray(from, from + (page.lengths[nth] ?? expectedBytes));
  if (page.compression === "none") {
    if (packed.length < expectedBytes) throw new PieceIncomplete(expectedBytes, packed.length);
    return packed;
  }
  if (packed.length === 0) throw new PieceIncomplete(expectedBytes, 0);
  const unpacked = new Uint8Array(expectedBytes);
  const filled = unpackers[page.compression](packed, unpacked);
  if (filled < expectedBytes) throw new PieceIncomplete(expectedBytes, filled);
  return unpacked;
}

const unpackers = { lzw: unpackLzw, runs: unpackRuns, deflate: unpackDeflated } as const;

/** Some writers put more rows into the last strip than the picture has; what is over is left out, and a bomb as well. */
function unpackDeflated(packed: Uint8Array, into: Uint8Array): number {
  let filled = 0;
  const take = (part: Uint8Array) => {
    const fits = part.subarray(0, into.length - filled);
    into.set(fits, filled);
    filled += fits.length;
  };
  try {
    inflateWithin([packed], { format: "zlib", limit: 2 * into.length + 65_536, take });
  } catch (cause) {
    if (!(cause instanceof InflatedTooLarge)) throw cause;
  }
  return filled;
}

interface Placing {
  readonly page: TiffPage;
  readonly samples: Uint16Array;
  readonly littleEndian: boolean;
  readonly rowBytes: number;
  readonly left: number;
  readonly top: number;
  /** The channel that the piece begins with, and how many it holds. */
  readonly first: number;
  readonly channelsEach: number;
}

function placePiece(unpacked: Uint8Array, placing: Placing): void {
  const { page, samples, rowBytes, left, top, first, channelsEach } = placing;
  const { columns, rows, channels, piece, depth, differences } = page;
  const line = new Uint16Array(Math.min(piece.columns, columns - left) * channelsEach);
  const largest = 2 ** depth - 1;
  for (let row = top; row < Math.min(top + piece.rows, rows); row++) {
    readLine(unpacked, (row - top) * rowBytes, { line, depth, littleEndian: placing.littleEndian });
    if (differences)
      for (let at = channelsEach; at < line.length; at++)
        line[at] = ((line[at] ?? 0) + (line[at - channelsEach] ?? 0)) & largest;
    for (let at = 0; at < line.length; at++) {
      const column = left + Math.floor(at / channelsEach);
      samples[(row * columns + column) * channels + first + (at % channelsEach)] = line[at] ?? 0;
    }
  }
}

/** Samples of less than a byte stand with the first in the highest bits, each row on its own. */
function readLine(
  bytes: Uint8Array,
  from: number,
  { line, depth, littleEndian }: { line: Uint16Array; depth: number; littleEndian: boolean },
): void {
  const [low, high] = littleEndian ? [0, 1] : [1, 0];
  for (let at = 0; at < line.length; at++) {
    if (depth === 16) line[at] = (bytes[from + 2 * at + low] ?? 0) | ((bytes[from + 2 * at + high] ?? 0) << 8);
    else {
      const bit = at * depth;
      line[at] = ((bytes[from + (bit >> 3)] ?? 0) >> (8 - depth - (bit & 7))) & (2 ** depth - 1);
    }
  }
}
