import { agreementOf } from "../radiograph/curvature/agreement-of.ts";
import type { CourseSpan } from "../radiograph/curvature/course-measures.ts";
import { cleanPoints } from "../radiograph/curvature/curvature-input.ts";
import { drawCourses } from "../radiograph/curvature/draws.ts";
import { type FittedCourse, fittedCourse } from "../radiograph/curvature/fitted-course.ts";
import { faultAt } from "../refusal.ts";
import { deg, degreesOf, rad, radiansOf } from "../units.ts";
import type { ArcCourse, CanalCourse, TracedCourse } from "./course-fields.ts";
import { keptLately } from "./kept-lately.ts";
import { underPath } from "./under-path.ts";

/** Curvature at a distance from the orifice, in 1/mm and never negative. */
export interface Knot {
  readonly fromOrificeMm: number;
  readonly perMm: number;
}

/** How a canal bends along its course: straight lines between knots; two knots at one place where it jumps. */
export interface CanalBending {
  readonly lengthMm: number;
  readonly knots: readonly Knot[];
  /** All turning added up, whatever its side. */
  readonly turnDeg: number;
  /** Bends of the family or arc; undefined where no family fits. */
  readonly bends?: number;
  /** What the curvature is taken from, in words. */
  readonly by: string;
  /** Whether the course is known in space, or was given as an arc, and not seen on one film alone. */
  readonly known: "arc" | "space" | "plane";
  /** The same for courses that the points allow as well; none for an arc, or where no family fits. */
  readonly drawn: () => readonly Omit<CanalBending, "by" | "known" | "drawn" | "bends">[];
}

/**
 * How a canal bends from its orifice to its foramen.
 * Takes the course and the path at which it stands in the input.
 * Gives curvature by the family of courses that fits the points, or by the smoothing spline where none fits.
 * @throws Refusal `trace.tooFewPoints` under 4 different points; `input.impossible` for points that mix plane and space or
 * run to and fro, or an arc that ends beyond its canal.
 * @source docs/methods/curvature.md C3, C13, C16; docs/methods/bend C2
 */
export const canalBending = (course: CanalCourse, path: string): CanalBending =>
  underPath(path, () => ("points" in course ? lately(course) : bendingOfArc(course)));

/** Courses that were fitted last: the instruments of a canal come one after the other, and fitting it takes longest. */
const lately = keptLately(bendingOfPoints, (course: TracedCourse) => JSON.stringify(course));

/** A length may pass the end of its canal by this, mm: numbers that were rounded. */
export const roundedMm = 0.01;

function bendingOfArc({ radiusMm, turnDeg, startMm, lengthMm }: ArcCourse): CanalBending {
  const endMm = startMm + radiusMm * radiansOf(deg(turnDeg));
  if (endMm > lengthMm + roundedMm)
    throw faultAt("lengthMm", `${lengthMm} ends before the arc does, ${endMm.toFixed(2)} mm from the orifice`);
  const perMm = 1 / radiusMm;
  const end = Math.min(endMm, lengthMm);
  const bent = turnDeg === 0 ? [] : [knot(startMm, 0), knot(startMm, perMm), knot(end, perMm), knot(end, 0)];
  return {
    lengthMm,
    knots: [knot(0, 0), ...bent, knot(lengthMm, 0)],
    turnDeg,
    bends: turnDeg === 0 ? 0 : 1,
    by: "one arc, as given",
    known: "arc",
    drawn: () => [],
  };
}

function bendingOfPoints({ points, sigmaMm }: TracedCourse): CanalBending {
  const clean = cleanPoints(points);
  const fitted = fittedCourse({ clean, sigmaMm, penalty: undefined });
  const known = clean.across === 2 ? "space" : "plane";
  if (!fitted.agreement.fits) return bendingOfSpline(fitted, known);
  const { choice, fit, orifice, foramen } = fitted;
  let drawn: ReturnType<CanalBending["drawn"]> | undefined;
  return {
    ...bendingOfCourse({ course: fit.course, orifice, foramen }),
    bends: fit.family.bends,
    by: `the family ${fit.family.name} through the points`,
    known,
    drawn: () => {
      drawn ??= drawCourses(choice, (one) => agreementOf(one, sigmaMm).noise).map(bendingOfCourse);
      return drawn;
    },
  };
}

function bendingOfSpline({ profile }: FittedCourse, known: "space" | "plane"): CanalBending {
  const { samples, lengthMm, totalTurn } = profile;
  return {
    lengthMm,
    knots: samples.map(({ sMm, curvaturePerMm }) => knot(sMm, Math.abs(curvaturePerMm))),
    turnDeg: degreesOf(rad(totalTurn)),
    by: "the smoothing spline: no family of courses fits the points",
    known,
    drawn: () => [],
  };
}

/** A family's curvature is a straight line on each of its pieces, so that the pieces' ends say all of it. */
function bendingOfCourse({ course, orifice, foramen }: Pick<CourseSpan, "course" | "orifice" | "foramen">) {
  const knots = course.pieces.flatMap((piece, index) => {
    const from = index === 0 ? orifice : Math.max(orifice, piece.from);
    const to = Math.min(foramen, course.pieces[index + 1]?.from ?? foramen);
    const at = (s: number): Knot => knot(s - orifice, Math.abs(piece.curvature + piece.rate * (s - piece.from)));
    return from > to ? [] : [at(from), at(to)];
  });
  return { lengthMm: foramen - orifice, knots, turnDeg: degreesOf(rad(turnOf(knots))) };
}

const knot = (fromOrificeMm: number, perMm: number): Knot => ({ fromOrificeMm, perMm });

const turnOf = (knots: readonly Knot[]): number =>
  knots.reduce((sum, { fromOrificeMm, perMm }, index) => {
    const before = knots[index - 1];
    if (before === undefined) return sum;
    return sum + ((fromOrificeMm - before.fromOrificeMm) * (perMm + before.perMm)) / 2;
  }, 0);

/** Places nearer to each other than this are one, mm. */
export const onePlaceMm = 1e-9;

/**
 * The curvature of a canal at a distance from its orifice, in 1/mm; where it jumps, the larger one.
 * Takes mm from the orifice. Gives 0 beyond either end.
 */
export const curvatureAt = (knots: readonly Knot[], fromOrificeMm: number): number =>
  knots.reduce((most, end, index) => {
    const start = knots[index - 1];
    if (start === undefined || !isBetween(start, end, fromOrificeMm)) return most;
    const width = end.fromOrificeMm - start.fromOrificeMm;
    if (width < onePlaceMm) return Math.max(most, start.perMm, end.perMm);
    const share = Math.min(1, Math.max(0, (fromOrificeMm - start.fromOrificeMm) / width));
    return Math.max(most, start.perMm + share * (end.perMm - start.perMm));
  }, 0);

const isBetween = (start: Knot, end: Knot, fromOrificeMm: number): boolean =>
  fromOrificeMm > start.fromOrificeMm - onePlaceMm && fromOrificeMm < end.fromOrificeMm + onePlaceMm;
