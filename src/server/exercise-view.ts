import type { Exercise } from "../record/exercise.ts";
import { exerciseSteps } from "../record/exercise-steps.ts";
import type { CalibrationView, ExerciseLine, ExerciseView } from "./api.ts";
import type { Bench } from "./bench.ts";
import { type CalibrationFilms, type FilmList, filmsOf } from "./calibration-films.ts";

/**
 * An exercise as a window sees it: what is shown in which order, without the true places, and the marks so far. One that
 * is finished shows no films any more.
 * @throws Refusal `input.impossible` where it is under way on other films than those that ship
 */
export function exerciseView({ films, marks, ...exercise }: Exercise, list: FilmList): ExerciseView {
  const steps = exercise.finished === undefined ? exerciseSteps(filmsOf({ films }, list), exercise.seed) : [];
  return {
    ...exercise,
    steps: steps.map(({ film, round, mirrored }) => ({
      ...{ film: film.name, tooth: film.tooth, columns: film.columns, rows: film.rows, uRunsTo: film.uRunsTo },
      ...{ round, mirrored, places: film.places.map(({ kind, says }) => ({ kind, says })) },
    })),
    marks: marks.map(({ at, by }) => ({ at, by })),
  };
}

/** The calibration room as it stands: the exercises that were done, and the click error that sums use now. */
export async function calibrationView({ store }: Bench, films: CalibrationFilms): Promise<CalibrationView> {
  const { films: list } = await films.list();
  const { clickSigmaPx, clickSigmaFrom } = await store.settings();
  const places = list.reduce((sum, film) => sum + film.places.length, 0);
  return {
    ...{ films: list.length, marks: 2 * places },
    clickSigma: clickSigmaFrom === undefined ? { px: clickSigmaPx } : { px: clickSigmaPx, from: clickSigmaFrom },
    exercises: (await store.exercises()).map((exercise) => lineOf(exercise)),
  };
}

function lineOf({ id, kind, who, begunAt, marks, finished }: Exercise): ExerciseLine {
  const line = { id, kind, who, begunAt, marked: marks.length };
  return finished === undefined ? line : { ...line, finished };
}
