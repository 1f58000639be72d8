const deflated = "1.2.840.10008.1.2.1.99";
/** Explicit little endian, filled up to the length of the other. */
const explicit = "1.2.840.10008.1.2.1\0\0\0";
const firstElement = 132;
const longHeaders: readonly string[] = ["OB", "UN", "OW", "SQ", "UT"];

/**
 * The header of a deflated DICOM file as that of the same file unpacked.
 * Takes the file's bytes. Gives the bytes up to where the packed data begin, with a transfer syntax that says they are not
 * packed; nothing for other files. A parser that looks for the header's end by reading on would take packed bytes for an
 * attribute.
 * @source DICOM PS3.10 7.1 file meta information, PS3.5 annex A.5 deflated little endian (memory)
 */
export function unpackedHeader(bytes: Uint8Array): Uint8Array | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let syntaxAt: number | undefined;
  let end = bytes.length;
  let at = firstElement;
  while (at + 8 <= end && view.getUint16(at, true) === 2) {
    const element = view.getUint16(at + 2, true);
    const [value, next] = valueAt(view, at);
    // The group's own length says where it ends.
    if (element === 0 && value + 4 <= bytes.length) end = Math.min(end, next + view.getUint32(value, true));
    if (element === 0x10 && textOf(bytes.subarray(value, next)) === deflated) syntaxAt = value;
    at = next;
  }
  if (syntaxAt === undefined || at > bytes.length) return undefined;
  const header = bytes.slice(0, at);
  header.set(new TextEncoder().encode(explicit), syntaxAt);
  return header;
}

/** Where the value of an attribute begins and ends. */
function valueAt(view: DataView, at: number): readonly [value: number, next: number] {
  const representation = String.fromCharCode(view.getUint8(at + 4), view.getUint8(at + 5));
  if (!longHeaders.includes(representation)) return [at + 8, at + 8 + view.getUint16(at + 6, true)];
  if (at + 12 > view.byteLength) return [view.byteLength, view.byteLength];
  return [at + 12, at + 12 + view.getUint32(at + 8, true)];
}

const textOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes.subarray(0, 64)).replace(/[\0 ]+$/, "");
