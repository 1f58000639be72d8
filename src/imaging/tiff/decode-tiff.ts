import { checkDeclaredSize, type FilmLimits } from "../film-limits.ts";
import type { FilmPixels } from "../film-pixels.ts";
import { luminance, luminanceOf } from "../luminance.ts";
import { refuseFile } from "../refuse-file.ts";
import { turnedFilm } from "../turned-film.ts";
import { type TiffDirectories, tiffDirectoriesOf } from "./tiff-fields.ts";
import { isSmallCopy, type TiffPage, tiffPageOf } from "./tiff-page.ts";
import { PieceIncomplete, tiffSamplesOf } from "./tiff-samples.ts";

/**
 * The film in a TIFF: grey of 1 to 16 bits either way round, colour of 8 or 16, or palette; strips or tiles; not packed,
 * LZW, deflated or PackBits; one page, smaller copies of it apart. Colour becomes luminance.
 * Takes the file's bytes, its name for messages, and the limits.
 * Gives samples at the depth of the file, turned as its orientation asks; no other metadata is read.
 * @throws Refusal `file.damaged`, `file.unsupported`, `file.impossibleSize`, `file.truncated`.
 * @source TIFF revision 6.0, 1992 (memory)
 */
export function decodeTiff(bytes: Uint8Array, name: string, limits: FilmLimits): FilmPixels {
  const found = tiffDirectoriesOf(bytes);
  if (found === undefined || found.directories.length === 0)
    throw refuseFile(name, {
      code: "file.damaged",
      state: "its TIFF directory is damaged or cut off; export the film again",
    });
  const page = pageOrRefuse(found, name);
  checkSizes(page, name, limits);
  const samples = samplesOrRefuse(bytes, { page, littleEndian: found.littleEndian, name });
  return turnedFilm(filmOf(page, samples), page.orientation);
}

function pageOrRefuse({ directories }: TiffDirectories, name: string): TiffPage {
  const pages = directories.filter((fields) => !isSmallCopy(fields));
  const [only] = pages.length === 0 ? directories : pages;
  const page = pages.length > 1 ? `a TIFF of ${pages.length} pages` : only && tiffPageOf(only);
  if (page !== undefined && typeof page !== "string") return page;
  const state = `it is ${page}, which is not read; save the one picture as PNG`;
  throw refuseFile(name, { code: "file.unsupported", state });
}

function checkSizes(page: TiffPage, name: string, limits: FilmLimits): void {
  checkDeclaredSize(name, page, limits);
  // Strips and tiles are unpacked one at a time, each as large as it says.
  checkDeclaredSize(name, page.piece, limits);
  const samples = page.columns * page.rows * page.channels;
  if ((samples * page.depth) / 8 <= limits.maxBytes) return;
  const state = `its header declares ${samples} samples of ${page.depth} bits, more than are read; export it in grey`;
  throw refuseFile(name, { code: "file.impossibleSize", state, facts: { samples, depth: page.depth } });
}

function samplesOrRefuse(
  bytes: Uint8Array,
  { page, littleEndian, name }: { page: TiffPage; littleEndian: boolean; name: string },
): Uint16Array {
  try {
    return tiffSamplesOf(bytes, page, littleEndian);
  } catch (cause) {
    if (!(cause instanceof PieceIncomplete))
      throw refuseFile(name, {
        code: "file.damaged",
        state: "its packed data are damaged; export the film again",
        cause,
      });
    const { expectedBytes, foundBytes } = cause;
    const state = `a part of its picture ends early: ${expectedBytes} bytes are needed and ${foundBytes} are there`;
    throw refuseFile(name, {
      code: "file.truncated",
      state: `${state}; copy it again`,
      facts: { expectedBytes, foundBytes },
      cause,
    });
  }
}

function filmOf(page: TiffPage, samples: Uint16Array): FilmPixels {
  const { columns, rows, colour, channels, depth } = page;
  const wasColour = colour === "rgb" || colour === "palette";
  const film = {
    ...{ columns, rows },
    photometric: colour === "whiteIsZero" ? ("MONOCHROME1" as const) : ("MONOCHROME2" as const),
    technical: { sourceFormat: "tiff" as const, wasColour, lossy: false },
  };
  const pixels = columns * rows;
  if (colour === "rgb")
    return { ...film, bitsStored: depth, samples: luminanceOf(samples, { step: channels, apart: 1 }, pixels) };
  // Further channels are transparency.
  const first = channels === 1 ? samples : Uint16Array.from({ length: pixels }, (_, at) => samples[at * channels] ?? 0);
  return { ...film, ...(colour === "palette" ? throughPalette(first, page) : { bitsStored: depth, samples: first }) };
}

/** A palette holds all reds, then all greens, then all blues, of 16 bits. */
function throughPalette(
  indices: Uint16Array,
  { palette, depth }: TiffPage,
): Pick<FilmPixels, "bitsStored" | "samples"> {
  const step = stepOfBytes(palette);
  const size = 2 ** depth;
  const level = (at: number) => (palette[at] ?? 0) / (step ?? 1);
  const greys = Array.from({ length: size }, (_, at) => luminance(level(at), level(at + size), level(at + 2 * size)));
  return { bitsStored: step === undefined ? 16 : 8, samples: indices.map((index) => greys[index] ?? 0) };
}

/** By what a palette of bytes was stretched to 16 bits: said twice, put in front of nought, or not at all. */
const stepOfBytes = (palette: readonly number[]): number | undefined =>
  [1, 256, 257].find((step) => palette.every((level) => level % step === 0 && level / step < 256));
