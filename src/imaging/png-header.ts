import type { PngChunk } from "./png-chunks.ts";

/** What the first chunk of a PNG declares. */
export interface PngHeader {
  readonly columns: number;
  readonly rows: number;
  readonly depth: number;
  readonly colour: "grey" | "rgb" | "palette" | "greyAlpha" | "rgbAlpha";
  readonly interlaced: boolean;
}

const colours: Readonly<Record<number, { name: PngHeader["colour"]; channels: number; depths: readonly number[] }>> = {
  0: { name: "grey", channels: 1, depths: [1, 2, 4, 8, 16] },
  2: { name: "rgb", channels: 3, depths: [8, 16] },
  3: { name: "palette", channels: 1, depths: [1, 2, 4, 8] },
  4: { name: "greyAlpha", channels: 2, depths: [8, 16] },
  6: { name: "rgbAlpha", channels: 4, depths: [8, 16] },
};

/**
 * The header of a PNG.
 * Takes its first chunk. Gives the header, or nothing for a chunk that no PNG can begin with.
 * @source W3C, Portable Network Graphics third edition, 2025, clause 11.2.1 (memory)
 */
export function pngHeaderOf(first: PngChunk | undefined): PngHeader | undefined {
  if (first?.type !== "IHDR" || first.data.length !== 13) return undefined;
  const view = new DataView(first.data.buffer, first.data.byteOffset, 13);
  const depth = view.getUint8(8);
  const colour = colours[view.getUint8(9)];
  const [packing, filtering, interlacing] = [view.getUint8(10), view.getUint8(11), view.getUint8(12)];
  if (!colour?.depths.includes(depth) || packing !== 0 || filtering !== 0 || interlacing > 1) return undefined;
  return {
    columns: view.getUint32(0),
    rows: view.getUint32(4),
    depth,
    colour: colour.name,
    interlaced: interlacing === 1,
  };
}

/** Column and row where each of the seven passes of an interlaced PNG begins, and its steps. */
const passes = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/**
 * How many bytes a PNG of this header unpacks to: one filter byte a row and the packed samples.
 * Takes the header. Gives the count of bytes.
 */
export function unpackedBytesOf(header: PngHeader): number {
  if (!header.interlaced) return bytesOfPass(header, header.columns, header.rows);
  return passes.reduce((sum, [column, row, columnStep, rowStep]) => {
    const columns = Math.ceil((header.columns - column) / columnStep);
    const rows = Math.ceil((header.rows - row) / rowStep);
    return columns > 0 && rows > 0 ? sum + bytesOfPass(header, columns, rows) : sum;
  }, 0);
}

function bytesOfPass(header: PngHeader, columns: number, rows: number): number {
  return rows * (1 + Math.ceil((columns * channelsOf(header) * header.depth) / 8));
}

/** How many numbers a pixel has. */
export function channelsOf(header: PngHeader): number {
  return Object.values(colours).find(({ name }) => name === header.colour)?.channels ?? 1;
}
