import { seededRandom } from "../../statistics/seeded-random.ts";
import { placeAt } from "../curvature/course.ts";
import type { CourseInTooth } from "./course-reading.ts";
import { type Counted, drawnInterval } from "./drawn-intervals.ts";
import { placeInSpace } from "./place-in-space.ts";
import { placeOfViews } from "./places-of-views.ts";
import type { SolvedFilms } from "./solve-films.ts";

/** How far a canal's middle lies to buccal of a landmark, in mm, with its interval. */
export interface LiesBeside {
  readonly buccalMm: number;
  readonly interval: ReturnType<typeof drawnInterval>;
}

/**
 * How far the middle of the canal lies to buccal of a landmark that every film shows.
 * Gives undefined where some film does not show it.
 * @source plane geometry, docs/methods/two-view.md C10
 */
export function liesBeside(solved: SolvedFilms, landmark: string): LiesBeside | undefined {
  const { films, course, draws, sigmaMm } = solved;
  const seen = films.views.flatMap(({ landmarks }) => landmarks[landmark] ?? []);
  if (seen.length !== films.views.length) return undefined;
  const start = placeOfViews(films, seen).place;
  const beside = (one: CourseInTooth, noise: () => number): number => {
    const looks = seen.flatMap((at, film) => {
      const camera = one.cameras[film];
      return camera === undefined ? [] : [{ camera, at: { u: at.u + noise(), v: at.v + noise() } }];
    });
    return middleOf(one) - placeInSpace(looks, start).place.y;
  };
  const random = seededRandom(19_100_004);
  const buccalMm = beside(course, () => 0);
  const drawn = draws.map(
    (one): Counted => ({ value: beside(one, () => sigmaMm * random.normal()), counts: one.counts }),
  );
  return { buccalMm, interval: drawnInterval(drawn, buccalMm) };
}

/** The mean height to buccal of a course, at 11 even places. */
function middleOf({ course, orifice, foramen }: CourseInTooth): number {
  const places = Array.from({ length: 11 }, (_, index) =>
    placeAt(course, orifice + (index / 10) * (foramen - orifice)),
  );
  return places.reduce((sum, { y }) => sum + y, 0) / places.length;
}
