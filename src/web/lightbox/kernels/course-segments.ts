import { straightCourse } from "../../../core/geometry/course-of-path.ts";
import type { ImagePoint } from "../../../core/units.ts";
import { isSamePoint, pixelsBetween } from "./film-point.ts";

/** A traced course piece by piece: between each anchor and the next, how it was drawn and where it runs. */
export interface CourseSegment {
  /** "free" is straight by the person's will; "snapped" follows the ridge. */
  readonly drawn: "free" | "snapped";
  /** From anchor to anchor, both included; absent while its path is still being looked for. */
  readonly points?: readonly ImagePoint[];
}

/** Anchors and what lies between them; there is one segment fewer than anchors. */
export interface Course {
  readonly anchors: readonly ImagePoint[];
  readonly segments: readonly CourseSegment[];
}

/** Finds a course over the ridge picture from place to place, or undefined while it has yet to be computed. */
export type PathFinder = (from: ImagePoint, to: ImagePoint) => readonly ImagePoint[] | undefined;

/** A segment between two places: straight, or along the ridge if a path is known yet. */
export function segmentBetween(
  from: ImagePoint,
  to: ImagePoint,
  drawn: CourseSegment["drawn"],
  find: PathFinder,
): CourseSegment {
  if (drawn === "free") return { drawn, points: straightCourse(from, to) };
  const points = find(from, to);
  return points === undefined ? { drawn } : { drawn, points };
}

/** The course with the paths that have become known filled in. */
export function completed({ anchors, segments }: Course, find: PathFinder): Course {
  const filled = segments.map((segment, index) => {
    const [from, to] = [anchors[index], anchors[index + 1]];
    if (segment.points !== undefined || from === undefined || to === undefined) return segment;
    return segmentBetween(from, to, segment.drawn, find);
  });
  return { anchors, segments: filled };
}

/** Whether no path is missing any more. */
export const isComplete = (course: Course): boolean => course.segments.every(({ points }) => points !== undefined);

/** The anchors at which a path still has to begin. */
export const startsWanted = ({ anchors, segments }: Course): ImagePoint[] =>
  segments.flatMap((segment, index) => {
    const from = anchors[index];
    return segment.points === undefined && from !== undefined ? [from] : [];
  });

/** The points of the whole course, orifice to apex; a piece whose path is not known yet is drawn straight. */
export function pointsOfCourse({ anchors, segments }: Course): ImagePoint[] {
  const first = anchors[0];
  if (first === undefined) return [];
  const rest = segments.flatMap((segment, index) => segment.points?.slice(1) ?? anchors.slice(index + 1, index + 2));
  return [first, ...rest];
}

/** One more anchor at the end. */
export function appended(course: Course, to: ImagePoint, drawn: CourseSegment["drawn"], find: PathFinder): Course {
  const from = course.anchors.at(-1);
  if (from === undefined) return { anchors: [to], segments: [] };
  return { anchors: [...course.anchors, to], segments: [...course.segments, segmentBetween(from, to, drawn, find)] };
}

/** The last anchor taken back, and the segment that led to it. */
export const shortened = ({ anchors, segments }: Course): Course => ({
  anchors: anchors.slice(0, -1),
  segments: segments.slice(0, -1),
});

/** An anchor moved; the segments on both its sides are looked for again. */
export function withAnchorAt(course: Course, index: number, to: ImagePoint, find: PathFinder): Course {
  const anchors = course.anchors.with(index, to);
  const segments = course.segments.map((segment, at) =>
    at === index || at === index - 1 ? redrawn(anchors, at, segment, find) : segment,
  );
  return { anchors, segments };
}

function redrawn(
  anchors: readonly ImagePoint[],
  at: number,
  { drawn }: CourseSegment,
  find: PathFinder,
): CourseSegment {
  const [from, to] = [anchors[at], anchors[at + 1]];
  return from === undefined || to === undefined ? { drawn } : segmentBetween(from, to, drawn, find);
}

/** An anchor put into a segment at one of its points, so that the course itself does not change. */
export function withAnchorIn(course: Course, segment: number, point: number): Course {
  const { drawn, points = [] } = course.segments[segment] ?? { drawn: "snapped" as const };
  const at = points[point];
  if (at === undefined || point === 0 || point === points.length - 1) return course;
  const halves = [
    { drawn, points: points.slice(0, point + 1) },
    { drawn, points: points.slice(point) },
  ];
  return {
    anchors: course.anchors.toSpliced(segment + 1, 0, at),
    segments: course.segments.toSpliced(segment, 1, ...halves),
  };
}

/** An anchor taken out; its two segments become one. A course keeps at least two anchors. */
export function withoutAnchor(course: Course, index: number, find: PathFinder): Course {
  if (course.anchors.length <= 2) return course;
  const anchors = course.anchors.toSpliced(index, 1);
  const atEnd = index === 0 || index === course.anchors.length - 1;
  if (atEnd) return { anchors, segments: course.segments.toSpliced(index === 0 ? 0 : index - 1, 1) };
  const pair = course.segments.slice(index - 1, index + 1);
  const drawn = pair.every((segment) => segment.drawn === "free") ? "free" : "snapped";
  const joined = redrawn(anchors, index - 1, { drawn }, find);
  return { anchors, segments: course.segments.toSpliced(index - 1, 2, joined) };
}

/**
 * A recorded course cut at its anchors again. Takes the anchors and the points as the record keeps them.
 * A segment whose points lie on one straight line was drawn free, or might as well have been.
 */
export function courseOf(anchors: readonly ImagePoint[], points: readonly ImagePoint[]): Course {
  let start = 0;
  const segments = anchors.slice(1).map((anchor, index): CourseSegment => {
    const isLast = index === anchors.length - 2;
    const end = isLast ? points.length - 1 : indexOfNearest(points, anchor, start);
    const inner = points.slice(start + 1, end);
    start = end;
    const piece = [anchors[index] ?? anchor, ...inner, anchor];
    return { drawn: isStraight(piece) ? "free" : "snapped", points: piece };
  });
  return { anchors: [...anchors], segments };
}

function indexOfNearest(points: readonly ImagePoint[], to: ImagePoint, from: number): number {
  const exact = points.findIndex((point, index) => index >= from && isSamePoint(point, to));
  if (exact >= 0) return exact;
  const distances = points.map((point, index) => (index < from ? Number.POSITIVE_INFINITY : pixelsBetween(point, to)));
  return distances.indexOf(Math.min(...distances));
}

function isStraight(points: readonly ImagePoint[]): boolean {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return true;
  const length = pixelsBetween(first, last);
  const [across, down] = [(last.column - first.column) / length, (last.row - first.row) / length];
  // The record keeps hundredths of a pixel; a line that strays no more than two of them was drawn straight.
  return points.every((p) => Math.abs((p.column - first.column) * down - (p.row - first.row) * across) <= 0.02);
}
