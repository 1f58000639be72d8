import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors, filmPlace } from "./film-errors.ts";

/** A line across a root, from its outer surface to the edge of the canal. */
export const wallOnFilmInput = z.strictObject({
  outer: filmPlace.describe("On the root's outer surface, [x,y] in mm."),
  canal: filmPlace.describe("On the edge of the canal, level with it."),
  side: z.enum(["mesial", "distal"]).optional().describe("Which side of the root it is."),
  ...filmErrors,
});
/** See {@link wallOnFilmInput}. */
export type WallOnFilmInput = z.infer<typeof wallOnFilmInput>;

/** How thick a wall of the root is on a film, and how it stands to published limits. */
export const wallOnFilmOutput = z.strictObject({
  thicknessMm: z.number().positive().describe("From the outer surface to the edge of the canal."),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value, from the click error and the scale's; none reaches below 0."),
  limits: z
    .array(
      z.strictObject({
        source: z.string(),
        limitMm: z.number(),
        mark: z.enum(["seen", "memory"]),
        stands: z
          .enum(["below", "above", "notDecided"])
          .describe("The thickness against the limit; notDecided where its interval holds the limit."),
      }),
    )
    .describe("Published limits of remaining dentine."),
  ...outputParts,
});
/** See {@link wallOnFilmOutput}. */
export type WallOnFilmOutput = z.infer<typeof wallOnFilmOutput>;
