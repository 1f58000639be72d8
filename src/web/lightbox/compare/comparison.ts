import type { PartOf } from "../../../record/parts.ts";
import { dayName, type Film, purposeName } from "../kernels/film-name.ts";

/** A comparison as it stands in the case. */
export type Comparison = PartOf<"comparison">;
/** A place that was found on both films. */
export type Landmark = Comparison["body"]["landmarks"][number];
/** An outline on a film, in px of it: [to the right, down]. */
export type FilmOutline = readonly (readonly [number, number])[];
/** Which of the two films. */
export type Side = "before" | "after";
export const sides: readonly Side[] = ["before", "after"];

/** The ids of two films. */
export type FilmPair = Readonly<Record<Side, string>>;
/** The two films of a comparison; one that is not in the case any more is absent. */
export type ComparedFilms = Readonly<Record<Side, Film | undefined>>;

/** The films of a comparison. */
export const filmsOf = (pair: FilmPair, films: readonly Film[]): ComparedFilms => ({
  before: films.find(({ id }) => id === pair.before),
  after: films.find(({ id }) => id === pair.after),
});

/** What a comparison is called: "day 0 and day 210". */
export function comparisonName(pair: FilmPair, films: readonly Film[], presentedOn: string): string {
  const { before, after } = filmsOf(pair, films);
  // Films of one day are told apart by what they were taken for.
  const sameDay = before?.body.takenOn === after?.body.takenOn;
  const day = (film: Film | undefined): string => {
    if (film === undefined) return "a film taken out";
    const name = dayName(presentedOn, film.body.takenOn);
    return sameDay ? `${name}, ${purposeName(film.body.purpose)}` : name;
  };
  return `${day(before)} and ${day(after)}`;
}

/** Two films to begin with: the first of the case and the last; undefined where there are fewer than two. */
export function firstAndLast(films: readonly Film[]): FilmPair | undefined {
  const [first, last] = [films[0], films.at(-1)];
  return first === undefined || last === undefined || first === last ? undefined : { before: first.id, after: last.id };
}

/** Landmarks with the numbers that they are known by. */
export const numbered = (landmarks: readonly Landmark[]): { readonly number: number; readonly places: Landmark }[] =>
  landmarks.map((places, index) => ({ number: index + 1, places }));
