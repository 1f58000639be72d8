const clear = 256;
const end = 257;
const mostCodes = 4096;

/**
 * Unpacks the codes of growing length that TIFF files use, the highest bit first.
 * Takes the packed bytes and the room to fill. Gives how many bytes were filled; it stops at the first code of no
 * meaning, and what does not fit is left out.
 * @source TIFF revision 6.0, 1992, section 13, LZW compression (memory)
 */
export function unpackLzw(packed: Uint8Array, into: Uint8Array): number {
  // Each code is a piece of what was filled before: where it begins and how long it is.
  const starts = new Uint32Array(mostCodes);
  const lengths = new Uint32Array(mostCodes);
  let [next, width, filled, before] = [end + 1, 9, 0, clear];
  for (let bit = 0; bit + width <= packed.length * 8 && filled < into.length; ) {
    const code = codeAt(packed, bit, width);
    bit += width;
    if (code === end) break;
    if (code === clear) {
      [next, width, before] = [end + 1, 9, clear];
      continue;
    }
    const isNew = before !== clear && next < mostCodes;
    // A new code is what came before and one byte more: just the bytes that stand there, with the first of this piece.
    if (isNew) {
      lengths[next] = (before < clear ? 1 : (lengths[before] ?? 0)) + 1;
      starts[next] = filled - (lengths[next] ?? 0) + 1;
    }
    if (code >= next + (isNew ? 1 : 0)) break;
    const from = starts[code] ?? 0;
    const length = code < clear ? 1 : (lengths[code] ?? 0);
    const fits = Math.min(length, into.length - filled);
    // Byte by byte, since a piece may reach into what it is just filling.
    for (let nth = 0; nth < fits; nth++) into[filled + nth] = code < clear ? code : (into[from + nth] ?? 0);
    filled += fits;
    if (isNew) next += 1;
    // Widths grow one code early.
    if (next >= 2 ** width - 1 && width < 12) width += 1;
    before = code;
  }
  return filled;
}

function codeAt(packed: Uint8Array, bit: number, width: number): number {
  const at = bit >> 3;
  const three = ((packed[at] ?? 0) << 16) | ((packed[at + 1] ?? 0) << 8) | (packed[at + 2] ?? 0);
  return (three >> (24 - width - (bit & 7))) & ((1 << width) - 1);
}
