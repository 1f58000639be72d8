import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import { z } from "zod";
import { faultAt } from "../core/refusal.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import { filmLimits } from "../imaging/film-limits.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";

/** The name of a film's file, as the shell takes it in the place of pixels. */
export const filmFile = z
  .string()
  .min(1)
  .describe("A film's file: DICOM, PNG, JPEG, TIFF or BMP; relative to where you stand.");

/**
 * The film in a file that an input names.
 * Takes the file's name and the path in the input at which it stands.
 * @throws Refusal `file.missing` or `file.tooLarge` at that path; what decoding refuses.
 */
export async function filmOfFile(name: string, path: string): Promise<FilmPixels> {
  const facts = await stat(name).catch(() => undefined);
  if (facts === undefined || !facts.isFile())
    throw faultAt(path, `${name} is not there, or is no file; the name of a film's file is accepted`, "file.missing");
  if (facts.size > filmLimits.maxBytes)
    throw faultAt(path, `${name} has ${facts.size} bytes; ${filmLimits.maxBytes} are accepted`, "file.tooLarge");
  return decodeFilm(await readFile(name), basename(name));
}
