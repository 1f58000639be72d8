import { seededRandom } from "../../../src/core/statistics/seeded-random.ts";
import type { BodyOf } from "../../../src/record/parts.ts";
import { dayAfter } from "./calendar.ts";
import { type Moment, write } from "./case-of-moments.ts";
import type { FilmOnList } from "./film-list.ts";
import type { FilmRecipe, FilmsPlan } from "./film-recipe.ts";
import { marksOfFilm } from "./marks-of-film.ts";

/** The films of one case: the moments in which they were taken and marked, and their ids by day. */
export interface FilmsOfCase {
  readonly moments: readonly Moment[];
  /** The ids of the films taken on a day, in their order. */
  readonly on: (day: string) => readonly string[];
}

/**
 * The films of a case from the list, each with what was marked on it.
 * @throws RangeError for a film that the case has no recipe for
 */
export function filmsOfCase(plan: FilmsPlan, list: readonly FilmOnList[]): FilmsOfCase {
  const taken = list
    .filter((film) => film.case === plan.listedAs)
    .map((film) => ({ film, recipe: recipeOf(film, plan), day: dayAfter(plan.firstDay, film.dayFromFirstVisit) }));
  return {
    moments: taken.map((one) => momentOf(one, (listed) => plan.renamed[listed] ?? listed)),
    on: (day) => taken.filter((one) => one.day === day).map(({ recipe }) => recipe.id),
  };
}

function recipeOf(film: FilmOnList, { recipes }: FilmsPlan): FilmRecipe {
  const found = recipes[film.file.replace(/\.png$/, "")];
  if (found === undefined) throw new RangeError(`Cannot tell of the film ${film.file}: its case has no recipe for it`);
  return found;
}

interface Taken {
  readonly film: FilmOnList;
  readonly recipe: FilmRecipe;
  readonly day: string;
}

function momentOf({ film, recipe, day }: Taken, nameOf: (listed: string) => string): Moment {
  const marks = marksOfFilm({ film, recipe, nameOf }, seededRandom(seedOf(film.file)));
  const { time, words } = recipe;
  return { day, time, words, writes: [write("film", recipe.id, filmBody({ film, recipe, day })), ...marks] };
}

/** A seed from a name, so that one film's clicks do not depend on the others. */
const seedOf = (name: string): number =>
  [...name].reduce((sum, sign) => (sum * 31 + sign.charCodeAt(0)) % 1_000_003, 7);

function filmBody({ film, recipe, day }: Taken): BodyOf<"film"> {
  return {
    hash: film.sha256,
    columns: film.columns,
    rows: film.rows,
    bitsStored: film.bitsStored,
    takenOn: day,
    purpose: recipe.purpose ?? film.kind,
    ...(recipe.visit === undefined ? {} : { visit: recipe.visit }),
    horizontalAngleDeg: film.horizontalAngleDeg,
    verticalAngleDeg: film.verticalAngleDeg,
    receptor: film.receptor,
    uRunsTo: film.uRunsTo,
    technical: {
      sourceFormat: "png",
      sourceSha256: film.sha256,
      detectorSpacingMm: [film.detectorSpacingMm, film.detectorSpacingMm],
      // A device states its usual magnification; where an instrument was marked, the person went by that instead.
      ...(recipe.known === undefined ? { magnification: film.magnification } : {}),
      wasColour: false,
      lossy: false,
      inverted: false,
    },
    caption: recipe.caption,
  };
}
