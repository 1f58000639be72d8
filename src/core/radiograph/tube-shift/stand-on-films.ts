import { deg, radiansOf } from "../../units.ts";
import { placeAt } from "../curvature/course.ts";
import { cameraOf, type Receptor } from "../two-view/camera.ts";
import { type FilmTask, type Placed, shapeOf } from "../two-view/film-slopes.ts";
import type { FilmFit } from "../two-view/fit-films.ts";
import { settingOf } from "../two-view/setting.ts";
import { sightingsOf } from "../two-view/sightings.ts";
import { standingOf } from "../two-view/standing.ts";
import type { View, Views } from "../two-view/view.ts";
import { viewThrough } from "./supposed-course.ts";

/** How films are exposed, and how sure their points, angles and scales are. */
export interface Exposing {
  readonly anglesDeg: readonly number[];
  readonly receptor: Receptor;
  readonly sigmaMm: number;
  readonly angleSigmaDeg: number;
  readonly scaleRelativeSigma: number;
}

/** Of all films together so many points are used, as by `twoView`. */
const mostPoints = 120;

/** A supposed course as films without noise would show it, ready for the slopes of a fit. */
export function standOnFilms(fit: FilmFit, supposed: FilmTask, exposing: Exposing): { task: FilmTask; placed: Placed } {
  const { places } = fit.standing;
  const last = places.length - 1;
  const count = Math.min(places.length, Math.floor(mostPoints / exposing.anglesDeg.length));
  const kept = Array.from({ length: count }, (_, index) => places[Math.round((index * last) / (count - 1))] ?? 0);
  const films = filmsOf(fit, kept, exposing);
  const setting = settingOf(films);
  const task: FilmTask = { ...supposed, setting, sightings: sightingsOf(films), sigmaMm: exposing.sigmaMm };
  const shape = shapeOf(supposed, fit.values);
  const values = new Float64Array(shape.length + setting.size);
  values.set(shape);
  const near = task.sightings.map(({ share }) => kept[Math.round(share * (count - 1))] ?? 0);
  const standing = standingOf(fit.course, setting.cameras(values.subarray(shape.length)), task.sightings, near);
  return { task, placed: { values, course: fit.course, standing } };
}

function filmsOf(fit: FilmFit, along: readonly number[], exposing: Exposing): Views {
  const { anglesDeg, receptor, angleSigmaDeg, scaleRelativeSigma: scaleSigma } = exposing;
  const places = along.map((s) => placeAt(fit.course, s));
  const views = anglesDeg.map((angleDeg): View => {
    const angle = radiansOf(deg(angleDeg));
    const view = viewThrough(cameraOf({ receptor, angle, tilt: 0 }), places, angle);
    return { ...view, angleSigma: radiansOf(deg(angleSigmaDeg)) };
  });
  return { views, receptor, scaleSigma, centralRay: { mm: 0, sigmaMm: 0 }, byIndex: false };
}
