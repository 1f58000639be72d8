import { faultAt } from "../../refusal.ts";
import { mm, type PlanePoint } from "../../units.ts";
import { planePlace } from "./film-errors.ts";

/** A course followed on a film, with the distance of each of its places from its start. */
export interface CourseLine {
  readonly places: readonly PlanePoint[];
  readonly alongMm: readonly number[];
  readonly lengthMm: number;
}

/** Where a place lies beside a course. */
export interface PlaceOnCourse {
  /** From the start of the course along it; below 0 before its start, above its length beyond its end. */
  readonly alongMm: number;
  /** How far beside it. */
  readonly asideMm: number;
  /** The course's direction there, of length 1. */
  readonly direction: Direction;
}

interface Direction {
  readonly x: number;
  readonly y: number;
}

/** A course's direction is taken over so much of it to each side of a place: one click between two points turns it little. */
const directionReachMm = 0.5;

/**
 * A course as a line with distances along it.
 * Takes at least 2 different places in order, in mm; `path` is where they stand in the input.
 * @throws Refusal `trace.tooFewPoints`
 * @source plane geometry
 */
export function courseLine(points: readonly (readonly [number, number])[], path: string): CourseLine {
  const all = points.map(planePlace);
  const places = all.filter((place, index) => index === 0 || gap(place, all[index - 1] ?? place) > 0);
  if (places.length < 2)
    throw faultAt(path, `holds ${places.length} different place(s); a line needs 2 or more`, "trace.tooFewPoints");
  let reached = 0;
  const alongMm = places.map((place, index) => {
    reached += gap(place, places[index - 1] ?? place);
    return reached;
  });
  return { places, alongMm, lengthMm: reached };
}

/**
 * Where a place lies beside a course: the nearest place of the course, or beyond its ends along its last direction.
 * Takes the course and the place, both in mm.
 * @source plane geometry; docs/methods/level-on-canal C1
 */
export function placeOnCourse(line: CourseLine, at: PlanePoint): PlaceOnCourse {
  const nearest = nearestOn(line, at);
  const atStart = nearest.alongMm === 0;
  const direction = directionAt(line, nearest.alongMm);
  if (!atStart && nearest.alongMm < line.lengthMm) return { ...nearest, direction };
  const end = placeAlong(line, nearest.alongMm);
  const out = (at.x - end.x) * direction.x + (at.y - end.y) * direction.y;
  if (atStart ? out >= 0 : out <= 0) return { ...nearest, direction };
  const asideMm = Math.abs((at.x - end.x) * direction.y - (at.y - end.y) * direction.x);
  return { alongMm: nearest.alongMm + out, asideMm, direction };
}

/** The place at a distance along a course, its ends where the distance is beyond them. */
export function placeAlong({ places, alongMm }: CourseLine, distanceMm: number): PlanePoint {
  const found = alongMm.findIndex((along) => along >= distanceMm);
  const after = Math.max(1, found < 0 ? places.length - 1 : found);
  const [from, to] = [places[after - 1], places[after]];
  if (from === undefined || to === undefined) throw new RangeError("a course has two places");
  const [low, high] = [alongMm[after - 1] ?? 0, alongMm[after] ?? 0];
  const share = Math.min(1, Math.max(0, (distanceMm - low) / (high - low)));
  return { x: mm(from.x + share * (to.x - from.x)), y: mm(from.y + share * (to.y - from.y)) };
}

/**
 * The share of the click error in the way along a course between two places beside it: the standard deviation of that way
 * where each of the two clicks, and the course as a whole, errs by 1 in each direction.
 * @source first-order propagation of error; docs/methods/level-on-canal C3
 */
export function clickShareBetween(a: PlaceOnCourse, b: PlaceOnCourse): number {
  const turned = (a.direction.x - b.direction.x) ** 2 + (a.direction.y - b.direction.y) ** 2;
  return Math.sqrt(2 + turned);
}

function nearestOn({ places, alongMm }: CourseLine, at: PlanePoint): { alongMm: number; asideMm: number } {
  let best = { alongMm: 0, asideMm: Number.POSITIVE_INFINITY };
  for (const [index, to] of places.entries()) {
    const from = places[index - 1];
    if (from === undefined) continue;
    const [x, y] = [to.x - from.x, to.y - from.y];
    const share = Math.min(1, Math.max(0, ((at.x - from.x) * x + (at.y - from.y) * y) / (x * x + y * y)));
    const asideMm = Math.hypot(at.x - from.x - share * x, at.y - from.y - share * y);
    const start = alongMm[index - 1] ?? 0;
    // The end itself is named exactly, so that a place beyond it is told from one beside it.
    const along = share === 1 ? (alongMm[index] ?? 0) : start + share * Math.hypot(x, y);
    if (asideMm < best.asideMm) best = { alongMm: along, asideMm };
  }
  return best;
}

function directionAt(line: CourseLine, alongMm: number): Direction {
  const [before, after] = [alongMm - directionReachMm, alongMm + directionReachMm];
  const [from, to] = [placeAlong(line, Math.max(0, before)), placeAlong(line, Math.min(line.lengthMm, after))];
  // A course that comes back on itself within a millimetre has no direction there.
  const length = gap(to, from) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

const gap = (a: PlanePoint, b: PlanePoint): number => Math.hypot(a.x - b.x, a.y - b.y);
