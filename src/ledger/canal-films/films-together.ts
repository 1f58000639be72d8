import type { BindingContext } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { angleOf, type CanalOnFilm, daysBetween, stretchOf } from "./canal-on-film.ts";

/** Films farther apart in time than this may show another state of the tooth. */
const sameTimeDays = 60;
/** Angles nearer than this are one angle. */
const leastShiftDeg = 1;
/**
 * Courses of which one is so many times as long as the other are not of the same thing, as an instrument traced from its stop
 * and a filling; what differs by less is asked, and the topic says so.
 */
const mostStretch = 1.6;
/** A film that is added to a pair must show the stretch of canal that the pair shows. */
const mostStretchOfMore = 1.2;
const mostFilms = 6;

type Pair = readonly [CanalOnFilm, CanalOnFilm];

/**
 * The films of one time that a canal's course is computed from, where no person chose: the two with the largest shift (of
 * equal ones, with the straightest film), then every other that fits both. Undefined where no two films will do.
 */
export function filmsTogether(courses: readonly CanalOnFilm[], context: BindingContext): CanalOnFilm[] | undefined {
  const pair = pairOf(
    courses.filter((course) => angleOf(course) !== undefined),
    context,
  );
  if (pair === undefined) return undefined;
  const more = courses
    .filter((course) => !pair.includes(course) && isUsable(course, pair, context))
    .sort((a, b) => Math.abs(angleOf(a) ?? 0) - Math.abs(angleOf(b) ?? 0));
  return [...pair, ...more].slice(0, mostFilms);
}

function pairOf(courses: readonly CanalOnFilm[], context: BindingContext): Pair | undefined {
  const pairs = courses.flatMap((one, index) =>
    courses.slice(index + 1).flatMap((other): Pair[] => {
      if (shiftOf([one, other]) < leastShiftDeg || daysBetween(one, other) > sameTimeDays) return [];
      if (stretchOf(one, other, context) > mostStretch) return [];
      return [turnOf(one) <= turnOf(other) ? [one, other] : [other, one]];
    }),
  );
  return pairs.sort((a, b) => shiftOf(b) - shiftOf(a) || turnOf(a[0]) - turnOf(b[0]))[0];
}

const turnOf = (course: CanalOnFilm): number => Math.abs(angleOf(course) ?? 0);
const shiftOf = ([one, other]: Pair): number => Math.abs((angleOf(one) ?? 0) - (angleOf(other) ?? 0));

/** Whether nothing is missing for a film to be added to a pair: it may never cost the pair its answer. */
function isUsable(course: CanalOnFilm, pair: Pair, context: BindingContext): boolean {
  const { body, id } = course.film;
  return (
    body.horizontalAngleDeg !== undefined &&
    body.uRunsTo !== "unknown" &&
    body.receptor === pair[0].film.body.receptor &&
    filmScale(context, id) !== undefined &&
    pair.every(
      (one) => daysBetween(course, one) <= sameTimeDays && stretchOf(course, one, context) <= mostStretchOfMore,
    )
  );
}
