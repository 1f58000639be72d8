import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import { Refusal } from "../core/refusal.ts";
import { type CalibrationFilm, calibrationFilmSchema } from "../record/calibration-film.ts";
import type { Exercise } from "../record/exercise.ts";

const listSchema = z.array(calibrationFilmSchema).min(1);

/** A list of films with its own hash, by which an exercise knows the films that it was begun on. */
export interface FilmList {
  readonly films: readonly CalibrationFilm[];
  readonly sha256: string;
}

/** The films of the click exercise as they ship: their list with the true places, and their pictures. */
export interface CalibrationFilms {
  readonly list: () => Promise<FilmList>;
  /** A film's PNG. @throws Refusal `record.notFound` */
  readonly picture: (name: string) => Promise<Uint8Array>;
}

/** The films in a folder of shipped data; the list is read once. */
export function calibrationFilmsIn(shipped: string): CalibrationFilms {
  const folder = join(shipped, "data", "calibration");
  let read: Promise<FilmList> | undefined;
  const list = (): Promise<FilmList> => {
    read ??= readList(join(folder, "films.json"));
    return read;
  };
  const picture = async (name: string): Promise<Uint8Array> => {
    if ((await list()).films.some((film) => film.name === name)) return readFile(join(folder, "films", `${name}.png`));
    throw new Refusal("record.notFound", `Cannot show ${name}: there is no such film in the exercise`, { film: name });
  };
  return { list, picture };
}

async function readList(file: string): Promise<FilmList> {
  const text = await readFile(file, "utf8");
  return { films: listSchema.parse(JSON.parse(text)), sha256: createHash("sha256").update(text).digest("hex") };
}

/**
 * The films of an exercise that is under way.
 * @throws Refusal `input.impossible` where the program ships other films by now: its marks are of places that are no more
 */
export function filmsOf({ films }: Pick<Exercise, "films">, list: FilmList): readonly CalibrationFilm[] {
  if (films === list.sha256) return list.films;
  throw new Refusal(
    "input.impossible",
    "Cannot go on with this exercise: its films have changed with the program; remove it and begin anew",
  );
}
