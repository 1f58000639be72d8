import type { Vector } from "../../geometry/vector.ts";
import { deg, radiansOf } from "../../units.ts";
import { type Camera, cameraOf } from "../two-view/camera.ts";
import { chooseCourse, type ScoredCourse } from "../two-view/choose-course.ts";
import type { FilmTask } from "../two-view/film-slopes.ts";
import { settingOf } from "../two-view/setting.ts";
import { sightingsOf } from "../two-view/sightings.ts";
import { startTrace } from "../two-view/start-trace.ts";
import type { View, Views } from "../two-view/view.ts";
import { type CourseRates, courseRates, type HidingFilm } from "./course-rates.ts";

/** The courses that the estimator would choose for a supposed canal, as it would weigh them. */
export interface SupposedCourse {
  readonly task: FilmTask;
  readonly fits: readonly (ScoredCourse & { readonly rates: CourseRates })[];
}

/** Two films that fix every depth well; they stand for nobody's films. */
const anglesDeg = [-40, 40];
const negligible = 0.05;

/**
 * The families of `twoView` laid through a supposed canal.
 * Takes places from orifice to foramen, the standard deviation of a point on a film in mm, and the film that hides a part.
 * @source docs/methods/two-view.md C7 and C8
 */
export function supposedCourse(places: readonly Vector[], sigmaMm: number, film: HidingFilm): SupposedCourse {
  const views = anglesDeg.map((angleDeg): View => {
    const angle = radiansOf(deg(angleDeg));
    return viewThrough(cameraOf({ receptor: "turnsWithBeam", angle, tilt: 0 }), places, angle);
  });
  const films: Views = {
    ...{ views, receptor: "turnsWithBeam", centralRay: { mm: 0, sigmaMm: 0 } },
    ...{ scaleSigma: 0, byIndex: true },
  };
  const task: FilmTask = {
    ...{ sightings: sightingsOf(films), setting: settingOf(films), trace: startTrace(places), sigmaMm },
  };
  const fits = chooseCourse(task).fits.filter(({ weight }) => weight >= negligible);
  const total = fits.reduce((sum, { weight }) => sum + weight, 0);
  return {
    task,
    fits: fits.map((one) => ({ ...one, weight: one.weight / total, rates: courseRates(one.fit, task, film) })),
  };
}

/** What a camera shows of places, as a film whose angle is known. */
export const viewThrough = (camera: Camera, places: readonly Vector[], angle: number): View => ({
  ...{ angle, angleSigma: 0, tilt: 0, points: places.map(camera), alongMm: [], rows: [], landmarks: {} },
});
