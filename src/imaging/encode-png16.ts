import { brightIsHigh } from "./bright-is-high.ts";
import { bitsChunk } from "./decode-png.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { greyPng, type Packing } from "./grey-png.ts";
import { pngChunk } from "./png-chunks.ts";

/**
 * A film as a 16-bit grey PNG without loss and without any metadata.
 * Takes a film and how hard to pack it. Gives the file's bytes: samples as they are, and in a chunk of our own how many bits they use, so that
 * decoding brings both back. The samples of a MONOCHROME1 film are counted from the other end first ({@link brightIsHigh}),
 * because a larger sample of a PNG is always brighter; the film looks the same.
 */
export function encodePng16(film: FilmPixels, packing: Packing = "small"): Uint8Array {
  const { columns, rows, bitsStored, samples } = brightIsHigh(film);
  const bytes = new Uint8Array(2 * samples.length);
  for (let index = 0; index < samples.length; index++) {
    const sample = samples[index] ?? 0;
    bytes[2 * index] = sample >> 8;
    bytes[2 * index + 1] = sample & 0xff;
  }
  return greyPng({ columns, rows, depth: 16, bytes }, [pngChunk(bitsChunk, Uint8Array.of(bitsStored))], packing);
}
