import { JpegFault } from "../jpeg/jpeg-fault.ts";
import { segmentAt } from "../jpeg/jpeg-stream.ts";

/** The size that a packed picture's own header declares. */
export interface CodestreamSize {
  readonly columns: number;
  readonly rows: number;
  readonly components: number;
  readonly bits: number;
}

/**
 * The size of a JPEG-LS picture from its header.
 * Takes its bytes. Gives the size, or nothing where there is no such header.
 * @source Recommendation ITU-T T.87, 1998, annex C: frame mark 0xFFF7, laid out as those of T.81 (memory)
 */
export function jpegLsSizeOf(bytes: Uint8Array): CodestreamSize | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  try {
    for (let at = 2; at < bytes.length; ) {
      const segment = segmentAt(bytes, at);
      if (segment === undefined || segment.code === 0xda) return undefined;
      if (segment.code === 0xf7 && segment.body.length >= 6) return sizeOfFrame(segment.body);
      at = segment.end;
    }
  } catch (cause) {
    if (!(cause instanceof JpegFault)) throw cause;
  }
  return undefined;
}

function sizeOfFrame(body: Uint8Array): CodestreamSize {
  const [bits = 0, rowsHigh = 0, rowsLow = 0, columnsHigh = 0, columnsLow = 0, components = 0] = body;
  return { bits, components, rows: (rowsHigh << 8) | rowsLow, columns: (columnsHigh << 8) | columnsLow };
}

/** A picture in more tiles than its kind allows was made to fill the memory. */
const maxTiles = 65_535;
const fixedBytes = 42;

/**
 * The size of a JPEG 2000 picture from its header.
 * Takes its bytes, beginning with its start mark. Gives the size, or nothing where there is no such header, where its
 * components differ, or where it is cut into more tiles than can be.
 * @source Recommendation ITU-T T.800, 2002, annex A.5.1, the SIZ mark (memory)
 */
export function jpeg2000SizeOf(bytes: Uint8Array): CodestreamSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < fixedBytes + 3 || view.getUint32(0) !== 0xff4fff51) return undefined;
  const [right = 0, bottom = 0, left = 0, top = 0] = [8, 12, 16, 20].map((at) => view.getUint32(at));
  const [tileColumns = 0, tileRows = 0, tileLeft = 0, tileTop = 0] = [24, 28, 32, 36].map((at) => view.getUint32(at));
  const components = view.getUint16(40);
  const kinds = bytes.subarray(fixedBytes, fixedBytes + 3 * components);
  const alike = kinds.every((byte, at) => byte === (at % 3 === 0 ? kinds[0] : 1));
  const tiles = Math.ceil((right - tileLeft) / tileColumns) * Math.ceil((bottom - tileTop) / tileRows);
  if (kinds.length < 3 * components || !alike || !(tiles <= maxTiles)) return undefined;
  return { columns: right - left, rows: bottom - top, components, bits: ((kinds[0] ?? 0) & 0x7f) + 1 };
}
