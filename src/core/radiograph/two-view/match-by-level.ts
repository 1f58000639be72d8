import type { FilmPlace } from "./camera.ts";

/** A course on a film, and which of its points are held to be one level with those of the other films. */
export interface LevelledCourse {
  readonly points: readonly FilmPlace[];
  readonly rows: readonly number[];
}

/**
 * Places of the same height on every film: each course is read at common levels between its first and its last point, which
 * are the same places (orifice and foramen) on all films, as those of each row are.
 * Takes courses from orifice to foramen, at least 2 points and equally many rows each. Gives for each level one place a film,
 * in the films' order. Where a course turns back in height, its places are shared out along it, so that the order is kept.
 * @source plane geometry, docs/methods/two-view.md C6
 */
export function matchByLevel(courses: readonly LevelledCourse[], count: number): FilmPlace[][] {
  return levelsOf(courses, count - 1).map(({ stops }) =>
    courses.map(({ points }, film) => placeAt(points, stops[film])),
  );
}

/** One level: how many points of each film lie before it (a fraction between two points), and whether a row holds it. */
export interface Level {
  readonly stops: readonly number[];
  readonly fixed: boolean;
}

/** The levels from the first to the last point, in so many steps, or one for each stretch between rows if that is more. */
export function levelsOf(courses: readonly LevelledCourse[], steps: number): Level[] {
  const bounds = courses.map(({ points, rows }) => [0, ...rows, points.length - 1]);
  const [first] = courses;
  const stretches = stepsOfStretches(first?.points ?? [], bounds[0] ?? [], steps);
  const levels = stretches.flatMap((count, stretch) => {
    const risings = courses.map(({ points }, film) => risingOf(points, bounds[film] ?? [], stretch));
    return Array.from({ length: count }, (_, index): Level => {
      const stops = risings.map(({ from, reached }) => from + stopAt(reached, index / count));
      return { stops, fixed: index === 0 && stretch > 0 };
    });
  });
  return [...levels, { stops: courses.map(({ points }) => points.length - 1), fixed: false }];
}

/** The place between two points of a course. */
export function placeAt(points: readonly FilmPlace[], stop = 0): FilmPlace {
  const index = Math.min(Math.max(0, points.length - 2), Math.floor(stop));
  const from = points[index];
  const to = points[index + 1] ?? from;
  if (from === undefined || to === undefined) throw new RangeError("a course has points");
  const part = stop - index;
  if (part === 1) return to;
  return { u: from.u + part * (to.u - from.u), v: from.v + part * (to.v - from.v) };
}

/** Every stretch has one step at least; the longest for its steps gets the next. */
function stepsOfStretches(points: readonly FilmPlace[], bounds: readonly number[], steps: number): number[] {
  const heights = bounds.slice(1).map((to, index) => {
    const from = bounds[index] ?? 0;
    return Math.abs((points[to]?.v ?? 0) - (points[from]?.v ?? 0));
  });
  const counts = heights.map(() => 1);
  for (let left = steps - counts.length; left > 0; left--) {
    const shares = heights.map((height, index) => height / (counts[index] ?? 1));
    const widest = shares.indexOf(Math.max(...shares));
    counts[widest] = (counts[widest] ?? 1) + 1;
  }
  return counts;
}

/** Height counts fully, distance along the film a little: a course that runs level still has an order. */
const lengthCounts = 0.02;

/** For each point of a stretch how high it has come so far, never falling, as a share of the whole: 0 at its first, 1 at its last. */
function risingOf(course: readonly FilmPlace[], bounds: readonly number[], stretch: number) {
  const from = bounds[stretch] ?? 0;
  const points = course.slice(from, (bounds[stretch + 1] ?? from) + 1);
  const [first] = points;
  const direction = Math.sign((points.at(-1)?.v ?? 0) - (first?.v ?? 0));
  let highest = 0;
  let gone = 0;
  const reached = points.map((place, index) => {
    const before = points[index - 1] ?? place;
    gone += Math.hypot(place.u - before.u, place.v - before.v);
    highest = Math.max(highest, direction * (place.v - (first?.v ?? 0)));
    return highest + lengthCounts * gone;
  });
  const whole = reached.at(-1) || 1;
  return { from, reached: reached.map((one) => one / whole) };
}

/** How many points of a stretch lie before the one that has come so far, with the share of the step between them. */
function stopAt(reached: readonly number[], share: number): number {
  const found = reached.findIndex((one) => one >= share);
  const index = Math.max(1, found < 0 ? reached.length - 1 : found);
  const low = reached[index - 1] ?? 0;
  const step = (reached[index] ?? 1) - low;
  return index - 1 + (step <= 0 ? 1 : Math.min(1, Math.max(0, (share - low) / step)));
}
