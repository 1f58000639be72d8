import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors, filmPlace } from "../drawn-measures/film-errors.ts";

/** What the size of a lesion is computed from. */
export const lesionInput = z.strictObject({
  points: z
    .array(filmPlace)
    .max(4_000)
    .describe("The outline's corners [x,y] in mm, in order round the lesion; at least 3; the last joins the first."),
  ...filmErrors,
  apex: filmPlace.optional().describe("The apex of the root, [x,y] in mm, in the same axes."),
});
/** See {@link lesionInput}. */
export type LesionInput = z.infer<typeof lesionInput>;

const length = z.number().min(0);

/** The size of a lesion and how sure it is. */
export const lesionOutput = z.strictObject({
  areaMm2: z.number().positive().describe("Of the polygon."),
  largestDiameterMm: z.number().positive().describe("Between the two corners that lie farthest apart."),
  acrossDiameterMm: length.describe("How wide the outline is at right angles to the largest diameter."),
  equivalentDiameterMm: z.number().positive().describe("Of the circle with the same area."),
  centre: z.tuple([z.number(), z.number()]).describe("The polygon's centre of area, [x,y] in mm."),
  apexDistanceMm: length.optional().describe("From the apex to the lesion; 0 where the apex lies within it."),
  apexToEdgeMm: length
    .optional()
    .describe("From the apex to the nearest place of the outline, from within or without."),
  apexInside: z.boolean().optional(),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value, from the click error and the scale's."),
  sizeClass: z
    .strictObject({ source: z.string(), class: z.string(), within: z.array(z.string()) })
    .describe("The published class of the largest diameter, and every class that its interval reaches."),
  ...outputParts,
});
/** See {@link lesionOutput}. */
export type LesionOutput = z.infer<typeof lesionOutput>;
