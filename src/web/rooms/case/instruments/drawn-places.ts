import type { CoursePoint } from "../../../../figures/drawn-course.ts";

/** Points of a course as a drawing takes them: two numbers of a film or three of space; others are left out. */
export const drawnCourse = (course: readonly (readonly number[])[]): readonly CoursePoint[] =>
  course.flatMap(([x, y, z]): CoursePoint[] =>
    x === undefined || y === undefined ? [] : [z === undefined ? [x, y] : [x, y, z]],
  );
