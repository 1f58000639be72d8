import type { InputPath } from "../../record/ledger-entry.ts";
import type { BindingContext } from "../binding.ts";
import { type CourseOfCanal, coursesOfCanal } from "./courses-of-canal.ts";
import { lengthOfCanal } from "./length-of-canal.ts";
import { type TipDepth, tipInCourse } from "./tip-in-course.ts";

/** An instrument's place in the course of a canal, and where each value of it comes from. */
export interface SeatInCanal {
  readonly course: CourseOfCanal;
  /** From where the course begins. */
  readonly tipDepthMm: number;
  readonly paths: readonly InputPath[];
}

/** What has to be supplied before an instrument can be seated. */
export interface NoSeat {
  readonly why: string;
}

/** What is asked of a canal: which, on which day, and how deep a tip lay in it. */
export interface AskedSeat {
  readonly canal: string | undefined;
  readonly on: string;
  readonly tip: TipDepth | undefined;
}

/** The first course of a canal in which a tip's depth can be told, or what is missing for the first of them. */
export function seatInCanal({ canal, on, tip }: AskedSeat, context: BindingContext): SeatInCanal | NoSeat {
  if (canal === undefined) return { why: "it is not said in which canal; say it" };
  if (tip === undefined) return { why: `its depth in ${canal} is not recorded; say how deep its tip went` };
  const courses = coursesOfCanal(canal, on, context);
  if (courses.length === 0)
    return {
      why: `${canal} has no course in mm; trace it from its orifice to its end on a film with a mark of known length`,
    };
  const length = lengthOfCanal(canal, on, context);
  const tries = courses.map((course) => ({ course, at: tipInCourse(tip, course, length) }));
  for (const { course, at } of tries)
    if ("mm" in at) {
      const depth = at.records.map((record) => ({ input: "tipDepthMm", record }));
      return { course, tipDepthMm: at.mm, paths: [...course.paths, ...depth] };
    }
  const [first] = tries;
  return { why: first !== undefined && "why" in first.at ? first.at.why : `${canal} can't be measured` };
}
