/** One chunk of a PNG: its four letters, its data, and the whole with length and check sum as it stands in the file. */
export interface PngChunk {
  readonly type: string;
  readonly data: Uint8Array;
  readonly whole: Uint8Array;
}

/** Thrown when a PNG ends before its end chunk. */
export class PngTruncated extends Error {
  override readonly name = "PngTruncated";
  constructor(
    readonly expectedBytes: number,
    readonly foundBytes: number,
  ) {
    super(`expected at least ${expectedBytes} bytes, found ${foundBytes}`);
  }
}

/** The eight bytes that begin every PNG. */
const pngSignature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

/** Length, type and check sum around the data of a chunk. */
const frameBytes = 12;

/**
 * The chunks of a PNG up to and with its end chunk.
 * Takes the file's bytes. Gives the chunks as views on them, nothing copied; what follows the end chunk is left out.
 * @throws PngTruncated where a chunk reaches beyond the file or the end chunk is missing.
 */
export function pngChunksOf(bytes: Uint8Array): PngChunk[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: PngChunk[] = [];
  let at = pngSignature.length;
  while (chunks.at(-1)?.type !== "IEND") {
    if (at + frameBytes > bytes.length) throw new PngTruncated(at + frameBytes, bytes.length);
    const end = at + frameBytes + view.getUint32(at);
    if (end > bytes.length) throw new PngTruncated(end, bytes.length);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    chunks.push({ type, data: bytes.subarray(at + 8, end - 4), whole: bytes.subarray(at, end) });
    at = end;
  }
  return chunks;
}

/**
 * A PNG of given chunks.
 * Takes each chunk's whole bytes in order. Gives the file's bytes.
 */
export function pngOf(wholes: readonly Uint8Array[]): Uint8Array {
  const parts = [pngSignature, ...wholes];
  const png = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    png.set(part, at);
    at += part.length;
  }
  return png;
}

/**
 * One chunk with its length and check sum.
 * Takes the type's four letters and the data. Gives the whole chunk's bytes.
 */
export function pngChunk(type: string, data: Uint8Array): Uint8Array {
  const whole = new Uint8Array(data.length + frameBytes);
  const view = new DataView(whole.buffer);
  view.setUint32(0, data.length);
  for (let letter = 0; letter < 4; letter++) whole[4 + letter] = type.charCodeAt(letter);
  whole.set(data, 8);
  view.setUint32(8 + data.length, crc32(whole.subarray(4, 8 + data.length)));
  return whole;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? 0xedb88320 ^ (remainder >>> 1) : remainder >>> 1;
  return remainder;
});

/** The check sum of a chunk: CRC-32 of type and data (PNG third edition, clause 5.5 and annex D). */
function crc32(bytes: Uint8Array): number {
  let remainder = 0xffffffff;
  for (const byte of bytes) remainder = (crcTable[(remainder ^ byte) & 0xff] ?? 0) ^ (remainder >>> 8);
  return (remainder ^ 0xffffffff) >>> 0;
}
