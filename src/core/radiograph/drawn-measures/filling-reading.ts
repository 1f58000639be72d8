import { type CourseLine, clickShareBetween, courseLine, type PlaceOnCourse, placeOnCourse } from "./course-line.ts";
import type { FillingEndInput } from "./filling-end-input.ts";
import { planePlace } from "./film-errors.ts";

/** The way between a filling's end and the apex. */
export interface FillingReading {
  readonly along: "course" | "straight";
  readonly distanceMm: number;
  /** Above 0 short of the apex, below 0 beyond it; absent where nothing tells. */
  readonly shortMm?: number;
  /** Standard deviation where each click errs by 1 in each direction. */
  readonly clickShare: number;
  readonly asideMm?: number;
  readonly apexAsideMm?: number;
  /** From the filling's end to the apex. */
  readonly way: [number, number][];
}

/** A course that ends so little before the apex is taken to lead to it, mm; farther on the way is straight. */
const leadsToApexMm = 0.5;

/**
 * How far the filling's end lies from the apex: along the course where that reaches the apex, else straight, with the
 * course's last direction to tell the side.
 * @throws Refusal `trace.tooFewPoints`
 * @source plane geometry; docs/methods/filling-end C1 to C3
 */
export function fillingReading(input: FillingEndInput): FillingReading {
  if (input.course === undefined) return straight(input, input.lies);
  const course = courseLine(input.course, "course");
  const end = placeOnCourse(course, planePlace(input.end));
  const apex = placeOnCourse(course, planePlace(input.apex));
  if (apex.alongMm > course.lengthMm + leadsToApexMm)
    return { ...straight(input, sideOf(end, apex)), asideMm: end.asideMm };
  return { ...alongCourse(end, apex), way: wayBetween(course, input, [end.alongMm, apex.alongMm]) };
}

/** The marked end, the places of the course between both, and the marked apex. */
function wayBetween(
  { places, alongMm }: CourseLine,
  { end, apex }: FillingEndInput,
  [from, to]: readonly [number, number],
): [number, number][] {
  const inner = places
    .filter((_, index) => ((alongMm[index] ?? 0) - from) * ((alongMm[index] ?? 0) - to) < 0)
    .map(({ x, y }): [number, number] => [x, y]);
  return [end, ...(from <= to ? inner : inner.reverse()), apex];
}

function alongCourse(end: PlaceOnCourse, apex: PlaceOnCourse): Omit<FillingReading, "way"> {
  const shortMm = apex.alongMm - end.alongMm;
  return {
    along: "course",
    distanceMm: Math.abs(shortMm),
    shortMm,
    clickShare: clickShareBetween(end, apex),
    asideMm: end.asideMm,
    apexAsideMm: apex.asideMm,
  };
}

const sideOf = (end: PlaceOnCourse, apex: PlaceOnCourse): "short" | "beyond" =>
  end.alongMm <= apex.alongMm ? "short" : "beyond";

function straight({ end, apex }: FillingEndInput, lies: "short" | "beyond" | undefined): FillingReading {
  const distanceMm = Math.hypot(apex[0] - end[0], apex[1] - end[1]);
  const way = [end, apex];
  const reading = { along: "straight" as const, distanceMm, clickShare: Math.SQRT2, way };
  if (lies === undefined) return distanceMm === 0 ? { ...reading, shortMm: 0 } : reading;
  return { ...reading, shortMm: lies === "short" ? distanceMm : 0 - distanceMm };
}
