import type { SeededRandom } from "../../statistics/seeded-random.ts";
import { placeAt } from "../curvature/course.ts";
import type { ScoredCourse } from "./choose-course.ts";
import { endsOf, type WeighedCourse } from "./drawn-course.ts";
import type { FilmTask } from "./film-slopes.ts";
import { fitFilms } from "./fit-films.ts";
import type { Sighting } from "./sightings.ts";
import { thinnedTask } from "./thinned-task.ts";

/** Rounds of one refit; more would move a course by less than the noise. */
const rounds = 6;
/** Where a course has two bends, chance had many families to choose from: what single refits leave is too narrow. */
const twoBendsSpread = 1.35;
/** Observations that a refit looks at, each as sure as those that it stands for. */
const looked = 60;

/**
 * Courses as the films would have given them with other noise and other errors of the angles: the fitted course is seen
 * again and fitted again, so that a draw is always a course that lies where the points lie.
 * @source B. Efron, R. J. Tibshirani, "An Introduction to the Bootstrap", Chapman & Hall 1993 (memory);
 * docs/methods/two-view.md C11
 */
export function refitCourses(
  { fit }: ScoredCourse,
  task: FilmTask,
  wanted: number,
  random: SeededRandom,
): WeighedCourse[] {
  const { family, values, course, standing } = fit;
  const first = values.length - task.setting.size;
  const { task: few, kept } = thinnedTask(task, looked);
  const sigmaMm = few.sigmaMm * (family.bends === 2 ? twoBendsSpread : 1);
  const places = kept.map((index) => standing.places[index] ?? 0);
  return Array.from({ length: wanted }).flatMap((): WeighedCourse[] => {
    const setting = task.setting.sigmas.map((sigma, at) =>
      Number.isFinite(sigma) ? sigma * random.normal() : (values[first + at] ?? 0),
    );
    const cameras = task.setting.cameras(setting);
    const sightings = few.sightings.map(({ seen, share }, index): Sighting => {
      const foot = placeAt(course, places[index] ?? 0);
      return {
        share,
        seen: seen.flatMap(({ film }) => {
          const image = cameras[film]?.(foot);
          const noise = () => sigmaMm * random.normal();
          return image === undefined ? [] : [{ film, at: { u: image.u + noise(), v: image.v + noise() } }];
        }),
      };
    });
    const again = fitFilms(family, { ...few, sightings }, values, rounds);
    if (again === undefined) return [];
    const [orifice, foramen] = endsOf(task, again.standing, random.normal);
    if (foramen <= orifice) return [];
    const parameters = again.values.subarray(0, first);
    const found = again.values.subarray(first);
    const drawn = { family, course: again.course, orifice, foramen, parameters, setting: found };
    return [{ ...drawn, cameras: task.setting.cameras(found), logarithm: 0 }];
  });
}
