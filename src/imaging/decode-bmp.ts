import { checkDeclaredSize, type FilmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { luminance } from "./luminance.ts";
import { refuseFile } from "./refuse-file.ts";

/** What the two headers of a BMP declare. */
interface BmpHeader {
  readonly columns: number;
  readonly rows: number;
  readonly upsideDown: boolean;
  readonly depth: number;
  /** Where the palette begins, how many bytes an entry has, and how many entries there are. */
  readonly palette: { readonly from: number; readonly step: number; readonly count: number };
  readonly pixelsFrom: number;
}

const depths = [1, 4, 8, 24, 32];
const fileHeaderBytes = 14;
const oldHeaderBytes = 12;
const usualHeaderBytes = 40;

/**
 * The film in a BMP: palette of 1, 4 or 8 bits, or colour of 24 or 32, not packed; colour becomes luminance.
 * Takes the file's bytes, its name for messages, and the limits. Gives MONOCHROME2 samples of 8 bits.
 * @throws Refusal `file.damaged`, `file.unsupported`, `file.impossibleSize`, `file.truncated`.
 * @source Microsoft, BITMAPFILEHEADER, BITMAPCOREHEADER and BITMAPINFOHEADER structures (memory)
 */
export function decodeBmp(bytes: Uint8Array, name: string, limits: FilmLimits): FilmPixels {
  const header = headerOf(bytes, name);
  checkDeclaredSize(name, header, limits);
  const { columns, rows, depth, pixelsFrom } = header;
  // Every row is filled up to a multiple of four bytes.
  const rowBytes = Math.ceil((columns * depth) / 32) * 4;
  const expectedBytes = pixelsFrom + rowBytes * rows;
  if (bytes.length < expectedBytes)
    throw refuseFile(name, {
      code: "file.truncated",
      state: `it ends early: ${expectedBytes} bytes are needed and ${bytes.length} are there; copy it again`,
      facts: { expectedBytes, foundBytes: bytes.length },
    });
  const { samples, wasColour } = depth <= 8 ? ofPalette(bytes, header, rowBytes) : ofColour(bytes, header, rowBytes);
  const technical = { sourceFormat: "bmp", wasColour, lossy: false } as const;
  return { columns, rows, bitsStored: 8, samples, photometric: "MONOCHROME2", technical };
}

function headerOf(bytes: Uint8Array, name: string): BmpHeader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const headBytes = bytes.length < 18 ? 0 : view.getUint32(14, true);
  const isOld = headBytes === oldHeaderBytes;
  if ((!isOld && headBytes < usualHeaderBytes) || headBytes > 200 || bytes.length < fileHeaderBytes + headBytes)
    throw refuseFile(name, { code: "file.damaged", state: "its BMP header is damaged; export the film again" });
  const rows = isOld ? view.getUint16(20, true) : view.getInt32(22, true);
  const depth = view.getUint16(isOld ? 24 : 28, true);
  checkPacking(view, { depth, isOld }, name);
  const stated = isOld ? 0 : view.getUint32(46, true);
  // Three masks may stand between the header and the palette; pictures of such depths have none.
  const palette = { from: fileHeaderBytes + headBytes, step: isOld ? 3 : 4, count: stated || 2 ** Math.min(depth, 8) };
  return {
    columns: isOld ? view.getUint16(18, true) : Math.max(0, view.getInt32(18, true)),
    rows: Math.abs(rows),
    upsideDown: rows > 0,
    depth,
    palette,
    pixelsFrom: view.getUint32(10, true),
  };
}

const [plain, masks] = [0, 3];

/** Masks are read where they name the usual order of blue, green and red. */
function checkPacking(view: DataView, { depth, isOld }: { depth: number; isOld: boolean }, name: string): void {
  const packing = isOld ? plain : view.getUint32(30, true);
  const usualMasks = [0xff0000, 0xff00, 0xff];
  const masked =
    packing === masks &&
    depth === 32 &&
    view.byteLength >= 66 &&
    usualMasks.every((mask, nth) => view.getUint32(54 + 4 * nth, true) === mask);
  if (depths.includes(depth) && (packing === plain || masked)) return;
  throw refuseFile(name, {
    code: "file.unsupported",
    state: `it is a BMP of ${depth} bits packed in way ${packing}, which is not read; save it as PNG`,
    facts: { depth, packing },
  });
}

type Greys = { readonly samples: Uint16Array; readonly wasColour: boolean };

function ofPalette(bytes: Uint8Array, header: BmpHeader, rowBytes: number): Greys {
  const { depth, palette } = header;
  const greys = new Uint16Array(256);
  let wasColour = false;
  for (let nth = 0; nth < Math.min(palette.count, 256); nth++) {
    const at = palette.from + nth * palette.step;
    const [blue = 0, green = 0, red = 0] = bytes.subarray(at, Math.min(at + 3, header.pixelsFrom));
    greys[nth] = luminance(red, green, blue);
    wasColour ||= red !== green || green !== blue;
  }
  const samples = eachPixel(header, (row, column) => {
    const bit = column * depth;
    const byte = bytes[header.pixelsFrom + row * rowBytes + (bit >> 3)] ?? 0;
    return greys[(byte >> (8 - depth - (bit & 7))) & (2 ** depth - 1)] ?? 0;
  });
  return { samples, wasColour };
}

function ofColour(bytes: Uint8Array, header: BmpHeader, rowBytes: number): Greys {
  const step = header.depth / 8;
  const samples = eachPixel(header, (row, column) => {
    const at = header.pixelsFrom + row * rowBytes + column * step;
    return luminance(bytes[at + 2] ?? 0, bytes[at + 1] ?? 0, bytes[at] ?? 0);
  });
  return { samples, wasColour: true };
}

/** Rows stand from the bottom up unless their number is negative. */
function eachPixel(header: BmpHeader, sampleAt: (row: number, column: number) => number): Uint16Array {
  const { columns, rows, upsideDown } = header;
  const samples = new Uint16Array(columns * rows);
  for (let row = 0, at = 0; row < rows; row++)
    for (let column = 0; column < columns; column++, at++)
      samples[at] = sampleAt(upsideDown ? rows - 1 - row : row, column);
  return samples;
}
