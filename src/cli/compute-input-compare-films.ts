import { writeFile } from "node:fs/promises";
import { z } from "zod";
import { outputParts } from "../core/basis.ts";
import {
  compareFilmsOutput,
  comparisonOutput,
  comparisonParts,
} from "../core/radiograph/compare-films/compare-films-input.ts";
import { compareFilmsTopic } from "../core/radiograph/compare-films-topic.ts";
import { faultAt } from "../core/refusal.ts";
import { brightIsHigh } from "../imaging/bright-is-high.ts";
import { encodePng16 } from "../imaging/encode-png16.ts";
import { filmFile, filmOfFile } from "./compute-input-film.ts";
import type { FilmTopic } from "./compute-input-film-topic.ts";

const input = z.strictObject({
  before: z.strictObject({ film: filmFile }),
  after: z.strictObject({ film: filmFile }),
  ...comparisonParts,
  write: z
    .string()
    .min(1)
    .optional()
    .describe("Where to write the difference as a PNG: middle grey where nothing changed."),
});

const output = z.strictObject({
  ...comparisonOutput,
  written: z.string().optional().describe("The file that holds the difference."),
  ...outputParts,
});

/** `compareFilms` as the shell asks it: files in the place of pixels, and a file for the difference. */
export const compareFilmsOfFiles: FilmTopic<typeof input> = {
  topic: compareFilmsTopic,
  input,
  output,
  resolved: async ({ before, after, write, ...asked }) => ({
    before: await greyOf(before.film, "before.film"),
    after: await greyOf(after.film, "after.film"),
    ...asked,
    wantsDifference: write !== undefined,
  }),
  told: async (answered, { write }) => {
    const { difference, ...told } = compareFilmsOutput.parse(answered);
    if (difference === undefined || write === undefined) return told;
    await written(write, difference);
    return { ...told, written: write };
  },
};

/** A film's grey in shares of its full range, larger brighter. */
async function greyOf(name: string, path: string) {
  const { columns, rows, samples, bitsStored } = brightIsHigh(await filmOfFile(name, path));
  return { columns, rows, grey: Float32Array.from(samples, (sample) => sample / (2 ** bitsStored - 1)) };
}

const fullRange = 65_535;

/** Writes a difference of -1 to 1 as grey of 16 bits, 0 in the middle. */
async function written(
  name: string,
  { columns, rows, values }: { columns: number; rows: number; values: Float64Array },
) {
  const samples = Uint16Array.from(values, (one) => Math.round((fullRange * (1 + Math.min(1, Math.max(-1, one)))) / 2));
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  const picture = encodePng16({ columns, rows, bitsStored: 16, samples, photometric: "MONOCHROME2", technical });
  await writeFile(name, picture).catch(() => {
    throw faultAt("write", `${name} can't be written; name a file in a folder that you may write to`, "export.failed");
  });
}
