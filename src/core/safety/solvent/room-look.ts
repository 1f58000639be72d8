import { type CourseReading, courseReading } from "./course-reading.ts";
import type { VapourLaw } from "./free-piece.ts";
import type { ZoneName } from "./room-modes.ts";
import { type EvaporatingDose, type VapourCourse, vapourCourse } from "./vapour-course.ts";
import { type ZoneFigures, zoneFigures } from "./zone-figures.ts";

/** What one rate of evaporation makes of the room. */
export interface RoomLook {
  readonly course: VapourCourse;
  readonly reading: Readonly<Partial<Record<ZoneName, CourseReading>>>;
  readonly figures: Readonly<Partial<Record<ZoneName, ZoneFigures>>>;
}

/** The zones of a room: the far one, and the near one where there is a near field. */
export const zonesOf = ({ air }: Pick<VapourLaw, "air">): readonly ZoneName[] =>
  air.near === undefined ? ["far"] : ["far", "near"];

/** Everything is looked at until 480 min after the last dose, so that no running mean is cut off. */
const beyondLastDoseMin = 480;

/** The course of the room's air under one law, with what limits are held against. */
export function roomLook(law: VapourLaw, doses: readonly EvaporatingDose[]): RoomLook {
  const course = vapourCourse(law, doses, (doses.at(-1)?.atMin ?? 0) + beyondLastDoseMin);
  const read = zonesOf(law).map((zone) => [zone, courseReading(course, zone)] as const);
  return {
    course,
    reading: Object.fromEntries(read),
    figures: Object.fromEntries(read.map(([zone, reading]) => [zone, zoneFigures(course, zone, reading)])),
  };
}

/** Of some that go along a range, the middle one; of one, that one. */
export function middleOf<Look>(looks: readonly Look[]): Look {
  const middle = looks[(looks.length - 1) / 2];
  if (middle === undefined) throw new Error("an even number of looks has no middle");
  return middle;
}
