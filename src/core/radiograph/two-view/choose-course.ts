import { faultAt } from "../../refusal.ts";
import { type Family, families, parameterKinds } from "../curvature/family.ts";
import { startsOf } from "../curvature/starts.ts";
import type { FilmTask } from "./film-slopes.ts";
import { type FilmFit, fitFilms } from "./fit-films.ts";
import type { Setting } from "./setting.ts";
import { thinnedTask } from "./thinned-task.ts";

/** Every family that the films can tell apart, the best first, and how much each is worth beside the best. */
export interface CourseChoice {
  readonly task: FilmTask;
  /** Sorted by score; never empty. */
  readonly fits: readonly ScoredCourse[];
  /** Every fit, those of no weight too. */
  readonly tried: readonly FilmFit[];
  /** Residuals left free by the places along the course. */
  readonly residuals: number;
}

/** A fit, its score (lower is better) and its weight: 1 shared out among all of them. */
export interface ScoredCourse {
  readonly fit: FilmFit;
  readonly score: number;
  readonly weight: number;
}

/** What a bend must earn. */
const bend = 10;
/** A second bend can lie anywhere, so that chance has many tries to invent one: it must earn this much more. */
const secondBend = 8;
/** What a ramp must earn. */
const ramp = 3;
/** Share of the best family's weight under which a family is left out. */
const negligible = 0.002;

/**
 * The families laid through the films and compared by a penalised score: squares in units of the noise, plus the logarithm
 * of the number of residuals for each parameter.
 * @throws Refusal `input.impossible` where the points are those of no course.
 * @source G. Schwarz, Ann Stat 1978;6:461-464 (memory); docs/methods/two-view.md C8
 */
export function chooseCourse(task: FilmTask): CourseChoice {
  const simple = chooseAmong(task, fitEach(task, simpler));
  return leavesNoise(simple) ? simple : chooseAmong(task, [...simple.tried, ...fitEach(task, twoBends)]);
}

/** The same families compared again under another noise of a point, each from where it stood. */
export function chooseAgain({ task, tried }: CourseChoice, sigmaMm: number): CourseChoice {
  const again = { ...task, sigmaMm };
  return chooseAmong(
    again,
    tried.flatMap((fit) => fitFilms(fit.family, again, fit.values, 8) ?? []),
  );
}

const simpler = families.filter(({ bends }) => bends < 2);
const twoBends = families.filter(({ bends }) => bends === 2);

/** Whether a course of at most one bend leaves no more than noise: then a second bend can't earn its place. */
function leavesNoise({ tried, residuals, task }: CourseChoice): boolean {
  const [best] = [...tried].sort((a, b) => a.chiSquare - b.chiSquare);
  if (best === undefined) return false;
  const free = residuals - best.values.length + task.setting.size;
  return best.chiSquare <= free;
}

/** The noise of a point, in mm, that the least restricted families leave: an estimate before families are compared. */
export function scoutSigma(task: FilmTask): number {
  const residuals = residualsOf(task);
  const found = fitEach(task, scouts).map((fit) => foundSigma(fit, task.setting, residuals));
  return Math.min(...found);
}

const scouts = families.filter(({ bends, straightStart, straightEnd }) => bends > 0 && straightStart && straightEnd);

/** The noise of a point that a fit speaks for, in mm: squares over what is left free. */
export function foundSigma({ standing, values }: FilmFit, { sigmas }: Setting, residuals: number): number {
  const known = sigmas.filter((sigma) => Number.isFinite(sigma)).length;
  return Math.sqrt(standing.squares / Math.max(1, residuals - (values.length - known)));
}

function fitEach(task: FilmTask, among: readonly Family[]): FilmFit[] {
  const residuals = residualsOf(task);
  return among.flatMap((family) => fitBest(family, task, residuals) ?? []);
}

function chooseAmong(task: FilmTask, tried: readonly FilmFit[]): CourseChoice {
  const residuals = residualsOf(task);
  if (tried.length === 0)
    throw faultAt("views", "hold no course: the points of the films run to and fro, or are too few");
  const scores = tried.map((fit) => ({ fit, score: scoreOf(fit) }));
  const best = Math.min(...scores.map(({ score }) => score));
  const kept = scores
    .map((one) => ({ ...one, share: Math.exp((best - one.score) / 2) }))
    .filter(({ share }) => share >= negligible)
    .sort((a, b) => a.score - b.score);
  const total = kept.reduce((sum, { share }) => sum + share, 0);
  return { task, tried, residuals, fits: kept.map(({ fit, score, share }) => ({ fit, score, weight: share / total })) };
}

const residualsOf = ({ sightings }: FilmTask): number =>
  sightings.reduce((sum, { seen }) => sum + 2 * seen.length - 1, 0);

/**
 * A bend costs its four numbers (turn and direction, place and length); whether it leaves a straight part before or after
 * it costs nothing, because canals mostly have both and a missing one would be read as a larger angle.
 */
function scoreOf({ family, chiSquare }: FilmFit): number {
  return chiSquare + bend * family.bends + (family.ramped ? ramp : 0) + secondBend * Math.max(0, family.bends - 1);
}

/** The best fit of a family from all its starts: many short runs on few sightings, then two long ones. */
function fitBest(family: Family, task: FilmTask, residuals: number): FilmFit | undefined {
  const free = task.setting.sigmas.filter((sigma) => !Number.isFinite(sigma)).length;
  if (parameterKinds(family, 2).length + free >= residuals) return undefined;
  const few = { ...thinnedTask(task, scouted).task, sigmaMm: task.sigmaMm };
  const scouts = startsOf(family, task.trace)
    .flatMap((start) => fitFilms(family, few, withSetting(start, task), 3) ?? [])
    .sort((a, b) => a.chiSquare - b.chiSquare)
    .slice(0, 2);
  const fits = scouts.flatMap((scout) => fitFilms(family, task, scout.values, 30) ?? []);
  return fits.sort((a, b) => a.chiSquare - b.chiSquare)[0];
}

/** Observations that a short run looks at. */
const scouted = 60;

function withSetting(start: Float64Array, { setting }: FilmTask): Float64Array {
  const values = new Float64Array(start.length + setting.size);
  values.set(start);
  return values;
}
