import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { type ParameterKind, parameterKinds } from "../curvature/family.ts";
import { type FilmTask, slopesAt } from "../two-view/film-slopes.ts";
import { type Exposing, standOnFilms } from "./stand-on-films.ts";
import type { SupposedCourse } from "./supposed-course.ts";

/** What a supposed bend would read on films, with standard deviations, in degrees. */
export interface ReadingOfFilms {
  readonly outOfFilmDeg: number;
  readonly onFilmDeg: number;
  readonly outSigmaDeg: number;
  readonly hiddenSigmaDeg: number;
}

/**
 * How surely films would read a supposed bend: the information of the fit of `twoView` at the supposed course, carried on to
 * the angles, over the families that it would weigh. The film of the index is the one whose hidden part is asked.
 * @source error propagation of first order; docs/methods/tube-shift.md C3
 */
export function readingOfFilms({ task, fits }: SupposedCourse, exposing: Exposing, hiding: number): ReadingOfFilms {
  const each = fits.map(({ fit, weight, rates }) => ({
    weight,
    read: rates.read,
    ...variancesOf({ fit, rates }, task, exposing, hiding),
  }));
  const mean = (of: (one: (typeof each)[number]) => number): number =>
    each.reduce((sum, one) => sum + one.weight * of(one), 0);
  const out = mean(({ read }) => read.out);
  const hidden = mean(({ read }) => read.hidden);
  return {
    outOfFilmDeg: out,
    onFilmDeg: mean(({ read }) => read.onFilm),
    outSigmaDeg: Math.sqrt(mean((one) => one.out + (one.read.out - out) ** 2)),
    hiddenSigmaDeg: Math.sqrt(mean((one) => one.hidden + (one.read.hidden - hidden) ** 2)),
  };
}

function variancesOf(
  { fit, rates }: Pick<SupposedCourse["fits"][number], "fit" | "rates">,
  supposed: FilmTask,
  exposing: Exposing,
  hiding: number,
): { out: number; hidden: number } {
  const { task, placed } = standOnFilms(fit, supposed, exposing);
  const { information } = slopesAt(fit.family, task, placed);
  const size = placed.values.length;
  const lower = cholesky(bounded(information, parameterKinds(fit.family, 2), task.trace.lengthMm), size);
  if (lower === undefined) throw new RangeError("bounded information is positive definite");
  const variance = (of: "out" | "hidden"): number => {
    const slopes = new Float64Array(size);
    slopes.set(rates.byShape.map((rate) => rate[of]));
    // The errors of the angles stand first among the values of the setting.
    if (exposing.angleSigmaDeg > 0) slopes[rates.byShape.length + hiding] = rates.byAngle[of];
    return solveCholesky(lower, slopes).reduce((sum, one, at) => sum + one * (slopes[at] ?? 0), 0);
  };
  return { out: variance("out"), hidden: variance("hidden") };
}

/** Beyond this a parameter is no longer that of a bend inside the canal: radians, shares, and shares of the length. */
const bounds: Readonly<Record<ParameterKind, (lengthMm: number) => number>> = {
  offset: () => Number.POSITIVE_INFINITY,
  slope: () => Number.POSITIVE_INFINITY,
  position: (lengthMm) => lengthMm / 4,
  turn: () => 1.5,
  curvature: (lengthMm) => 6 / lengthMm,
  share: () => 0.25,
};

/** The information with what a bend inside a canal can be at all. */
function bounded(information: Float64Array, kinds: readonly ParameterKind[], lengthMm: number): Float64Array {
  const size = Math.sqrt(information.length);
  const firm = Float64Array.from(information);
  for (let at = 0; at < size; at++) {
    const kind = kinds[at];
    const bound = kind === undefined ? Number.POSITIVE_INFINITY : bounds[kind](lengthMm);
    firm[at * size + at] = (firm[at * size + at] ?? 0) + bound ** -2 + 1e-9;
  }
  return firm;
}
