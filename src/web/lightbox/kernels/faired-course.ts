import type { ImagePoint } from "../../../core/units.ts";
import { type Course, type CourseSegment, pointsOfCourse } from "./course-segments.ts";
import { filmPoint, meanPoint, pixelsBetween } from "./film-point.ts";

/** How far to each side of an anchor points are evened out, and over how wide a stretch each, in pixels of the film. */
const zonePx = 27;
const stretchPx = 32;
const mostNeighbours = 5;

/**
 * A course without the small kinks that a hand leaves where it puts an anchor beside the line.
 * Takes a complete course and the anchors to look at, by index. Gives the course with the points around those anchors
 * evened out and each anchor moved onto it, by a pixel or so; the two ends and corners between free segments stay.
 */
export function fairedCourse(course: Course, anchors: readonly number[]): Course {
  const places = placesOf(course);
  const inner = anchors.filter(
    (anchor) => anchor > 0 && anchor < course.anchors.length - 1 && !isCorner(course, anchor),
  );
  const points = inner.reduce((line, anchor) => evenedAround(line, places[anchor] ?? 0), pointsOfCourse(course));
  const at = (index: number): ImagePoint => points[places[index] ?? 0] ?? filmPoint(0, 0);
  const segments = course.segments.map(
    ({ drawn }, index): CourseSegment => ({ drawn, points: points.slice(places[index], (places[index + 1] ?? 0) + 1) }),
  );
  return { anchors: course.anchors.map((_, index) => at(index)), segments };
}

/** Every inner anchor of a course. */
export const innerAnchors = ({ anchors }: Course): number[] => anchors.slice(2).map((_, index) => index + 1);

/** Where each anchor stands among the points of the whole course. */
function placesOf({ segments }: Course): number[] {
  let place = 0;
  return [
    0,
    ...segments.map(({ points = [] }) => {
      place += points.length - 1;
      return place;
    }),
  ];
}

const isCorner = ({ segments }: Course, anchor: number): boolean =>
  segments[anchor - 1]?.drawn === "free" && segments[anchor]?.drawn === "free";

function evenedAround(line: readonly ImagePoint[], place: number): ImagePoint[] {
  const anchor = line[place];
  return line.map((point, index) => {
    if (anchor === undefined || pixelsBetween(point, anchor) > zonePx) return point;
    return meanPoint(neighboursOf(line, index));
  });
}

/** A point with as many neighbours on both sides as lie within a stretch. */
function neighboursOf(line: readonly ImagePoint[], index: number): readonly ImagePoint[] {
  const most = Math.min(mostNeighbours, index, line.length - 1 - index);
  for (let wide = most; wide > 0; wide -= 1) {
    const [first, last] = [line[index - wide], line[index + wide]];
    if (first && last && pixelsBetween(first, last) <= stretchPx) return line.slice(index - wide, index + wide + 1);
  }
  return line.slice(index, index + 1);
}
