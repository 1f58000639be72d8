import { type Mm, mm } from "../../units.ts";
import { type CourseChoice, chooseAgain, chooseCourse, scoutSigma } from "./choose-course.ts";
import { type CourseInTooth, type CourseReading, readCourse } from "./course-reading.ts";
import { drawCourses } from "./draw-courses.ts";
import type { DrawnCourse } from "./drawn-course.ts";
import { type FilmAgreement, filmAgreement } from "./film-agreement.ts";
import type { FilmTask } from "./film-slopes.ts";
import type { PlaceInSpace } from "./place-in-space.ts";
import { placesOfViews } from "./places-of-views.ts";
import { settingOf } from "./setting.ts";
import { sightingsOf } from "./sightings.ts";
import { startTrace } from "./start-trace.ts";
import type { Views } from "./view.ts";

/** The course in space that the films give for one kind of receptor. */
export interface SolvedFilms {
  readonly films: Views;
  readonly places: readonly PlaceInSpace[];
  readonly choice: CourseChoice;
  readonly agreement: FilmAgreement;
  /** The standard deviation of a point that intervals are drawn with, in mm. */
  readonly sigmaMm: number;
  /** Whether the points scatter more than was stated. */
  readonly scatters: boolean;
  readonly course: CourseInTooth;
  readonly reading: CourseReading;
  readonly draws: readonly (DrawnCourse & { readonly reading: CourseReading })[];
}

/** Weine's apical line, in mm. */
export const apicalLine: Mm = mm(2);
const firstGuessMm = 0.05;
const finestSigmaMm = 0.0005;
const drawn = 600;

/**
 * The course of straight parts, arcs and ramps whose images come nearest to what all films show, with courses that the
 * films allow as well.
 * Takes films with their points paired, and the stated standard deviation of a point in mm or undefined.
 * @source docs/methods/two-view.md C7 to C11
 */
export function solveFilms(films: Views, statedSigmaMm: number | undefined): SolvedFilms {
  const places = placesOfViews(films);
  const sightings = sightingsOf(films);
  const trace = startTrace(places.map(({ place }) => place));
  const task: FilmTask = { sightings, setting: settingOf(films), trace, sigmaMm: statedSigmaMm ?? firstGuessMm };
  const { choice, scatters } = chosenWith(task, statedSigmaMm);
  const agreement = filmAgreement(choice);
  const course = courseOfFit(choice);
  const draws = drawCourses(loosened(choice, agreement), drawn);
  return {
    ...{ films, places, choice, agreement, scatters, course },
    sigmaMm: choice.task.sigmaMm,
    reading: readCourse(course, apicalLine),
    draws: draws.map((one) => ({ ...one, reading: readCourse(one, apicalLine) })),
  };
}

function chosenWith(task: FilmTask, stated: number | undefined): { choice: CourseChoice; scatters: boolean } {
  if (stated === undefined) {
    const sigmaMm = Math.max(finestSigmaMm, scoutSigma(task));
    return { choice: chooseCourse({ ...task, sigmaMm }), scatters: false };
  }
  const choice = chooseCourse(task);
  const found = filmAgreement(choice).foundSigmaMm;
  const freedom = Math.max(1, choice.residuals - 10);
  const scatters = found ** 2 > stated ** 2 * (1 + 4 * Math.sqrt(2 / freedom));
  return { choice: scatters ? chooseAgain(choice, found) : choice, scatters };
}

function courseOfFit({ fits, task }: CourseChoice): CourseInTooth {
  const fit = fits[0]?.fit;
  if (fit === undefined) throw new RangeError("some family always fits");
  const first = fit.values.length - task.setting.size;
  const { places } = fit.standing;
  return {
    ...{ family: fit.family, course: fit.course, parameters: fit.values.subarray(0, first) },
    orifice: places[0] ?? 0,
    foramen: places.at(-1) ?? 0,
    cameras: task.setting.cameras(fit.values.subarray(first)),
  };
}

/** Where no family fits, what is left follows itself and says less than its number: draws are wider by (1 + r) / (1 - r). */
function loosened(choice: CourseChoice, { fits, following }: FilmAgreement): CourseChoice {
  if (fits) return choice;
  const r = Math.min(0.9, following);
  const loss = (1 + r) / (1 - r);
  return {
    ...choice,
    task: { ...choice.task, sigmaMm: choice.task.sigmaMm * Math.sqrt(loss) },
    fits: choice.fits.map((one) => ({
      ...one,
      fit: {
        ...one.fit,
        chiSquare: one.fit.chiSquare / loss,
        information: one.fit.information.map((value) => value / loss),
      },
    })),
  };
}
