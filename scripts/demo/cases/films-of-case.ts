import { seededRandom } from "../../../src/core/statistics/seeded-random.ts";
import type { BodyOf } from "../../../src/record/parts.ts";
import { dayAfter } from "./calendar.ts";
import { type Moment, type Writing, write } from "./case-of-moments.ts";
import type { FilmOnList } from "./film-list.ts";
import { marksOfFilm } from "./marks-of-film.ts";

/** The films of one case: the moments in which they were taken and marked, and their ids by day. */
export interface FilmsOfCase {
  readonly moments: readonly Moment[];
  /** The ids of the films taken on a day, in their order. */
  readonly on: (day: string) => readonly string[];
}

/** The days that the films of a case belong to. */
export interface FilmDays {
  /** Day 0 of the film list. */
  readonly firstDay: string;
  /** The days of its visits; a film of such a day belongs to that visit. */
  readonly visitsOn: readonly string[];
}

/** The films of a case from the list, each with what was marked on it. */
export function filmsOfCase(caseId: string, list: readonly FilmOnList[], days: FilmDays): FilmsOfCase {
  const own = list.filter((film) => film.case === caseId);
  const taken = own.map((film, index) => ({
    film,
    id: `film-${index + 1}`,
    day: dayAfter(days.firstDay, film.dayFromFirstVisit),
  }));
  return {
    moments: taken.map(({ film, id, day }, index) => momentOf(film, { id, day, index, seed: seedOf(caseId, index) })),
    on: (day) => taken.filter((one) => one.day === day).map(({ id }) => id),
  };
}

interface Taken {
  readonly id: string;
  readonly day: string;
  /** Its place in the case, from 0. */
  readonly index: number;
  readonly seed: number;
}

function momentOf(film: FilmOnList, { id, day, index, seed }: Taken): Moment {
  const marks = marksOfFilm(film, id, seededRandom(seed));
  const writes: Writing[] = [write("film", id, filmBody(film, day)), ...marks];
  return { day, time: `08:${String(10 + index).padStart(2, "0")}`, words: wordsOf(film, marks.length), writes };
}

const seedOf = (caseId: string, index: number): number =>
  [...caseId].reduce((sum, sign) => (sum * 31 + sign.charCodeAt(0)) % 1_000_003, 7) + index * 97;

const kindWords: Readonly<Record<FilmOnList["kind"], string>> = {
  diagnostic: "Diagnostic film",
  angled: "Angled film",
  workingLength: "Film for working length",
  masterCone: "Film with cones",
  final: "Final film",
  recall: "Recall film",
  other: "Film",
};

const wordsOf = (film: FilmOnList, marks: number): string =>
  `${kindWords[film.kind]} taken${marks === 0 ? "" : ", calibrated and marked"}`;

function filmBody(film: FilmOnList, day: string): BodyOf<"film"> {
  const { horizontalAngleDeg, verticalAngleDeg, detectorSpacingMm, magnification } = film;
  return {
    hash: film.sha256,
    columns: film.columns,
    rows: film.rows,
    bitsStored: film.bitsStored ?? 16,
    takenOn: day,
    purpose: film.kind,
    ...(horizontalAngleDeg === undefined ? {} : { horizontalAngleDeg }),
    ...(verticalAngleDeg === undefined ? {} : { verticalAngleDeg }),
    receptor: film.receptor,
    uRunsTo: film.uRunsTo ?? "distal",
    technical: {
      sourceFormat: "png",
      sourceSha256: film.sha256,
      ...(detectorSpacingMm === undefined
        ? {}
        : { detectorSpacingMm: [detectorSpacingMm, detectorSpacingMm] as [number, number] }),
      ...(magnification === undefined ? {} : { magnification }),
      wasColour: false,
      lossy: false,
      inverted: false,
    },
    caption: "",
  };
}
