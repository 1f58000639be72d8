import dicomParser from "dicom-parser";
import type { FilmLimits } from "../film-limits.ts";
import { InflatedTooLarge, inflateWithin } from "../inflate-within.ts";
import { refuseFile } from "../refuse-file.ts";

/** What is read of the data set before its picture, for what it may unpack to. */
const firstLook = 1_000_000;
/** What may stand behind a picture: filling, signatures. */
const behindPicture = 1_000_000;

/**
 * A deflated file unpacked.
 * Takes its bytes, the header to put before the data set in the place of as many bytes, the file's name and the limits.
 * Gives header and data set. As soon as the size of the picture is known, no more is unpacked than that size needs.
 * @throws Refusal `file.impossibleSize` beyond the size that it states, `file.tooLarge` beyond the limits; Error for
 * damaged data.
 */
export function inflatedDataSet(
  bytes: Uint8Array,
  header: Uint8Array,
  { name, limits }: { readonly name: string; readonly limits: FilmLimits },
): Uint8Array {
  const parts: Uint8Array[] = [];
  const room = { found: header.length, next: firstLook, most: limits.maxBytes };
  const take = (part: Uint8Array): void => {
    parts.push(part);
    room.found += part.length;
    if (room.found >= room.next) {
      room.most = Math.min(room.most, statedBytes(joined([header, ...parts])) ?? room.most);
      room.next = 4 * room.found;
    }
    if (room.found > room.most) throw new InflatedTooLarge(room.most);
  };
  try {
    inflateWithin([bytes.subarray(header.length)], { format: "raw", limit: limits.maxBytes, take });
  } catch (cause) {
    if (cause instanceof InflatedTooLarge) throw tooMuch(name, cause, limits);
    throw cause;
  }
  return joined([header, ...parts]);
}

function tooMuch(name: string, cause: InflatedTooLarge, { maxBytes }: FilmLimits): Error {
  const { limit } = cause;
  const byItself = limit < maxBytes;
  const state = byItself
    ? `unpacked it has more than ${limit} bytes, which is more than its size needs; export the film again`
    : `unpacked it has more than ${limit} bytes, which is the limit`;
  return refuseFile(name, { code: byItself ? "file.impossibleSize" : "file.tooLarge", state, facts: { limit }, cause });
}

/** How long a file unpacked can be, told from its beginning; nothing where that ends before the picture. */
function statedBytes(beginning: Uint8Array): number | undefined {
  try {
    const dataSet = dicomParser.parseDicom(beginning, { untilTag: "x7fe00010" });
    const pixels = dataSet.elements.x7fe00010;
    const numberOf = (tag: string, usual: number) => dataSet.uint16(tag) ?? usual;
    const pixelCount = numberOf("x00280010", 0) * numberOf("x00280011", 0);
    const bytesEach = (numberOf("x00280002", 1) * numberOf("x00280100", 16)) / 8;
    return pixels && pixels.dataOffset + pixelCount * bytesEach + behindPicture;
  } catch {
    return undefined;
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
