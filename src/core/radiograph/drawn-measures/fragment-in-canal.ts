import { reach95 } from "../interval-around.ts";
import { type CourseLine, clickShareBetween, courseLine, type PlaceOnCourse, placeOnCourse } from "./course-line.ts";
import { planePlace } from "./film-errors.ts";
import type { FragmentOnFilmInput, Third, ToBend } from "./fragment-on-film-input.ts";

/** A length along a course with its share of the click error. */
interface AlongCourse {
  readonly mm: number;
  readonly clickShare: number;
}

/** A fragment's place along its canal. */
export interface FragmentInCanal {
  readonly course: CourseLine;
  readonly topDepth: AlongCourse;
  readonly tipDepth: AlongCourse;
  readonly tipToApex: AlongCourse;
  readonly asideMm: number;
}

/**
 * Where a fragment lies along its canal; of its two ends the one nearer to the start of the course is its top.
 * Takes the input with its course. Gives lengths along the course in mm, or undefined without a course.
 * @throws Refusal `trace.tooFewPoints`
 * @source plane geometry; docs/methods/fragment-on-film C2
 */
export function fragmentInCanal(input: FragmentOnFilmInput, ends: CourseLine["places"]): FragmentInCanal | undefined {
  if (input.course === undefined) return undefined;
  const course = courseLine(input.course, "course");
  const placed = ends.map((end) => placeOnCourse(course, end)).sort((a, b) => a.alongMm - b.alongMm);
  const [top, tip] = placed;
  const [first, last] = [course.places[0], course.places.at(-1)];
  if (top === undefined || tip === undefined || first === undefined || last === undefined) return undefined;
  const start = placeOnCourse(course, first);
  const apex = placeOnCourse(course, input.apex === undefined ? last : planePlace(input.apex));
  return {
    course,
    topDepth: between(start, top),
    tipDepth: between(start, tip),
    tipToApex: between(tip, apex),
    asideMm: Math.max(top.asideMm, tip.asideMm),
  };
}

const between = (from: PlaceOnCourse, to: PlaceOnCourse): AlongCourse => ({
  mm: to.alongMm - from.alongMm,
  clickShare: clickShareBetween(from, to),
});

/** The places that a depth's 95 % interval runs through, in steps well below any third or bend; itself without an error. */
function reached({ mm, clickShare }: AlongCourse, sigmaMm: number | undefined): number[] {
  const half = reach95 * clickShare * (sigmaMm ?? 0);
  const steps = Math.ceil(half / 0.02);
  return Array.from({ length: 2 * steps + 1 }, (_, index) => mm + (steps === 0 ? 0 : (index / steps - 1) * half));
}

/**
 * The third of the course in which a depth lies, and every third that its interval reaches.
 * A place on a border belongs to the third before it. An error of the scale moves depth and thirds together.
 */
export function thirdAt(depth: AlongCourse, lengthMm: number, sigmaMm: number | undefined) {
  const thirdOf = (mm: number): Third =>
    mm <= lengthMm / 3 ? "coronal" : mm <= (2 * lengthMm) / 3 ? "middle" : "apical";
  return { third: thirdOf(depth.mm), within: [...new Set(reached(depth, sigmaMm).map(thirdOf))] };
}

/** Where a fragment lies to a bend, and every answer that the interval of its place reaches. */
export function placeToBend(
  { topDepth, tipDepth }: FragmentInCanal,
  { fromMm, toMm }: { readonly fromMm: number; readonly toMm: number },
  sigmaMm: number | undefined,
): { lies: ToBend; within: ToBend[] } {
  const lies = (top: number, tip: number): ToBend => (tip <= fromMm ? "before" : top >= toMm ? "beyond" : "in");
  const tops = reached(topDepth, sigmaMm).map((top) => lies(top, tipDepth.mm));
  const tips = reached(tipDepth, sigmaMm).map((tip) => lies(topDepth.mm, tip));
  return { lies: lies(topDepth.mm, tipDepth.mm), within: [...new Set([...tops, ...tips])] };
}
