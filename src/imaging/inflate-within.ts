import { Inflate, Unzlib } from "fflate";

/** Thrown when packed bytes hold more than they may. */
export class InflatedTooLarge extends Error {
  override readonly name = "InflatedTooLarge";
  constructor(readonly limit: number) {
    super(`the packed data hold more than ${limit} bytes`);
  }
}

/** How bytes are packed, how many may come out, and who takes them. */
export interface Inflating {
  readonly format: "zlib" | "raw";
  readonly limit: number;
  readonly take: (part: Uint8Array) => void;
}

/** Deflate packs at most about 1,030 to 1, so one slice unpacks to 17 MB at worst before the limit is looked at. */
const sliceBytes = 16_384;

/**
 * Unpacks deflated bytes slice by slice and stops at the limit, so that a small file can't fill the memory.
 * Takes the packed bytes in one or more pieces. Gives the number of bytes unpacked; each part goes to `take`.
 * @throws InflatedTooLarge beyond the limit; Error from the inflater for damaged or incomplete data.
 */
export function inflateWithin(pieces: readonly Uint8Array[], inflating: Inflating): number {
  let total = 0;
  const onPart = (part: Uint8Array) => {
    total += part.length;
    if (total > inflating.limit) throw new InflatedTooLarge(inflating.limit);
    inflating.take(part);
  };
  const inflater = inflating.format === "zlib" ? new Unzlib(onPart) : new Inflate(onPart);
  for (const piece of pieces)
    for (let from = 0; from < piece.length; from += sliceBytes)
      inflater.push(piece.subarray(from, from + sliceBytes), false);
  inflater.push(new Uint8Array(0), true);
  return total;
}
