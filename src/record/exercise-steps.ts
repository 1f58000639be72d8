import { type SeededRandom, seededRandom } from "../core/statistics/seeded-random.ts";
import type { CalibrationFilm } from "./calibration-film.ts";

/** One showing of a film in an exercise. */
export interface ExerciseStep {
  readonly film: CalibrationFilm;
  readonly round: 1 | 2;
  /** Whether the film is shown mirrored. */
  readonly mirrored: boolean;
}

/**
 * The showings of an exercise in their order: every film once, then every film once more.
 * The second round shows the first half of the first round before its second half, each in an order of its own, so that
 * at least half as many films as there are lie between the two showings of any; half of the second round is mirrored.
 * Takes the films and the exercise's seed. The same of both gives the same order on every machine.
 * @source docs/methods/click-error, the exercise
 */
export function exerciseSteps(films: readonly CalibrationFilm[], seed: number): ExerciseStep[] {
  const random = seededRandom(seed);
  const first = shuffled(films, random);
  const half = Math.ceil(first.length / 2);
  const second = [...shuffled(first.slice(0, half), random), ...shuffled(first.slice(half), random)];
  const mirrored = new Set(shuffled(films, random).slice(0, Math.floor(films.length / 2)));
  return [
    ...first.map((film) => ({ film, round: 1 as const, mirrored: false })),
    ...second.map((film) => ({ film, round: 2 as const, mirrored: mirrored.has(film) })),
  ];
}

/** A list in another order (R. A. Fisher, F. Yates, Statistical tables, 1938: each place draws from what is left). */
function shuffled<Item>(items: readonly Item[], { uniform }: SeededRandom): Item[] {
  const left = [...items];
  const drawn: Item[] = [];
  while (left.length > 0) drawn.push(...left.splice(Math.floor(uniform() * left.length), 1));
  return drawn;
}

/** What is marked next: the step, and which of its places; absent when everything is marked. */
export interface NextMark {
  readonly step: ExerciseStep;
  readonly stepIndex: number;
  readonly placeIndex: number;
}

/** What the mark of a number (0 for the first) is of. */
export function markOfNumber(steps: readonly ExerciseStep[], number: number): NextMark | undefined {
  let before = 0;
  for (const [stepIndex, step] of steps.entries()) {
    const { length } = step.film.places;
    if (number < before + length) return { step, stepIndex, placeIndex: number - before };
    before += length;
  }
  return undefined;
}
