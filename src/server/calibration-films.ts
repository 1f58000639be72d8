import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import { Refusal } from "../core/refusal.ts";
import { type CalibrationFilm, calibrationFilmSchema } from "../record/calibration-film.ts";

const listSchema = z.array(calibrationFilmSchema).min(1);

/** The films of the click exercise as they ship: their list with the true places, and their pictures. */
export interface CalibrationFilms {
  readonly list: () => Promise<readonly CalibrationFilm[]>;
  /** A film's PNG. @throws Refusal `record.notFound` */
  readonly picture: (name: string) => Promise<Uint8Array>;
}

/** The films in a folder of shipped data; the list is read once. */
export function calibrationFilmsIn(shipped: string): CalibrationFilms {
  const folder = join(shipped, "data", "calibration");
  let read: Promise<readonly CalibrationFilm[]> | undefined;
  const list = (): Promise<readonly CalibrationFilm[]> => {
    read ??= readList(join(folder, "films.json"));
    return read;
  };
  const picture = async (name: string): Promise<Uint8Array> => {
    if ((await list()).some((film) => film.name === name)) return readFile(join(folder, "films", `${name}.png`));
    throw new Refusal("record.notFound", `Cannot show ${name}: there is no such film in the exercise`, { film: name });
  };
  return { list, picture };
}

const readList = async (file: string): Promise<readonly CalibrationFilm[]> =>
  listSchema.parse(JSON.parse(await readFile(file, "utf8")));
