import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors, filmLine, filmPlace } from "./film-errors.ts";

/** A place marked beside a canal's course. */
export const levelOnCanalInput = z.strictObject({
  at: filmPlace.describe("The place that was marked, [x,y] in mm."),
  course: filmLine.describe("The canal's course in mm, in order towards the foramen; at least 2 different places."),
  from: z.enum(["orifice", "referencePoint"]).describe("Where the course begins."),
  what: z.string().max(300).optional().describe("What the level is, as: start of bend."),
  ...filmErrors,
});
/** See {@link levelOnCanalInput}. */
export type LevelOnCanalInput = z.infer<typeof levelOnCanalInput>;

/** Where a level lies along a canal. */
export const levelOnCanalOutput = z.strictObject({
  fromStartMm: z.number().describe("Along the course from where it begins; below 0 before it."),
  startsAt: z.enum(["orifice", "referencePoint"]),
  toForamenMm: z.number().describe("Along the course to its end; below 0 beyond it."),
  asideMm: z.number().min(0).describe("How far beside the course the place was marked."),
  onCourse: z.tuple([z.number(), z.number()]).describe("The nearest place of the course, [x,y] in mm."),
  direction: z.tuple([z.number(), z.number()]).describe("The course's direction there, of length 1."),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value, from the click error and the scale's."),
  ...outputParts,
});
/** See {@link levelOnCanalOutput}. */
export type LevelOnCanalOutput = z.infer<typeof levelOnCanalOutput>;
