import { faultAt } from "../core/refusal.ts";
import { between, distanceMm, type ToothPoint } from "./tooth-point.ts";

/** A smooth line in space, as points at equal steps of its length. */
export interface Course {
  readonly points: readonly ToothPoint[];
  /** Length along the line. */
  readonly lengthMm: number;
  /** Distance between neighbouring points along the line. */
  readonly stepMm: number;
}

const wantedStepMm = 0.02;

/** A place on the centripetal Catmull-Rom curve between `p1` and `p2` (Barry and Goldman's pyramid of linear steps). */
function onCurve(knots: readonly [ToothPoint, ToothPoint, ToothPoint, ToothPoint], fraction: number): ToothPoint {
  const [p0, p1, p2, p3] = knots;
  const t1 = Math.sqrt(distanceMm(p0, p1));
  const t2 = t1 + Math.sqrt(distanceMm(p1, p2));
  const t3 = t2 + Math.sqrt(distanceMm(p2, p3));
  const t = t1 + (t2 - t1) * fraction;
  const a1 = between(p0, p1, t / t1);
  const a2 = between(p1, p2, (t - t1) / (t2 - t1));
  const a3 = between(p2, p3, (t - t2) / (t3 - t2));
  const b1 = between(a1, a2, t / t2);
  const b2 = between(a2, a3, (t - t1) / (t3 - t1));
  return between(b1, b2, (t - t1) / (t2 - t1));
}

/** The line resampled at equal steps of its length, with its ends kept. */
export function courseOfPolyline(line: readonly ToothPoint[], stepMm = wantedStepMm): Course {
  const first = line[0];
  if (first === undefined || line.length < 2) throw faultAt("points", "a course needs at least 2 points");
  const reached = [0];
  for (let i = 1; i < line.length; i++)
    reached.push((reached[i - 1] ?? 0) + distanceMm(line[i - 1] ?? first, line[i] ?? first));
  const lengthMm = reached[reached.length - 1] ?? 0;
  const steps = Math.max(1, Math.round(lengthMm / stepMm));
  const points: ToothPoint[] = [];
  let segment = 1;
  for (let i = 0; i <= steps; i++) {
    const s = (lengthMm * i) / steps;
    while (segment < line.length - 1 && (reached[segment] ?? 0) < s) segment++;
    const start = reached[segment - 1] ?? 0;
    const span = (reached[segment] ?? 0) - start;
    points.push(between(line[segment - 1] ?? first, line[segment] ?? first, span > 0 ? (s - start) / span : 0));
  }
  return { points, lengthMm, stepMm: lengthMm / steps };
}

/**
 * The smooth course through points given in order, from orifice to apex.
 * Takes at least 2 points, no two neighbours alike. Gives points every 0.02 mm or so along the length.
 * @throws Refusal `input.impossible` for fewer than 2 points.
 * @source C. Yuksel, S. Schaefer, J. Keyser, Parameterization and applications of Catmull-Rom curves, Computer-Aided Design
 * 2011;43:747-755 (memory).
 */
export function courseThrough(points: readonly ToothPoint[]): Course {
  const first = points[0];
  const second = points[1];
  const last = points[points.length - 1];
  const beforeLast = points[points.length - 2];
  if (first === undefined || second === undefined || last === undefined || beforeLast === undefined)
    throw faultAt("points", "a course needs at least 2 points");
  const knots = [between(second, first, 2), ...points, between(beforeLast, last, 2)];
  const line: ToothPoint[] = [];
  for (let i = 1; i < knots.length - 2; i++) {
    const around = [knots[i - 1] ?? first, knots[i] ?? first, knots[i + 1] ?? first, knots[i + 2] ?? first] as const;
    for (let k = 0; k < 64; k++) line.push(onCurve(around, k / 64));
  }
  line.push(last);
  return courseOfPolyline(line);
}

/** The place at this length from the course's start; lengths beyond the ends give the ends. */
export function placeAt(course: Course, alongMm: number): ToothPoint {
  const last = course.points.length - 1;
  const at = Math.min(last, Math.max(0, alongMm / course.stepMm));
  const index = Math.min(last - 1, Math.floor(at));
  const a = course.points[index];
  const b = course.points[index + 1];
  if (a === undefined || b === undefined) throw faultAt("course", "has no points");
  return between(a, b, at - index);
}

/** The direction (length 1) in which the course runs at this length, taken over 0.2 mm. */
export function directionAt(course: Course, alongMm: number): ToothPoint {
  const a = placeAt(course, Math.min(alongMm, course.lengthMm - 0.1) - 0.1);
  const b = placeAt(course, Math.max(alongMm, 0.1) + 0.1);
  const length = distanceMm(a, b);
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length, z: (b.z - a.z) / length };
}

/** The part of a course between two lengths from its start. */
export function partOf(course: Course, fromMm: number, toMm: number): Course {
  const steps = Math.max(1, Math.ceil((toMm - fromMm) / wantedStepMm));
  const line: ToothPoint[] = [];
  for (let i = 0; i <= steps; i++) line.push(placeAt(course, fromMm + ((toMm - fromMm) * i) / steps));
  return courseOfPolyline(line);
}
