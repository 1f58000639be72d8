import { Refusal } from "../core/refusal.ts";
import type { CalibrationFilm } from "../record/calibration-film.ts";
import type { Exercise, ExerciseMark } from "../record/exercise.ts";
import { exerciseSteps, markOfNumber } from "../record/exercise-steps.ts";
import type { NewExerciseMark } from "./api.ts";
import { type FilmList, filmsOf } from "./calibration-films.ts";

/**
 * An exercise with one mark more: of what it is follows from its number alone, the window only says where.
 * @throws Refusal `record.conflict` where another window marked meanwhile or everything is marked, `input.impossible`
 * for a place that is not on the film, and where the films have changed
 */
export function withMark(
  stood: Exercise,
  list: FilmList,
  { number, at, by, zoom }: NewExerciseMark,
  markedAt: string,
): Exercise {
  checkNumber(stood, number);
  const next = markOfNumber(exerciseSteps(filmsOf(stood, list), stood.seed), number);
  const place = next?.step.film.places[next.placeIndex];
  if (next === undefined || place === undefined)
    throw new Refusal("record.conflict", "Cannot mark: every place of this exercise is marked");
  const { film, round, mirrored } = next.step;
  checkOnFilm(at, film);
  const mark: ExerciseMark = { film: film.name, kind: place.kind, round, mirrored, at, by, zoom, markedAt };
  return { ...stood, marks: [...stood.marks, mark] };
}

/**
 * An exercise without its last mark.
 * @throws Refusal `record.conflict` where that mark is not the last any more, `record.nothingToUndo`
 */
export function withoutLastMark(stood: Exercise, number: number): Exercise {
  if (stood.marks.length === 0) throw new Refusal("record.nothingToUndo", "Cannot take back: nothing is marked yet");
  checkNumber(stood, number + 1);
  return { ...stood, marks: stood.marks.slice(0, -1) };
}

function checkNumber({ marks }: Exercise, number: number): void {
  if (number === marks.length) return;
  throw new Refusal("record.conflict", "Cannot do this: another window has gone on with this exercise; look again", {
    marked: marks.length,
  });
}

function checkOnFilm([u, v]: readonly [number, number], { columns, rows, name }: CalibrationFilm): void {
  if (u >= 0 && u <= columns - 1 && v >= 0 && v <= rows - 1) return;
  const says = `lies outside ${name}, which has ${columns} columns and ${rows} rows`;
  throw new Refusal("input.impossible", `Cannot mark: the place ${says}`, {}, [{ path: "at", says }]);
}
