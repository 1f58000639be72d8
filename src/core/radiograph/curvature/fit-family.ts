import { dot, minus, type Vector, vector } from "../../geometry/vector.ts";
import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { type Course, placeAt } from "./course.ts";
import { type Family, type ParameterKind, parameterKinds } from "./family.ts";
import { type Projection, project } from "./project.ts";
import { bendsOf, courseOf } from "./shape-of.ts";
import type { Trace } from "./trace.ts";

/** A family laid through a trace by least squares. */
export interface FamilyFit {
  readonly family: Family;
  readonly parameters: Float64Array;
  readonly course: Course;
  readonly projection: Projection;
  /** J'J row by row: what the points say about the parameters, in units of one squared residual. */
  readonly information: Float64Array;
  /** Residuals less parameters. */
  readonly freedom: number;
}

/** How long a fit goes on. */
export interface Effort {
  readonly rounds: number;
  /** It has settled where a round gains less than this share of the squares. */
  readonly settled: number;
}

/** Where a fit stands while it runs. */
interface Standing {
  readonly parameters: Float64Array;
  readonly course: Course;
  readonly projection: Projection;
}

/**
 * The parameters of a family with the least sum of squared distances between points and course, found by the method of
 * Levenberg and Marquardt from one start; undefined where the start is no course of that family.
 * @source D. W. Marquardt, "An algorithm for least-squares estimation of nonlinear parameters", J Soc Ind Appl Math
 * 1963;11:431-441 (memory); the places on the course are projected anew at every step, docs/methods/curvature.md C4
 */
export function fitFamily(family: Family, trace: Trace, start: Float64Array, effort: Effort): FamilyFit | undefined {
  const begin = stand(family, trace, start, trace.along);
  if (begin === undefined) return undefined;
  let standing: Standing = begin;
  let damping = 1e-3;
  let slope = slopes(family, trace, standing);
  for (let round = 0; round < effort.rounds; round++) {
    const step = dampedStep(slope, damping);
    const next: Standing | undefined =
      step && stand(family, trace, added(standing.parameters, step), standing.projection.places);
    if (next === undefined || next.projection.squares > standing.projection.squares) {
      if (damping > 1e9) break;
      damping *= 5;
      continue;
    }
    const gain = standing.projection.squares - next.projection.squares;
    const done = gain <= effort.settled * standing.projection.squares + 1e-22 * trace.lengthMm ** 2;
    standing = next;
    slope = slopes(family, trace, standing);
    damping = Math.max(damping / 5, 1e-12);
    if (done) break;
  }
  const freedom = standing.projection.residuals.length - standing.parameters.length;
  return { family, ...standing, information: slope.information, freedom };
}

function stand(family: Family, trace: Trace, parameters: Float64Array, near: ArrayLike<number>): Standing | undefined {
  if (!isCourse(family, trace, parameters)) return undefined;
  const course = courseOf(family, trace.anchor, parameters);
  return { parameters, course, projection: project(course, trace.points, trace.anchor.across, near) };
}

/** A bend is no shorter than this share of the course and no tighter than that: a few points would bear any turn there. */
const shortestShare = 1 / 30;
const tightestShare = 1 / 50;

/**
 * Whether bends lie inside the trace, in order, none shorter than a thirtieth of it or with a radius under a fiftieth,
 * none turning over 270 degrees.
 */
export function isCourse(family: Family, trace: Trace, parameters: ArrayLike<number>): boolean {
  const { lengthMm, anchor } = trace;
  let reached = 0;
  for (const bend of bendsOf(family, anchor.across, parameters)) {
    const from = Math.max(bend.from, 0);
    const to = Math.min(bend.to, lengthMm);
    const inside = bend.from === Number.NEGATIVE_INFINITY || bend.from >= reached;
    const before = bend.to === Number.POSITIVE_INFINITY || bend.to <= lengthMm;
    const turned = Math.abs(bend.curvature) * (to - from) * (1 - bend.rampShare);
    if (!inside || !before || to - from < shortestShare * lengthMm || turned > 4.7) return false;
    if (Math.abs(bend.curvature) * tightestShare * lengthMm > 1) return false;
    if (bend.rampShare < 0 || bend.rampShare > 0.5) return false;
    reached = to;
  }
  return Math.abs(parameters[anchor.across] ?? 0) < 5;
}

interface Slopes {
  readonly information: Float64Array;
  readonly gradient: Float64Array;
}

/** J'J and J'r by forward differences, with places and directions held: the shift along the course is of second order. */
function slopes(family: Family, trace: Trace, standing: Standing): Slopes {
  const { residuals } = standing.projection;
  const count = standing.parameters.length;
  const here = Array.from(standing.projection.places, (s) => placeAt(standing.course, s));
  const columns = parameterKinds(family, trace.anchor.across).map((kind, index) => {
    const step = stepOf(kind, trace.lengthMm);
    const moved = Float64Array.from(standing.parameters);
    moved[index] = (moved[index] ?? 0) + step;
    return shifts(courseOf(family, trace.anchor, moved), standing.projection, here, step);
  });
  const information = new Float64Array(count * count);
  const gradient = new Float64Array(count);
  for (let row = 0; row < count; row++) {
    const left = columns[row] ?? residuals;
    gradient[row] = sumOfProducts(left, residuals);
    for (let column = 0; column <= row; column++) {
      const product = sumOfProducts(left, columns[column] ?? residuals);
      information[row * count + column] = product;
      information[column * count + row] = product;
    }
  }
  return { information, gradient };
}

/** How far a changed course has moved at each place, in each direction across it, for one unit of the change. */
function shifts(changed: Course, projection: Projection, here: readonly Vector[], step: number): Float64Array {
  const { places, directions } = projection;
  const across = directions.length / places.length;
  const column = new Float64Array(directions.length);
  for (let index = 0; index < places.length; index++) {
    const shift = minus(placeAt(changed, places[index] ?? 0), here[index] ?? none);
    for (let at = index * across; at < (index + 1) * across; at++)
      column[at] = dot(shift, directions[at] ?? none) / step;
  }
  return column;
}

const none = vector(0, 0);

const stepOf = (kind: ParameterKind, lengthMm: number): number => {
  if (kind === "offset" || kind === "position") return 1e-6 * lengthMm;
  return kind === "curvature" ? 1e-6 / lengthMm : 1e-6;
};

function dampedStep(slope: Slopes, damping: number): Float64Array | undefined {
  const count = slope.gradient.length;
  const damped = Float64Array.from(slope.information);
  for (let at = 0; at < count; at++) damped[at * count + at] = (damped[at * count + at] ?? 0) * (1 + damping) + 1e-14;
  const lower = cholesky(damped, count);
  return lower && solveCholesky(lower, slope.gradient);
}

const added = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, index) => value + (b[index] ?? 0));

function sumOfProducts(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index++) sum += (a[index] ?? 0) * (b[index] ?? 0);
  return sum;
}
