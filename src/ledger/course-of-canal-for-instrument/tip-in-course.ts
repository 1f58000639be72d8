import type { CourseOfCanal, CourseStart } from "./courses-of-canal.ts";
import type { LengthOfCanal } from "./length-of-canal.ts";

/** How deep a tip was, and from where that is counted. */
export interface TipDepth {
  readonly depthMm: number;
  readonly depthFrom: CourseStart;
  /** Where it stands in the record. */
  readonly record: string;
}

/** The depth of a tip along a course from where the course begins, and where it comes from; or what is missing. */
export type TipInCourse = { readonly mm: number; readonly records: readonly string[] } | { readonly why: string };

/**
 * How deep a tip lies along a course.
 * Takes the depth as it was recorded and the working length where it is known. A depth that is counted from where the course
 * begins holds as it is. One from the reference point is tied to a course from the orifice at the apical end: the tip lies
 * working length less depth short of where the length stops, which is stopShortMm short of the course's end.
 */
export function tipInCourse(tip: TipDepth, course: CourseOfCanal, length: LengthOfCanal | undefined): TipInCourse {
  const { canal, startsAt, reachesEnd, lengthMm } = course;
  if (tip.depthFrom === startsAt) return { mm: tip.depthMm, records: [tip.record] };
  if (startsAt === "referencePoint")
    return {
      why: `the depth is said from the orifice, but ${canal} is traced from its reference point; say the depth from there, or trace ${canal} from its orifice`,
    };
  if (!reachesEnd)
    return { why: `${canal} is traced along its filling alone; trace the canal itself, from the orifice to its end` };
  if (length === undefined)
    return {
      why: `the depth is said from the reference point and ${canal} is traced from its orifice; its working length ties the two: say it in the visit's table of canals`,
    };
  const mm = lengthMm - length.stopShortMm - (length.workingMm - tip.depthMm);
  if (mm <= 0)
    return {
      why: `at that depth the tip lies ${(-mm).toFixed(1)} mm above the orifice of ${canal}, by its working length of ${length.workingMm} mm; look at both`,
    };
  return { mm, records: [tip.record, course.lengthRecord, ...length.records] };
}
