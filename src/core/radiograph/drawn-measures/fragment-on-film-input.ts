import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors, filmLine, filmPlace } from "./film-errors.ts";

const length = z.number().min(0);

/** A fragment in a canal as one film shows it. */
export const fragmentOnFilmInput = z.strictObject({
  fragment: filmLine.describe("The fragment in mm, from its top to its tip; at least 2 different places."),
  course: filmLine.optional().describe("The canal's course in mm, in order towards the foramen."),
  from: z.enum(["orifice", "referencePoint"]).optional().describe("Where the course begins; needed with a course."),
  apex: filmPlace.optional().describe("The apex; the end of the course where absent."),
  bend: z
    .strictObject({ fromMm: length, toMm: length, angleDeg: length })
    .optional()
    .describe("The largest bend of the same course, by distances from its start."),
  ...filmErrors,
});
/** See {@link fragmentOnFilmInput}. */
export type FragmentOnFilmInput = z.infer<typeof fragmentOnFilmInput>;

const third = z.enum(["coronal", "middle", "apical"]);
/** Which third of the canal a place lies in. */
export type Third = z.infer<typeof third>;
const thirdOf = z.strictObject({
  third,
  within: z.array(third).describe("Every third that the interval of the place reaches."),
});

const toBend = z.enum(["before", "in", "beyond"]);
/** Where a fragment lies to a bend. */
export type ToBend = z.infer<typeof toBend>;

/** How long a fragment is on a film and where it lies in its canal. */
export const fragmentOnFilmOutput = z.strictObject({
  lengthMm: z.number().positive().describe("Along the fragment."),
  straightMm: length.describe("Straight between its ends."),
  topDepthMm: z.number().optional().describe("From the start of the course to the fragment's top, along the course."),
  tipDepthMm: z.number().optional().describe("From the start of the course to its tip."),
  startsAt: z.enum(["orifice", "referencePoint"]).optional(),
  tipToApexMm: z.number().optional().describe("From its tip to the apex, along the course; below 0 beyond it."),
  thirds: z
    .strictObject({ top: thirdOf, tip: thirdOf })
    .optional()
    .describe("Thirds of the course from orifice to its end."),
  bend: z
    .strictObject({
      angleDeg: length,
      fromMm: length,
      toMm: length,
      lies: toBend.describe("in: some of it lies in the bend."),
      within: z.array(toBend).describe("Every answer that the interval of the fragment's place reaches."),
    })
    .optional()
    .describe("Where it lies to the largest bend of the course."),
  asideMm: length.optional().describe("How far its farther end lies beside the course."),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value, from the click error and the scale's."),
  ...outputParts,
});
/** See {@link fragmentOnFilmOutput}. */
export type FragmentOnFilmOutput = z.infer<typeof fragmentOnFilmOutput>;
