import type { FilmPlace } from "./camera.ts";

/**
 * Places of the same height on every film: each course is read at common levels between its first and its last point, which
 * are the same places (orifice and foramen) on all films.
 * Takes courses from orifice to foramen, at least 2 points each. Gives for each level one place a film, in the films' order.
 * Where a course turns back in height, its places are shared out along it, so that the order is kept.
 * @source plane geometry, docs/methods/two-view.md C6
 */
export function matchByLevel(courses: readonly (readonly FilmPlace[])[], count: number): FilmPlace[][] {
  const risings = courses.map(risingOf);
  return Array.from({ length: count }, (_, index) => {
    const share = index / (count - 1);
    return courses.map((course, film) => atLevel(course, risings[film] ?? [], share));
  });
}

/** Height counts fully, distance along the film a little: a course that runs level still has an order. */
const lengthCounts = 0.02;

/** For each point how high it has come so far, never falling, as a share of the whole: 0 at the first, 1 at the last. */
function risingOf(course: readonly FilmPlace[]): number[] {
  const [first] = course;
  const direction = Math.sign((course.at(-1)?.v ?? 0) - (first?.v ?? 0));
  let highest = 0;
  let gone = 0;
  const reached = course.map((place, index) => {
    const before = course[index - 1] ?? place;
    gone += Math.hypot(place.u - before.u, place.v - before.v);
    highest = Math.max(highest, direction * (place.v - (first?.v ?? 0)));
    return highest + lengthCounts * gone;
  });
  const whole = reached.at(-1) ?? 1;
  return reached.map((one) => one / whole);
}

function atLevel(course: readonly FilmPlace[], rising: readonly number[], share: number): FilmPlace {
  const found = rising.findIndex((one) => one >= share);
  const index = Math.max(1, found < 0 ? course.length - 1 : found);
  const from = course[index - 1];
  const to = course[index];
  if (from === undefined || to === undefined) throw new RangeError("a course has at least 2 points");
  const low = rising[index - 1] ?? 0;
  const step = (rising[index] ?? 1) - low;
  const part = step <= 0 ? 1 : Math.min(1, Math.max(0, (share - low) / step));
  return { u: from.u + part * (to.u - from.u), v: from.v + part * (to.v - from.v) };
}
