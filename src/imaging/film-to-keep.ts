import { brightIsHigh } from "./bright-is-high.ts";
import { cropFilm, type FilmPart } from "./crop.ts";
import { decodeFilm } from "./decode-film.ts";
import { encodePng16 } from "./encode-png16.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { invertFilm } from "./invert.ts";

/** How a file is to be taken in. */
export interface FilmWanted {
  /** The file's name, for messages alone. */
  readonly name: string;
  /** The part to cut out, in whole pixels; what is left out of it runs from the first or to the last. */
  readonly part?: Partial<FilmPart>;
  /** Bright and dark stand the wrong way round in the file. */
  readonly invert?: boolean;
}

/** A film ready to be kept: its PNG of 16 bits, and all that is known of it but the samples. */
export interface FilmToKeep {
  readonly png: Uint8Array;
  readonly film: Omit<FilmPixels, "samples">;
  /** The part that was cut out; absent where the whole was taken. */
  readonly part?: FilmPart;
}

/**
 * A file turned into the film that is kept of it: decoded in full depth, cut, turned as asked, and bright is high.
 * Takes the file's bytes and what is wanted of them. Gives the film and its PNG.
 * @throws Refusal as decodeFilm, and `input.impossible` for a part that reaches outside.
 */
export async function filmToKeep(bytes: Uint8Array, wanted: FilmWanted): Promise<FilmToKeep> {
  const whole = await decodeFilm(bytes, wanted.name);
  const part = wholePart(wanted.part, whole);
  const cut = part === undefined ? whole : cropFilm(whole, part);
  const kept = brightIsHigh(wanted.invert === true ? invertFilm(cut) : cut);
  const { samples: _inThePng, ...film } = kept;
  return { png: encodePng16(kept), film, ...(part === undefined ? {} : { part }) };
}

function wholePart(part: Partial<FilmPart> | undefined, { columns, rows }: FilmPixels): FilmPart | undefined {
  if (part === undefined) return undefined;
  const { column = 0, row = 0 } = part;
  return { column, row, columns: part.columns ?? columns - column, rows: part.rows ?? rows - row };
}
