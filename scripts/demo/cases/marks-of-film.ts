import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { type Writing, write } from "./case-of-moments.ts";
import { clicked, clickedCourse } from "./clicked-course.ts";
import { drawnMarks } from "./drawn-marks.ts";
import { fromStop, type OnFilm } from "./film-line.ts";
import type { FilmOnList } from "./film-list.ts";
import type { FilmRecipe } from "./film-recipe.ts";

/** A film with its recipe, and its canals and instruments under the names that the case gives them. */
export interface FilmToMark {
  readonly film: FilmOnList;
  readonly recipe: FilmRecipe;
  readonly nameOf: (listed: string) => string;
}

type Known = { readonly lengthMm: number; readonly from: OnFilm; readonly to: OnFilm };

/** What a careful person marked on a film: known lengths, courses with their ends, a lesion's edge, and what was drawn beside. */
export function marksOfFilm(toMark: FilmToMark, random: SeededRandom): Writing[] {
  const { film, recipe, nameOf } = toMark;
  const canals = renamed<readonly OnFilm[]>(film.truth.canals, nameOf);
  const known = renamed<Known>(film.truth.knownLengths ?? {}, nameOf);
  const shared = { film: recipe.id };
  return [
    ...(recipe.known ?? []).flatMap((canal) => knownMark({ canal, known: known.get(canal), shared }, random)),
    ...(recipe.traces?.canals ?? []).flatMap((canal) =>
      courseMarks({ canal, course: courseOf(canal, { canals, known, toMark }), shared, recipe }, random),
    ),
    ...lesionMark(toMark, canals.get(recipe.lesionAt ?? ""), random),
    ...drawnMarks({ recipe, canals, pxPerMm: pxPerMm(film) }, random),
  ];
}

const renamed = <Thing>(named: Readonly<Record<string, Thing>>, nameOf: (listed: string) => string) =>
  new Map(Object.entries(named).map(([name, thing]) => [nameOf(name), thing]));

interface Shared {
  readonly film: string;
}

function knownMark(
  { canal, known, shared }: { canal: string; known: Known | undefined; shared: Shared },
  random: SeededRandom,
): Writing[] {
  if (known === undefined) return [];
  const [from, to] = [clicked(known.from, random), clicked(known.to, random)];
  const body = { ...shared, shape: "knownLength" as const, object: "instrument" as const };
  return [
    write("mark", `${shared.film}-known-${canal.toLowerCase()}`, { ...body, lengthMm: known.lengthMm, from, to }),
  ];
}

interface OnThisFilm {
  readonly canals: ReadonlyMap<string, readonly OnFilm[]>;
  readonly known: ReadonlyMap<string, Known>;
  readonly toMark: FilmToMark;
}

const pxPerMm = ({ magnification, detectorSpacingMm }: FilmOnList): number => magnification / detectorSpacingMm;

function courseOf(canal: string, { canals, known, toMark }: OnThisFilm): readonly OnFilm[] | undefined {
  const course = canals.get(canal);
  const stop = known.get(canal)?.from;
  if (course === undefined || stop === undefined || toMark.recipe.traces?.from === "orifice") return course;
  return [...fromStop(stop, course, pxPerMm(toMark.film)), ...course];
}

interface CourseToMark {
  readonly canal: string;
  readonly course: readonly OnFilm[] | undefined;
  readonly shared: Shared;
  readonly recipe: FilmRecipe;
}

function courseMarks({ canal, course, shared, recipe }: CourseToMark, random: SeededRandom): Writing[] {
  const end = course?.at(-1);
  if (course === undefined || end === undefined) return [];
  const id = `${shared.film}-${canal.toLowerCase()}`;
  const polarity = recipe.traces?.polarity ?? "dark";
  const what = `apex ${canal}`;
  const drawn = recipe.drawn?.[canal];
  const trace = write("mark", id, {
    ...{ ...shared, shape: "trace", canal, polarity },
    ...(recipe.traces?.from === "stop" ? { kind: "instrument" as const } : {}),
    ...(drawn === undefined ? {} : { drawn: [...drawn] }),
    ...clickedCourse(course, random),
  });
  if (recipe.apices !== true) return [trace];
  const at = clicked(end, random);
  return [trace, write("mark", `${id}-apex`, { ...shared, shape: "spot", what, is: "apex", canal, at })];
}

/** Corners of a followed edge lie about so far apart, px: well over its error. */
const cornerPx = 9;
/** The edge of a lesion is soft: nobody places it better than this, px. */
const edgeSigmaPx = 2;

/** The edge of a lesion, as round as the list says, around a place just beyond the foramen. */
function lesionMark(
  { film, recipe }: FilmToMark,
  canal: readonly OnFilm[] | undefined,
  random: SeededRandom,
): Writing[] {
  const end = canal?.at(-1);
  const radiusPx = film.truth.lesionRadiusMm * pxPerMm(film);
  if (end === undefined || radiusPx < 10) return [];
  const middle: OnFilm = [end[0], end[1] + (film.apexIs === "up" ? -0.35 : 0.35) * radiusPx];
  const corners = Math.max(20, Math.round((2 * Math.PI * radiusPx) / cornerPx));
  const points = Array.from({ length: corners }, (_, at): [number, number] => {
    const turn = (2 * Math.PI * at) / corners;
    return clicked([middle[0] + radiusPx * Math.cos(turn), middle[1] + radiusPx * Math.sin(turn)], random);
  });
  const body = {
    film: recipe.id,
    sigmaPx: edgeSigmaPx,
    shape: "outline" as const,
    what: `lesion at ${recipe.lesionAt ?? ""}`,
  };
  return [write("mark", `${recipe.id}-lesion`, { ...body, points })];
}
