import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { type Writing, write } from "./case-of-moments.ts";
import { clicked, clickedCourse, clickSigmaPx } from "./clicked-course.ts";
import type { FilmOnList } from "./film-list.ts";

/** What a careful person marked on a film: the instrument of known length, each canal's course, and its apex. */
export function marksOfFilm(film: FilmOnList, id: string, random: SeededRandom): Writing[] {
  const { knownLength, canals } = film.truth;
  const known =
    knownLength === undefined
      ? []
      : [
          write("mark", `${id}-known`, {
            film: id,
            sigmaPx: clickSigmaPx,
            shape: "knownLength",
            object: "instrument",
            lengthMm: knownLength.lengthMm,
            from: clicked(knownLength.from, random),
            to: clicked(knownLength.to, random),
          }),
        ];
  return [
    ...known,
    ...Object.entries(canals).flatMap(([canal, course]) => marksOfCanal({ canal, course, id }, random)),
  ];
}

interface CanalOnFilm {
  readonly canal: string;
  readonly course: readonly (readonly [number, number])[];
  readonly id: string;
}

function marksOfCanal({ canal, course, id }: CanalOnFilm, random: SeededRandom): Writing[] {
  const end = course.at(-1);
  if (course.length < 2 || end === undefined) return [];
  const name = canal.toLowerCase();
  return [
    write("mark", `${id}-${name}`, {
      film: id,
      sigmaPx: clickSigmaPx,
      shape: "trace",
      canal,
      polarity: "dark",
      ...clickedCourse(course, random),
    }),
    write("mark", `${id}-${name}-apex`, {
      film: id,
      sigmaPx: clickSigmaPx,
      shape: "spot",
      what: `foramen of ${canal}`,
      at: clicked(end, random),
    }),
  ];
}
