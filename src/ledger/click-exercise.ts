import { clickErrorTopic } from "../core/radiograph/click-error-topic.ts";
import { Refusal } from "../core/refusal.ts";
import { answer } from "../core/topic.ts";
import type { CalibrationFilm } from "../record/calibration-film.ts";
import type { Exercise, ExerciseMark } from "../record/exercise.ts";

/** What a finished exercise keeps beside its marks: the topic's version and its whole answer. */
export type ExerciseAnswer = Pick<NonNullable<Exercise["finished"]>, "topicVersion" | "answer">;

/**
 * What the click error's topic answers to the marks of an exercise.
 * Takes the marks of both rounds, and the films with their true places.
 * @throws Refusal `input.impossible` where a place has no mark in one of the rounds; the topic's own
 */
export function clickExerciseAnswer(marks: readonly ExerciseMark[], films: readonly CalibrationFilm[]): ExerciseAnswer {
  const pairs = films.flatMap((film) => film.places.map((place) => pairOf(film, place, marks)));
  return { topicVersion: clickErrorTopic.version, answer: answer(clickErrorTopic, { pairs, films: "made" }) };
}

function pairOf(film: CalibrationFilm, place: CalibrationFilm["places"][number], marks: readonly ExerciseMark[]) {
  const of = (round: 1 | 2): ExerciseMark => {
    const found = marks.find((mark) => mark.film === film.name && mark.kind === place.kind && mark.round === round);
    if (found !== undefined) return found;
    throw new Refusal("input.impossible", `Cannot work out the click error: ${film.name} has a place not marked yet`);
  };
  const [first, second] = [of(1), of(2)];
  return {
    ...{ film: film.name, name: place.kind, first: first.at, second: second.at },
    ...{ firstBy: first.by, secondBy: second.by, firstZoom: first.zoom, secondZoom: second.zoom },
    ...(place.truth === undefined ? {} : { truth: place.truth }),
  };
}
