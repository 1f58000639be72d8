/**
 * Unpacks runs of bytes: a count and the bytes themselves, or a count and one byte to repeat.
 * Takes the packed bytes and the room to fill. Gives how many bytes were filled; what does not fit is left out.
 * @source TIFF revision 6.0, 1992, section 9 PackBits; DICOM PS3.5 annex G.3, the same (memory)
 */
export function unpackRuns(packed: Uint8Array, into: Uint8Array): number {
  let filled = 0;
  for (let at = 0; at < packed.length && filled < into.length; ) {
    const head = packed[at++] ?? 0;
    if (head === 128) continue;
    if (head < 128) {
      const bytes = packed.subarray(at, at + Math.min(head + 1, into.length - filled));
      into.set(bytes, filled);
      filled += bytes.length;
      at += head + 1;
    } else {
      const end = Math.min(filled + 257 - head, into.length);
      into.fill(packed[at++] ?? 0, filled, end);
      filled = end;
    }
  }
  return filled;
}
