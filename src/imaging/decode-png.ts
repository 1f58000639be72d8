import { type DecodedPng, decode } from "fast-png";
import { orientationOf } from "./exif-orientation.ts";
import { checkDeclaredSize, type FilmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { InflatedTooLarge, inflateWithin } from "./inflate-within.ts";
import { luminance, luminanceOf } from "./luminance.ts";
import { type PngChunk, PngTruncated, pngChunksOf, pngOf } from "./png-chunks.ts";
import { channelsOf, type PngHeader, pngHeaderOf, unpackedBytesOf } from "./png-header.ts";
import { readOrRefuse, refuseFile } from "./refuse-file.ts";
import { turnedFilm } from "./turned-film.ts";

/** The chunk in which encodePng16 keeps how many of the 16 bits are in use; see docs/decisions/film-files.md. */
export const bitsChunk = "biTs";
/** All that reading the samples needs. Texts, colour profiles and dates go no further than this list. */
const neededChunks: readonly string[] = ["IHDR", "PLTE", "IDAT", "IEND"];

/**
 * The film in a PNG: grey, colour or palette of 1 to 16 bits; colour becomes luminance, transparency is left out.
 * Takes the file's bytes, its name for messages, and the limits.
 * Gives MONOCHROME2 samples at the depth of the file; an EXIF orientation is applied; gamma and profiles are not.
 * @throws Refusal `file.truncated`, `file.impossibleSize`, `file.unsupported`, `file.damaged`.
 * @source W3C, Portable Network Graphics third edition, 2025 (memory)
 */
export async function decodePng(bytes: Uint8Array, name: string, limits: FilmLimits): Promise<FilmPixels> {
  const chunks = chunksOrRefuse(bytes, name);
  const header = pngHeaderOf(chunks[0]);
  if (header === undefined)
    throw refuseFile(name, { code: "file.damaged", state: "its PNG header is damaged; export the film again" });
  checkDeclaredSize(name, header, limits);
  checkPackedData(chunks, header, name);
  const needed = chunks.filter((chunk) => neededChunks.includes(chunk.type)).map((chunk) => chunk.whole);
  const png = readOrRefuse(name, { code: "file.damaged", state: "its PNG data are damaged; export it again" }, () =>
    decode(pngOf(needed), { checkCrc: true }),
  );
  const film = filmOf(png, header, chunks);
  const exif = chunks.find((chunk) => chunk.type === "eXIf");
  return turnedFilm(film, exif === undefined ? undefined : await orientationOf(exif.data));
}

function chunksOrRefuse(bytes: Uint8Array, name: string): PngChunk[] {
  try {
    return pngChunksOf(bytes);
  } catch (cause) {
    if (!(cause instanceof PngTruncated)) throw cause;
    const { expectedBytes, foundBytes } = cause;
    const state = `it ends early: at least ${expectedBytes} bytes are needed and ${foundBytes} are there; copy it again`;
    throw refuseFile(name, { code: "file.truncated", state, facts: { expectedBytes, foundBytes }, cause });
  }
}

/** Counts what the packed data hold before memory is taken for it, so that neither a bomb nor a stump goes further. */
function checkPackedData(chunks: readonly PngChunk[], header: PngHeader, name: string): void {
  if (header.interlaced && header.depth < 8)
    throw refuseFile(name, {
      code: "file.unsupported",
      state: `it is an interlaced PNG of ${header.depth} bits, which is not read; save it without interlacing`,
    });
  const expectedBytes = unpackedBytesOf(header);
  const packed = chunks.filter((chunk) => chunk.type === "IDAT").map((chunk) => chunk.data);
  const foundBytes = countOrRefuse(packed, expectedBytes, name);
  if (foundBytes < expectedBytes)
    throw refuseFile(name, {
      code: "file.truncated",
      state: `its picture ends early: ${expectedBytes} bytes are needed and ${foundBytes} are there; copy it again`,
      facts: { expectedBytes, foundBytes },
    });
}

function countOrRefuse(packed: readonly Uint8Array[], limit: number, name: string): number {
  try {
    return inflateWithin(packed, { format: "zlib", limit, take: () => undefined });
  } catch (cause) {
    if (cause instanceof InflatedTooLarge)
      throw refuseFile(name, {
        code: "file.impossibleSize",
        state: `its picture holds more than the ${limit} bytes that its header declares; export the film again`,
        facts: { expectedBytes: limit },
        cause,
      });
    throw refuseFile(name, { code: "file.damaged", state: "its PNG data are damaged; export it again", cause });
  }
}

function filmOf(png: DecodedPng, header: PngHeader, chunks: readonly PngChunk[]): FilmPixels {
  const { columns, rows, colour } = header;
  const wasColour = colour === "rgb" || colour === "rgbAlpha" || colour === "palette";
  const technical = { sourceFormat: "png", wasColour, lossy: false } as const;
  const film = { columns, rows, photometric: "MONOCHROME2", technical } as const;
  if (colour === "palette") return { ...film, bitsStored: 8, samples: paletteSamples(png, header) };
  if (wasColour) {
    const layout = { step: channelsOf(header), apart: 1 };
    return { ...film, bitsStored: header.depth, samples: luminanceOf(png.data, layout, columns * rows) };
  }
  return { ...film, ...greySamples(png, header, chunks) };
}

function greySamples(
  png: DecodedPng,
  header: PngHeader,
  chunks: readonly PngChunk[],
): Pick<FilmPixels, "bitsStored" | "samples"> {
  const { columns, rows, depth } = header;
  if (depth < 8) return { bitsStored: depth, samples: unpackedBits(png.data, header) };
  const step = channelsOf(header);
  const samples = step === 1 ? new Uint16Array(png.data) : everyNth(png.data, step, columns * rows);
  const own = chunks.find((chunk) => chunk.type === bitsChunk)?.data[0];
  if (depth === 16 && own !== undefined && fitIn(samples, own)) return { bitsStored: own, samples };
  return { bitsStored: depth, samples };
}

function fitIn(samples: Uint16Array, bits: number): boolean {
  const above = 2 ** bits;
  for (let at = 0; at < samples.length; at++) if ((samples[at] ?? 0) >= above) return false;
  return true;
}

function everyNth(data: ArrayLike<number>, step: number, count: number): Uint16Array {
  const samples = new Uint16Array(count);
  for (let index = 0; index < count; index++) samples[index] = data[index * step] ?? 0;
  return samples;
}

/** Samples of less than a byte, which stand packed with the first pixel in the highest bits, each row on its own. */
function unpackedBits(packed: ArrayLike<number>, header: PngHeader): Uint16Array {
  const { columns, rows, depth } = header;
  const bytesPerRow = Math.ceil((columns * depth) / 8);
  const samples = new Uint16Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const bit = column * depth;
      const byte = packed[row * bytesPerRow + (bit >> 3)] ?? 0;
      samples[row * columns + column] = (byte >> (8 - depth - (bit & 7))) & (2 ** depth - 1);
    }
  return samples;
}

function paletteSamples(png: DecodedPng, header: PngHeader): Uint16Array {
  const grey = (png.palette ?? []).map(([red = 0, green = 0, blue = 0]) => luminance(red, green, blue));
  const indices = header.depth < 8 ? unpackedBits(png.data, header) : new Uint16Array(png.data);
  return indices.map((index) => grey[index] ?? 0);
}
