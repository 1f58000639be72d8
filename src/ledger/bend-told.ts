import { z } from "zod";
import { type BendOutput, bendOutput } from "../core/instrument/bend-input.ts";
import { courseSchema } from "../core/instrument/course-fields.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** How much an instrument was bent, with the course that it was seated in. */
export interface BendTold extends BendOutput {
  /** Places of the course in mm from where it starts, of a plane or of space; empty where it was given as an arc. */
  readonly course: readonly (readonly number[])[];
  /** Of the tip, along the course from where it starts. */
  readonly tipDepthMm: number;
  /** Where the course and every depth in it begin. */
  readonly startsAt: "orifice" | "referencePoint";
  /** The tightest place in the canal, from where the course starts; absent in a straight canal. */
  readonly fromStartMm?: number;
  /** The trace that the course comes from; absent where it is one in space. */
  readonly trace?: string;
  /** The entry of the ledger that gave the course in space; absent where it comes from one film. */
  readonly courseEntry?: string;
}

const asked = z.looseObject({
  course: courseSchema,
  courseStarts: z.enum(["orifice", "referencePoint"]).default("orifice"),
  tipDepthMm: z.number(),
});

/** See {@link BendTold}; undefined for an entry that refused, or that keeps its answer in an older form. */
export function bendTold(
  entry: Pick<LedgerEntry, "input" | "inputPaths" | "output"> | undefined,
): BendTold | undefined {
  const output = bendOutput.safeParse(entry?.output).data;
  const input = asked.safeParse(entry?.input).data;
  if (entry === undefined || output === undefined || input === undefined) return undefined;
  const { course, courseStarts: startsAt, tipDepthMm } = input;
  const fromStartMm = output.fromOrificeMm ?? output.fromReferenceMm;
  return {
    ...output,
    ...{ tipDepthMm, startsAt, course: "points" in course ? course.points : [] },
    ...(fromStartMm === undefined ? {} : { fromStartMm }),
    ...courseOrigin(entry),
  };
}

/** Where the points of a course come from: a trace on one film, or an entry of the ledger about several. */
function courseOrigin({ inputPaths }: Pick<LedgerEntry, "inputPaths">): Pick<BendTold, "trace" | "courseEntry"> {
  const places = inputPaths.filter(({ input }) => input === "course.points").map(({ record }) => record.split("/"));
  const trace = places.find(([, field]) => field === "points")?.[0];
  if (trace !== undefined) return { trace };
  const courseEntry = places.find(([first, , field]) => first === "ledger" && field === "course")?.[1];
  return courseEntry === undefined ? {} : { courseEntry };
}

/** What the bend of an instrument in a canal at a visit is called in the ledger; takes the instrument's name at that visit. */
export const bendSubject = (visit: string, canal: string, name: string): string => `bend of ${visit} ${canal} ${name}`;
/** The same of the one that broke, at the break. */
export const bendAtBreakSubject = (mishap: string): string => `bend of ${mishap}`;
/** What the shape of an instrument of a visit is called in the ledger. */
export const instrumentSubject = (visit: string, name: string): string => `instrument of ${visit} ${name}`;
