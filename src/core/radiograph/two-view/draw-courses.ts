import { seededRandom } from "../../statistics/seeded-random.ts";
import { cholesky, solveTransposed } from "../../statistics/solve-linear.ts";
import type { CourseChoice, ScoredCourse } from "./choose-course.ts";
import { type DrawnCourse, endsOf, type WeighedCourse } from "./drawn-course.ts";
import type { FilmTask } from "./film-slopes.ts";
import { positionAt } from "./fit-films.ts";
import { refitCourses } from "./refit-courses.ts";

/**
 * How much wider than the covariance of first order courses are drawn before each counts by how well the films allow it, and
 * how far that weighing is trusted: fully it gives intervals that docs/studies/two-view.md shows to be a little too narrow.
 */
const drawing = { oneBend: { spread: 1.4, trust: 0.5 }, twoBends: { spread: 1.5, trust: 0.4 } } as const;

/**
 * Courses and settings that the films allow as well as the best one: draws from each family still in question, as many as
 * its weight, each counting by its own distance from the films against the density that it was drawn from.
 * Always the same for the same films.
 * @source importance sampling with cut weights: E. L. Ionides, J Comput Graph Stat 2008;17:295-311 (memory);
 * docs/methods/two-view.md C11
 */
export function drawCourses(choice: CourseChoice, drawn: number): DrawnCourse[] {
  const random = seededRandom(19_100_211);
  return choice.fits.flatMap((scored) => {
    const wanted = Math.round(scored.weight * drawn);
    const near = drawFrom(scored, choice.task, wanted, random.normal);
    const found = serve(near, wanted) ? near : refitCourses(scored, choice.task, Math.ceil(wanted / refitted), random);
    const shares = sharesOf(found.map(({ logarithm }) => logarithm));
    return found.map(({ logarithm: _, ...one }, index) => ({ ...one, counts: (shares[index] ?? 0) * scored.weight }));
  });
}

/** A family is refitted where fewer draws than this share are courses of it, or count: its covariance says too little. */
const fewest = 0.25;
/** Of so many draws one is refitted: a refit takes so much longer. */
const refitted = 4;

function serve(found: readonly WeighedCourse[], wanted: number): boolean {
  const shares = sharesOf(found.map(({ logarithm }) => logarithm));
  const effective = 1 / shares.reduce((sum, share) => sum + share * share, 0);
  return found.length > 0 && effective >= fewest * wanted;
}

/** Shares that add up to 1 from their logarithms; none above what makes the rest worth nothing. */
function sharesOf(logarithms: readonly number[]): number[] {
  const highest = Math.max(...logarithms);
  const raw = logarithms.map((one) => Math.exp(one - highest));
  const mean = raw.reduce((sum, one) => sum + one, 0) / raw.length;
  const cut = raw.map((one) => Math.min(one, mean * Math.sqrt(raw.length)));
  const total = cut.reduce((sum, one) => sum + one, 0);
  return cut.map((one) => one / total);
}

function drawFrom({ fit }: ScoredCourse, task: FilmTask, wanted: number, normal: () => number): WeighedCourse[] {
  const { family, values, standing } = fit;
  const { spread, trust } = family.bends === 2 ? drawing.twoBends : drawing.oneBend;
  const lower = factorOf(fit.information, values.length);
  const first = values.length - task.setting.size;
  const found: WeighedCourse[] = [];
  for (let tries = 0; tries < 5 * wanted && found.length < wanted; tries++) {
    const unit = values.map(normal);
    const step = solveTransposed(lower, unit);
    const moved = values.map((value, index) => value + spread * (step[index] ?? 0));
    const position = positionAt(family, task, moved, standing.places);
    if (position === undefined) continue;
    const worse = position.chiSquare - fit.chiSquare;
    const from = unit.reduce((sum, one) => sum + one * one, 0);
    const [orifice, foramen] = endsOf(task, position.standing, normal);
    if (foramen <= orifice) continue;
    found.push({
      ...{ family, course: position.course, orifice, foramen },
      parameters: moved.subarray(0, first),
      setting: moved.subarray(first),
      cameras: task.setting.cameras(moved.subarray(first)),
      logarithm: trust * ((from - worse) / 2),
    });
  }
  return found;
}

/** The factor of J'J, made positive definite where a value says nothing (the direction of a bend of no angle). */
function factorOf(information: Float64Array, size: number): Float64Array {
  for (let ridge = 1e-10; ridge < 10; ridge *= 100) {
    const firm = information.map((value, at) => (at % (size + 1) === 0 ? value * (1 + ridge) + ridge : value));
    const lower = cholesky(firm, size);
    if (lower !== undefined) return lower;
  }
  throw new RangeError("a fit's information is never negative");
}
