import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors, filmLine, filmPlace } from "./film-errors.ts";

/** The end of a filling and the apex of its root on one film. */
export const fillingEndInput = z.strictObject({
  end: filmPlace.describe("Where the filling ends, [x,y] in mm."),
  apex: filmPlace.describe("The radiographic apex of the root."),
  course: filmLine
    .optional()
    .describe("The canal's course in mm, in order towards the apex: the distance is read along it as far as it goes."),
  lies: z
    .enum(["short", "beyond"])
    .optional()
    .describe("On which side of the apex the filling ends, where no course shows it."),
  ...filmErrors,
});
/** See {@link fillingEndInput}. */
export type FillingEndInput = z.infer<typeof fillingEndInput>;

const classOfSource = z.strictObject({
  source: z.string(),
  class: z.string(),
  within: z.array(z.string()).describe("Every class that the interval reaches."),
});

/** How far short of the apex a filling ends, or how far beyond it. */
export const fillingEndOutput = z.strictObject({
  distanceMm: z.number().min(0).describe("Between the filling's end and the apex, whichever side it lies on."),
  shortMm: z.number().optional().describe("From the filling's end to the apex: above 0 short of it, below 0 beyond."),
  lies: z
    .enum(["short", "beyond", "notDecided"])
    .optional()
    .describe("notDecided where the interval of shortMm holds 0."),
  readAlong: z.enum(["course", "straight"]).describe("Whether the distance follows the canal's course."),
  way: z
    .array(z.tuple([z.number(), z.number()]))
    .describe("The way that was read, from the filling's end to the apex, in mm."),
  asideMm: z.number().min(0).optional().describe("How far the filling's end lies beside the course."),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value, from the click error and the scale's."),
  classes: z.array(classOfSource).describe("Published classes of that distance, each with its source."),
  ...outputParts,
});
/** See {@link fillingEndOutput}. */
export type FillingEndOutput = z.infer<typeof fillingEndOutput>;
