import { seededRandom } from "../../../../src/core/statistics/seeded-random.ts";
import { filmsOfCaseA } from "../../../../src/phantom/cases/case-a.ts";
import type { DemoFilm } from "../../../../src/phantom/cases/demo-film.ts";
import type { BodyOf } from "../../../../src/record/parts.ts";
import { type Moment, type Writing, write } from "../case-of-moments.ts";
import { clicked } from "../clicked-course.ts";
import type { OnFilm } from "../film-line.ts";
import { placeOnOther } from "../place-on-other.ts";
import { days } from "./days.ts";
import { filmsPlan } from "./films.ts";

/**
 * Places that a person finds on every film of case A, read off the first one, and how far each lies to the buccal of the
 * tooth's axis: treatment changed nothing there.
 */
const places: readonly { readonly name: string; readonly at: OnFilm; readonly buccalMm: number }[] = [
  { name: "crest between 24 and 25", at: [165, 486], buccalMm: 0 },
  { name: "crest between 25 and 26", at: [345, 482], buccalMm: 0 },
  { name: "crest between 26 and 27", at: [625, 479], buccalMm: 0 },
  { name: "crest between 27 and 28", at: [884, 464], buccalMm: 0 },
  { name: "cusp of 25", at: [262, 712], buccalMm: 1.5 },
  { name: "cusp of 27", at: [800, 682], buccalMm: 1.5 },
  { name: "tip of 25", at: [283, 178], buccalMm: 0.4 },
];

const firstFilm = "a-day-0-straight";

/** Each recall's film compared with the first of all, once the last of them was taken. */
export const comparisons: Moment = {
  day: days.twentyFourMonths,
  time: "09:21",
  words: `The films of three recalls compared with the first one, each by ${places.length} landmarks`,
  writes: [
    comparedWith("a-recall-6-months", 61),
    comparedWith("a-recall-12-months", 62),
    comparedWith("a-recall-24-months", 63),
  ],
};

function comparedWith(file: string, seed: number): Writing {
  const body: BodyOf<"comparison"> = {
    before: partOf(firstFilm),
    after: partOf(file),
    landmarks: landmarksOn(file, seed),
  };
  return write("comparison", file.replace("a-recall", "comparison"), body);
}

/** Where the places fall on both films, each clicked with its own small error. */
function landmarksOn(file: string, seed: number): BodyOf<"comparison">["landmarks"] {
  const random = seededRandom(seed);
  const [first, second] = [filmNamed(firstFilm), filmNamed(file)];
  return places.map(({ name, at, buccalMm }) => ({
    name,
    before: clicked(at, random),
    after: clicked(placeOnOther({ at, buccalMm }, first.geometry, second.geometry), random),
  }));
}

function filmNamed(name: string): DemoFilm {
  const found = filmsOfCaseA.find((film) => film.name === name);
  if (found === undefined) throw new RangeError(`Cannot compare films: case A has no film ${name}`);
  return found;
}

function partOf(name: string): string {
  const recipe = filmsPlan.recipes[name];
  if (recipe === undefined) throw new RangeError(`Cannot compare films: case A has no recipe for ${name}`);
  return recipe.id;
}
