import { refuseFile } from "../refuse-file.ts";
import { unpackRuns } from "../unpack-runs.ts";
import { truncatedPicture } from "./truncated-picture.ts";

/** What a run-length packed frame unpacks to. */
export interface RleSize {
  readonly pixels: number;
  readonly components: number;
  readonly bytesEach: number;
}

const headerBytes = 64;
/** Two bytes make at most 128. */
const mostPerByte = 64;

/**
 * The samples of a run-length packed frame: one segment for each byte of each component, the highest byte first.
 * Takes the packed frame, what it unpacks to, and the file's name.
 * Gives the samples with their low byte first, one component after the other.
 * @throws Refusal `file.damaged` for a header that does not fit, `file.truncated` where a segment ends early.
 * @source DICOM PS3.5, annex G, RLE lossless compression (memory)
 */
export function rleFrame(frame: Uint8Array, { pixels, components, bytesEach }: RleSize, name: string): Uint8Array {
  const expectedBytes = pixels * components * bytesEach;
  if (frame.length < headerBytes || frame.length * mostPerByte < expectedBytes)
    throw truncatedPicture(name, expectedBytes, frame.length);
  const places = placesOf(frame, components * bytesEach, name);
  const samples = new Uint8Array(expectedBytes);
  const plane = new Uint8Array(pixels);
  for (let nth = 0; nth < components * bytesEach; nth++) {
    const filled = unpackRuns(frame.subarray(places[nth], places[nth + 1]), plane);
    if (filled < pixels) throw truncatedPicture(name, pixels, filled);
    const component = Math.floor(nth / bytesEach);
    const byte = bytesEach - 1 - (nth % bytesEach);
    const from = component * pixels * bytesEach + byte;
    for (let pixel = 0; pixel < pixels; pixel++) samples[from + pixel * bytesEach] = plane[pixel] ?? 0;
  }
  return samples;
}

/** Where each segment begins, and the end of the last; they must rise. */
function placesOf(frame: Uint8Array, wanted: number, name: string): number[] {
  const view = new DataView(frame.buffer, frame.byteOffset, headerBytes);
  const count = view.getUint32(0, true);
  const places = Array.from({ length: wanted }, (_, nth) => view.getUint32(4 + 4 * nth, true));
  const inOrder = [...places, frame.length].every((place, nth, all) => place >= (all[nth - 1] ?? headerBytes));
  if (count === wanted && inOrder) return [...places, frame.length];
  const state = "the header of its run-length packed picture does not fit its size; export the film again";
  throw refuseFile(name, { code: "file.damaged", state, facts: { segments: count, expectedSegments: wanted } });
}
