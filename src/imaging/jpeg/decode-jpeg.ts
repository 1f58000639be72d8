import { orientationOf } from "../exif-orientation.ts";
import type { FilmPixels } from "../film-pixels.ts";
import { luminanceOf } from "../luminance.ts";
import { turnedFilm } from "../turned-film.ts";
import { type UnpackedJpeg, type UnpackingJpeg, unpackJpeg } from "./unpack-jpeg.ts";

/**
 * The film in a JPEG: grey or colour of 8 bits, grey of 12 bits, or lossless of 2 to 16; colour becomes luminance.
 * Takes the file's bytes, and what they are unpacked for.
 * Gives MONOCHROME2 samples at the depth of the file, turned as EXIF asks; no other metadata is read.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`.
 */
export async function decodeJpeg(bytes: Uint8Array, about: UnpackingJpeg): Promise<FilmPixels> {
  const unpacked = await unpackJpeg(bytes, about);
  return turnedFilm(filmOf(unpacked), await orientationOf(bytes));
}

function filmOf({ columns, rows, components, bits, data, apart, lossy }: UnpackedJpeg): FilmPixels {
  const wasColour = components === 3;
  const pixels = columns * rows;
  const layout = apart ? { step: 1, apart: pixels } : { step: 3, apart: 1 };
  return {
    columns,
    rows,
    bitsStored: bits,
    samples: wasColour ? luminanceOf(data, layout, pixels) : new Uint16Array(data),
    photometric: "MONOCHROME2",
    technical: { sourceFormat: "jpeg", wasColour, lossy },
  };
}
