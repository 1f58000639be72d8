import { courseOf } from "../curvature/shape-of.ts";
import { cameraOf, type Receptor } from "../two-view/camera.ts";
import { readCourse } from "../two-view/course-reading.ts";
import { type FilmTask, shapeOf } from "../two-view/film-slopes.ts";
import type { FilmFit } from "../two-view/fit-films.ts";
import { apicalLine } from "../two-view/solve-films.ts";

/** The film at hand that the hidden part is counted against: its angle in radians, and how it was held. */
export interface HidingFilm {
  readonly angle: number;
  readonly receptor: Receptor;
}

/** What a supposed course reads, in degrees. */
export interface CourseAngles {
  readonly out: number;
  readonly hidden: number;
  readonly onFilm: number;
}

/** How a supposed course reads, and how fast that changes with its parameters and with the angle of the film that hides. */
export interface CourseRates {
  readonly read: CourseAngles;
  readonly byShape: readonly CourseAngles[];
  readonly byAngle: CourseAngles;
}

const nudge = 1e-5;

/** The rates of a fitted course by central differences. */
export function courseRates(fit: FilmFit, task: FilmTask, film: HidingFilm): CourseRates {
  const shape = shapeOf(task, fit.values);
  const rate = (read: (by: number) => CourseAngles): CourseAngles => {
    const [up, down] = [read(nudge), read(-nudge)];
    const of = (name: keyof CourseAngles): number => (up[name] - down[name]) / (2 * nudge);
    return { out: of("out"), hidden: of("hidden"), onFilm: of("onFilm") };
  };
  return {
    read: readAngles(fit, task, shape, film),
    byShape: Array.from(shape, (_, at) =>
      rate((by) => {
        const moved = shape.map((value, other) => (at === other ? value + by : value));
        return readAngles(fit, task, moved, film);
      }),
    ),
    byAngle: rate((by) => readAngles(fit, task, shape, { ...film, angle: film.angle + by })),
  };
}

function readAngles(
  { family, standing }: FilmFit,
  { trace }: FilmTask,
  parameters: Float64Array,
  film: HidingFilm,
): CourseAngles {
  const course = courseOf(family, trace.anchor, parameters);
  const ends = { orifice: standing.places[0] ?? 0, foramen: standing.places.at(-1) ?? 0 };
  const cameras = [cameraOf({ ...film, tilt: 0 })];
  const { largest } = readCourse({ family, parameters, course, cameras, ...ends }, apicalLine);
  const onFilm = largest.apparentDeg[0] ?? 0;
  return { out: largest.outOfFilmDeg, hidden: largest.angleDeg - onFilm, onFilm };
}
