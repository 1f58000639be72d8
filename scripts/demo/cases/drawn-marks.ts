import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { type Writing, write } from "./case-of-moments.ts";
import { clicked, clickedCourse } from "./clicked-course.ts";
import { beforeEnd, evenly, type OnFilm } from "./film-line.ts";
import type { FilmRecipe } from "./film-recipe.ts";

/** A film with its recipe, where its canals truly run, and its scale. */
export interface FilmToDraw {
  readonly recipe: FilmRecipe;
  readonly canals: ReadonlyMap<string, readonly OnFilm[]>;
  readonly pxPerMm: number;
}

/** What was drawn on a film beside courses: filling's ends, a fragment, levels, a wall, crown and root. */
export function drawnMarks(film: FilmToDraw, random: SeededRandom): Writing[] {
  return [
    ...endsOfFillings(film, random),
    ...fragmentMark(film, random),
    ...levelMarks(film, random),
    ...stretchMark(film, random),
    ...acrossMarks(film, random),
  ];
}

/** A place of a canal, so many mm before its foramen. */
function placeIn({ canals, pxPerMm }: FilmToDraw, canal: string, beforeMm: number): OnFilm | undefined {
  const line = canals.get(canal);
  return line && beforeEnd(line, beforeMm * pxPerMm);
}

function endsOfFillings(film: FilmToDraw, random: SeededRandom): Writing[] {
  return Object.entries(film.recipe.fillingEnds ?? {}).flatMap(([canal, beforeMm]) => {
    const at = placeIn(film, canal, beforeMm);
    if (at === undefined) return [];
    const spot = { film: film.recipe.id, shape: "spot" as const, what: "", is: "fillingEnd" as const, canal };
    return [write("mark", `${film.recipe.id}-${canal.toLowerCase()}-end`, { ...spot, at: clicked(at, random) })];
  });
}

/** Places along a fragment, near enough together that its bend is in them. */
const fragmentPlaces = 30;

function fragmentMark(film: FilmToDraw, random: SeededRandom): Writing[] {
  const { fragment, id } = film.recipe;
  if (fragment === undefined) return [];
  const { canal, fromMm, toMm } = fragment;
  const line = Array.from({ length: fragmentPlaces + 1 }, (_, at) =>
    placeIn(film, canal, fromMm + ((toMm - fromMm) * at) / fragmentPlaces),
  ).flatMap((place) => (place === undefined ? [] : [place]));
  if (line.length < 2) return [];
  const { points } = clickedCourse(evenly(line, 1), random);
  const ends = [points[0], points.at(-1)].flatMap((end) => (end === undefined ? [] : [end]));
  return [write("mark", `${id}-fragment`, { film: id, shape: "fragment", canal, anchors: ends, points })];
}

function stretchMark(film: FilmToDraw, random: SeededRandom): Writing[] {
  const { stretch, id } = film.recipe;
  if (stretch === undefined) return [];
  const [from, to] = [stretch.fromMm, stretch.toMm].map((mm) => placeIn(film, stretch.canal, mm));
  if (from === undefined || to === undefined) return [];
  const ends = { from: clicked(from, random), to: clicked(to, random) };
  return [write("mark", `${id}-stretch`, { film: id, shape: "distance", what: stretch.what, ...ends })];
}

function levelMarks(film: FilmToDraw, random: SeededRandom): Writing[] {
  const { levels = [], id } = film.recipe;
  return levels.flatMap(({ what, canal, beforeMm }, index) => {
    const at = placeIn(film, canal, beforeMm);
    if (at === undefined) return [];
    const spot = { film: id, shape: "spot" as const, what, is: "level" as const, canal };
    return [write("mark", `${id}-level-${index + 1}`, { ...spot, at: clicked(at, random) })];
  });
}

function acrossMarks(film: FilmToDraw, random: SeededRandom): Writing[] {
  const { wall, crownRoot, id } = film.recipe;
  const apex = crownRoot && placeIn(film, crownRoot.canal, 0);
  return [
    ...(wall === undefined
      ? []
      : [
          write("mark", `${id}-wall`, {
            ...{ film: id, shape: "wall", canal: wall.canal, side: wall.side },
            ...{ from: clicked(wall.outer, random), to: clicked(wall.edge, random) },
          }),
        ]),
    ...(crownRoot === undefined || apex === undefined
      ? []
      : [
          write("mark", `${id}-crown-root`, {
            ...{ film: id, shape: "crownRoot", root: crownRoot.root, levelIs: "boneCrest" },
            crown: clicked(crownRoot.cusp, random),
            level: clicked(crownRoot.boneCrest, random),
            apex: clicked(apex, random),
          }),
        ]),
  ];
}
