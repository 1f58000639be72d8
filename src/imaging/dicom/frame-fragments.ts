import { refuseFile } from "../refuse-file.ts";
import { truncatedPicture } from "./truncated-picture.ts";

const item = 0xe000fffe;
const endOfItems = 0xe0ddfffe;

/**
 * The packed bytes of the one frame of a DICOM file, put together from the fragments that it may come in.
 * Takes the file's bytes, where its pixel data begin, and its name. The first fragment is a table of places, which one
 * frame does not need.
 * Gives the bytes; a single fragment is not copied.
 * @throws Refusal `file.truncated` where a fragment reaches beyond the file, `file.damaged` for what is no fragment.
 * @source DICOM PS3.5, annex A.4, encapsulated pixel data (memory)
 */
export function frameOfFragments(bytes: Uint8Array, from: number, name: string): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const fragments: Uint8Array[] = [];
  for (let at = from; at + 8 <= bytes.length; ) {
    const tag = view.getUint32(at, true);
    if (tag === endOfItems) break;
    if (tag !== item) throw noFragment(name);
    const end = at + 8 + view.getUint32(at + 4, true);
    if (end > bytes.length) throw truncatedPicture(name, end, bytes.length);
    fragments.push(bytes.subarray(at + 8, end));
    at = end;
  }
  const [, first, ...further] = fragments;
  if (first === undefined) throw truncatedPicture(name, from + 17, bytes.length);
  return further.length === 0 ? first : joined([first, ...further]);
}

function noFragment(name: string): Error {
  const state = "the packed pieces of its picture do not follow each other; export the film again";
  return refuseFile(name, { code: "file.damaged", state });
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
