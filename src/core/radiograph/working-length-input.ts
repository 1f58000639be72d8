import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";

const length = z.number().min(0.1).max(60);

/** One canal's readings on one film, and what is known beside them. */
export const workingLengthInput = z.strictObject({
  canalOnFilmMm: length.describe("From the reference point to the radiographic apex, as read on the film."),
  known: z
    .strictObject({
      lengthMm: length.describe("The instrument's true length between the same two marks."),
      onFilmMm: length.describe("Its length as read on the same film."),
    })
    .optional()
    .describe("An instrument of known length in the canal on this film."),
  sigmaMm: z.number().min(0.0001).max(5).default(0.1).describe("Standard deviation of one reading on the film."),
  stopShortMm: z
    .number()
    .min(0)
    .max(5)
    .optional()
    .describe("How far short of the radiographic apex to stop; 0.5 unless the apex is open or resorbed."),
  locatorMm: length.optional().describe("The apex locator's reading from the same reference point."),
  scaledByKnown: z
    .boolean()
    .default(false)
    .describe("The film's scale came from an instrument of known length on it: the ratio is in canalOnFilmMm already."),
  traced: z
    .boolean()
    .default(false)
    .describe("canalOnFilmMm follows the canal's course, and is not a straight reading."),
  curved: z.boolean().default(false).describe("The instrument or canal is curved on the film."),
  openApex: z.boolean().default(false),
  apicalResorption: z.boolean().default(false),
});
/** See {@link workingLengthInput}. */
export type WorkingLengthInput = z.infer<typeof workingLengthInput>;

/** The length to the radiographic apex, where to stop, and the apex locator beside it. */
export const workingLengthOutput = z.strictObject({
  radiographicMm: z.number().positive().describe("From the reference point to the radiographic apex."),
  recommendedMm: z.number().positive().optional().describe("The radiographic length less stopShortMm."),
  stopShortMm: z.number().optional().describe("The stop that was used."),
  sigmaMm: z.number().positive().describe("Standard deviation of radiographicMm, from the readings."),
  interval: intervalSchema.describe("Of radiographicMm, both readings' errors combined."),
  recommendedInterval: intervalSchema.optional().describe("Of recommendedMm: the same, moved by the stop."),
  locatorDifferenceMm: z
    .number()
    .optional()
    .describe("The locator's reading less radiographicMm; below 0 it reads shorter."),
  ...outputParts,
});
/** See {@link workingLengthOutput}. */
export type WorkingLengthOutput = z.infer<typeof workingLengthOutput>;
