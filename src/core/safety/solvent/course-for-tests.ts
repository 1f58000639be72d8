import { type CourseReading, courseReading } from "./course-reading.ts";
import type { VapourLaw } from "./free-piece.ts";
import type { Evaporation } from "./liquid.ts";
import type { RoomAir, ZoneName } from "./room-modes.ts";
import { type EvaporatingDose, type VapourCourse, vapourCourse } from "./vapour-course.ts";
import { type ZoneFigures, zoneFigures } from "./zone-figures.ts";

/** A room that is mixed throughout. */
export const mixed = (farM3: number, outflowM3Min: number): RoomAir => ({ farM3, outflowM3Min });

/** A course with its readings; the figures of a zone are computed when they are asked for. */
export interface RunCourse {
  readonly course: VapourCourse;
  readonly far: CourseReading;
  readonly near: CourseReading;
  readonly ofFar: ZoneFigures;
  readonly ofNear: ZoneFigures;
}

/** What a course of these doses gives, zone by zone; in boundless air, to 480 min after the last dose, unless told otherwise. */
export function run(
  air: RoomAir,
  evaporation: Evaporation,
  doses: EvaporatingDose[],
  { sat = 1e12, end = (doses.at(-1)?.atMin ?? 0) + 480 }: { sat?: number; end?: number } = {},
): RunCourse {
  const law: VapourLaw = { air, evaporation, saturationMgM3: sat };
  const course = vapourCourse(law, doses, end);
  const readingOf = (zone: ZoneName) => courseReading(course, zone);
  return {
    ...{ course, far: readingOf("far"), near: readingOf("near") },
    get ofFar() {
      return zoneFigures(course, "far", readingOf("far"));
    },
    get ofNear() {
      return zoneFigures(course, "near", readingOf("near"));
    },
  };
}

/** A source of so many mg/min for so many minutes. */
export const source = (mgPerMin: number, overMin: number): [Evaporation, EvaporatingDose[]] => [
  { kind: "constant", ratePerMin: 1 / overMin },
  [{ atMin: 0, mg: mgPerMin * overMin }],
];
