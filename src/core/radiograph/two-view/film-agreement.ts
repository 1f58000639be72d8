import { type CourseChoice, foundSigma } from "./choose-course.ts";
import type { FilmTask } from "./film-slopes.ts";
import type { FilmFit } from "./fit-films.ts";

/** How well a course describes what the films show. */
export interface FilmAgreement {
  /** Root mean square distance of the points from the course's images, in mm. */
  readonly rmsMm: number;
  /** Standard deviation of a point that the distances speak for, in mm. */
  readonly foundSigmaMm: number;
  /** Whether the points lie about the images as noise would, and not on one side for long stretches. */
  readonly fits: boolean;
  /** Correlation of what is left at one point of a film with what is left at the next. */
  readonly following: number;
}

/** A course that is off by less than this on the films is near enough, in mm. */
const negligibleMm = 0.02;
const fewestForStretches = 12;
const longStretches = 0.5;

/** How the best course of a choice agrees with its films. */
export function filmAgreement({ task, fits, residuals }: CourseChoice): FilmAgreement {
  const fit = fits[0]?.fit;
  if (fit === undefined) throw new RangeError("some family always fits");
  const rmsMm = Math.sqrt(fit.standing.squares / residuals);
  const following = followingOf(fit, task);
  const enough = task.sightings.length >= fewestForStretches;
  return {
    rmsMm,
    following,
    foundSigmaMm: foundSigma(fit, task.setting, residuals),
    fits: !enough || rmsMm < negligibleMm || following < longStretches,
  };
}

function followingOf({ standing }: FilmFit, { sightings }: FilmTask): number {
  const last = new Map<number, [number, number]>();
  let square = 0;
  let product = 0;
  let at = 0;
  for (const { seen } of sightings)
    for (const { film } of seen) {
      const u = standing.left[at++] ?? 0;
      const v = standing.left[at++] ?? 0;
      const [u0, v0] = last.get(film) ?? [0, 0];
      square += u * u + v * v;
      product += u * u0 + v * v0;
      last.set(film, [u, v]);
    }
  return square === 0 ? 0 : product / square;
}
