import { Refusal } from "../core/refusal.ts";
import { orientationOf } from "./exif-orientation.ts";
import { checkDeclaredSize, type FilmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { CodecMissing, type DecodedJpeg, decodeJpegBytes, type LoadWasm } from "./jpeg-codec.ts";
import { type JpegHeader, jpegHeaderOf } from "./jpeg-header.ts";
import { luminanceOf } from "./luminance.ts";
import { refuseFile } from "./refuse-file.ts";
import { turnedFilm } from "./turned-film.ts";

/** A picture in more scans than this was made to keep a computer busy. */
const maxScans = 100;

/**
 * The film in a JPEG: grey or colour of 8 bits, baseline, extended or progressive; colour becomes luminance.
 * Takes the file's bytes, its name for messages, the limits, and who brings the codec's WebAssembly (browsers).
 * Gives MONOCHROME2 samples of 8 bits, turned as EXIF asks; no other metadata is read.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`.
 */
export async function decodeJpeg(
  bytes: Uint8Array,
  name: string,
  limits: FilmLimits,
  loadWasm?: LoadWasm,
): Promise<FilmPixels> {
  const header = jpegHeaderOf(bytes);
  if (header === undefined)
    throw refuseFile(name, { code: "file.damaged", state: "its JPEG header is damaged; export the film again" });
  checkHeader(name, header, limits, bytes.length);
  const decoded = await decodedOrRefuse(bytes, name, loadWasm);
  if (decoded.columns !== header.columns || decoded.rows !== header.rows || decoded.components !== header.components)
    throw refuseFile(name, { code: "file.damaged", state: "its JPEG headers disagree; export the film again" });
  return turnedFilm(filmOf(decoded), await orientationOf(bytes));
}

function checkHeader(name: string, header: JpegHeader, limits: FilmLimits, foundBytes: number): void {
  const unsupported = unsupportedText(header);
  if (unsupported !== undefined)
    throw refuseFile(name, { code: "file.unsupported", state: `${unsupported}; save it as PNG` });
  checkDeclaredSize(name, header, limits);
  if (!header.ended)
    throw refuseFile(name, {
      code: "file.truncated",
      state: `it ends after ${foundBytes} bytes without the mark that ends a JPEG; copy it again`,
      facts: { expectedBytes: foundBytes + 2, foundBytes },
    });
}

function unsupportedText(header: JpegHeader): string | undefined {
  if (header.coding === "lossless" || header.coding === "arithmetic")
    return `it is a JPEG of ${header.coding} coding, which is not read`;
  if (header.precision !== 8) return `it is a JPEG of ${header.precision} bits, and 8 are read`;
  if (header.components !== 1 && header.components !== 3)
    return `it is a JPEG of ${header.components} colour components, and 1 or 3 are read`;
  if (header.scans > maxScans) return `its picture is spread over ${header.scans} scans, and ${maxScans} are read`;
  return undefined;
}

async function decodedOrRefuse(bytes: Uint8Array, name: string, loadWasm?: LoadWasm): Promise<DecodedJpeg> {
  try {
    return await decodeJpegBytes(bytes, loadWasm);
  } catch (cause) {
    // Whoever brings the codec may have said better why it is not there.
    if (cause instanceof CodecMissing && cause.cause instanceof Refusal) throw cause.cause;
    if (cause instanceof CodecMissing)
      throw refuseFile(name, {
        code: "file.unsupported",
        state: "the part of the program that reads JPEG could not be loaded; start again, or save the film as PNG",
        cause,
      });
    throw refuseFile(name, { code: "file.damaged", state: "its JPEG data are damaged; export the film again", cause });
  }
}

function filmOf({ columns, rows, components, data }: DecodedJpeg): FilmPixels {
  const wasColour = components === 3;
  return {
    columns,
    rows,
    bitsStored: 8,
    samples: wasColour ? luminanceOf(data, { step: 3, apart: 1 }, columns * rows) : new Uint16Array(data),
    photometric: "MONOCHROME2",
    technical: { sourceFormat: "jpeg", wasColour, lossy: true },
  };
}
