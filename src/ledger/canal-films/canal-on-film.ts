import { type PartOf, partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { filmScale } from "../film-scale.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** A canal's course as a person traced it on one film. */
export interface CanalOnFilm {
  readonly canal: string;
  readonly film: PartOf<"film">;
  readonly trace: MarkOf<"trace">;
}

/** Every canal on every film that it is traced on; of several courses of one canal on one film, the last. */
export function canalsOnFilms({ parts }: BindingContext): CanalOnFilm[] {
  return partsOf(parts, "film").flatMap((film) => {
    const last = new Map<string, CanalOnFilm>();
    for (const trace of marksOn(parts, film.id, "trace"))
      if (trace.body.canal !== undefined) last.set(trace.body.canal, { canal: trace.body.canal, film, trace });
    return [...last.values()];
  });
}

/** The horizontal angle of a course's film, or undefined where it is not said. */
export const angleOf = ({ film }: CanalOnFilm): number | undefined => film.body.horizontalAngleDeg;

/** How far a course rises along its film, from its first to its last point, in pixels; below 0 where it rises to the film's top. */
export const riseOf = ({ trace: { body } }: CanalOnFilm): number =>
  (body.points.at(-1)?.[1] ?? 0) - (body.points[0]?.[1] ?? 0);

/** How many times as far the longer of two courses reaches along its film, in mm where both films have a scale. */
export function stretchOf(one: CanalOnFilm, other: CanalOnFilm, context: BindingContext): number {
  const scales = [one, other].map(({ film }) => filmScale(context, film.id)?.mmPerPx.row);
  const [a = 1, b = 1] = [one, other].map((course, index) => {
    return Math.abs(riseOf(course)) * (scales.includes(undefined) ? 1 : (scales[index] ?? 1));
  });
  return Math.max(a, b) / Math.max(1e-6, Math.min(a, b));
}

/** Days between the films of two courses. */
export const daysBetween = (one: CanalOnFilm, other: CanalOnFilm): number =>
  Math.abs(Date.parse(one.film.body.takenOn) - Date.parse(other.film.body.takenOn)) / 86_400_000;

/** What a film is called: its caption, or its id. */
export const filmName = ({ film }: CanalOnFilm): string => film.body.caption || film.id;
