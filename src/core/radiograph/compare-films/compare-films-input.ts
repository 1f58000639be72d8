import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { givenNumbers, pictureNumbers } from "../picture-numbers.ts";

const place = z.tuple([z.number().min(-20_000).max(40_000), z.number().min(-20_000).max(40_000)]);
const outline = z.array(place).max(4_000);
const size = z.int().min(12).max(20_000);

/** A film as the sum takes it: grey in shares of the full range, larger is brighter. */
const filmPicture = z.strictObject({
  columns: size,
  rows: size,
  grey: pictureNumbers("Row by row, 0 black to 1 white.", { least: 0, most: 1 }),
});

/** What is asked about two films beside their pixels; the same on the shell. */
export const comparisonParts = {
  landmarks: z
    .array(z.strictObject({ before: place, after: place }))
    .min(4)
    .max(60)
    .describe("Places found on both films, [u,v] in px of each; at least 4, no 3 of 4 in line."),
  lesions: z
    .strictObject({ before: outline.optional(), after: outline.optional() })
    .default({})
    .describe("The lesion's outline on each film, px of that film; what lies within is left out of the comparison."),
  others: z
    .array(z.strictObject({ name: z.string().max(300), before: outline.optional(), after: outline.optional() }))
    .max(10)
    .default([])
    .describe("Further lesions under their names: left out of the comparison as well, and given a ratio each."),
  hardParts: z
    .array(outline)
    .max(40)
    .default([])
    .describe("Outlines on the first film of teeth and bone to go by; the whole film where none is given."),
  sigmaPx: z.number().min(0).max(50).default(1).describe("Standard deviation of a click in each direction, px."),
  mmPerPx: z.number().gt(0).max(1).optional().describe("The first film's scale; residuals are given in mm then, too."),
};

/** Two films of one tooth. */
export const compareFilmsInput = z.strictObject({
  before: filmPicture,
  after: filmPicture,
  ...comparisonParts,
  wantsDifference: z.boolean().default(false).describe("Whether the difference picture is given as well."),
});
/** See {@link compareFilmsInput}. */
export type CompareFilmsInput = z.infer<typeof compareFilmsInput>;

const px = z.number().min(0);
const line = z.tuple([z.number(), z.number(), z.number()]);

/** What a comparison gives beside the picture; the same on the shell. */
export const comparisonOutput = {
  transform: z.tuple([line, line, line]).describe("Takes places [u,v,1] of the first film to the second, px."),
  comparable: z.boolean(),
  statement: z.string().describe("Whether the films can be compared, and why not."),
  residualPx: px.describe("How far pieces of the films lie off under the transform: the root mean square, px."),
  residualMm: px.optional(),
  residualNearLesionPx: px.optional().describe("The same of the six pieces nearest to the lesion."),
  landmarkResidualPx: px.describe("How far the landmarks lie off under the transform, px of the second film."),
  pieces: z.strictObject({ looked: z.int().min(0), found: z.int().min(0) }).describe("Pieces that residuals rest on."),
  stretch: z.number().min(1).describe("The largest stretch of the transform anywhere over the smallest."),
  correlation: z.number().min(-1).max(1),
  overlap: z.number().min(0).max(1).describe("The share of the first film that the second covers."),
  carried: z
    .strictObject({ beforeOnAfter: outline.optional(), afterOnBefore: outline.optional() })
    .describe("Each lesion's outline where it falls on the other film."),
  areaRatio: z.number().positive().optional().describe("Area of the lesion after over before, in the first film's px."),
  others: z
    .array(
      z.strictObject({
        name: z.string(),
        areaRatio: z.number().positive().optional(),
        interval: intervalSchema.optional(),
        beforeOnAfter: outline.optional(),
        afterOnBefore: outline.optional(),
      }),
    )
    .describe("The same of each further lesion, in the order given."),
  intervals: z.record(z.string(), intervalSchema).describe("95 % intervals by the name of the value."),
  differenceSigma: px.optional().describe("Of the difference outside the lesions, as a share of the full range."),
};

/** See {@link comparisonOutput}. */
export const compareFilmsOutput = z.strictObject({
  ...comparisonOutput,
  difference: z
    .strictObject({ columns: size, rows: size, values: givenNumbers })
    .optional()
    .describe("After less before on the first film's pixels, in shares of the full range; 0 without overlap."),
  ...outputParts,
});
/** See {@link compareFilmsOutput}. */
export type CompareFilmsOutput = z.infer<typeof compareFilmsOutput>;
