import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { curvatureOutput } from "../curvature/curvature-output.ts";

const triple = z.tuple([z.number(), z.number(), z.number()]);

/** To which side a bend turns. */
export const bendSides = ["buccal", "lingual", "mixed", "undetermined"] as const;
/** See {@link bendSides}. */
export type BendSideInTooth = (typeof bendSides)[number];
/** Where a canal lies beside a landmark. */
export const liesSides = ["buccal", "lingual", "undetermined"] as const;
/** See {@link liesSides}. */
export type LiesSide = (typeof liesSides)[number];

/** The course that two films give together: see docs/methods/two-view.md. */
export const twoViewOutput = z.strictObject({
  points: z
    .array(triple)
    .optional()
    .describe("[x, y, z] in mm, place by place: to distal, to buccal, to the apex, from the point counted from."),
  sigma: z.array(triple).optional().describe("Standard deviation of x, y and z of each of those points, in mm."),
  course: z.array(triple).optional().describe("The fitted course: 60 places at equal steps from orifice to foramen."),
  lengthMm: z.number().optional().describe("Length along the canal in space."),
  curvature: curvatureOutput.optional().describe("Every measure of curvature, in space."),
  plane: z
    .strictObject({
      angleToFilmDeg: z
        .number()
        .describe("Between the plane of the largest bend and the plane of a straight film, 0 to 90."),
      outOfFilmDeg: z.number().describe("How far the largest bend turns out of that plane: above 0 to buccal."),
    })
    .optional(),
  apparent: z
    .array(z.number())
    .describe("The angle of the largest bend as each view shows it, in degrees, in the order of the views."),
  hiddenDeg: z.number().optional().describe("The true angle less the one seen on the view nearest to straight on."),
  side: z.enum(bendSides).describe("To which side the largest bend turns."),
  bendSides: z
    .array(z.enum(["buccal", "lingual", "undetermined"]))
    .optional()
    .describe("The same for each bend of curvature.bends."),
  liesSide: z.enum(liesSides).optional().describe("Where the canal lies beside the reference landmark."),
  liesBuccallyMm: z
    .number()
    .optional()
    .describe("How far the canal's middle lies to buccal of the reference landmark; below 0 to lingual."),
  anglesDeg: z.array(z.number()).optional().describe("The horizontal angles used, solved ones among them."),
  receptorRead: z
    .enum(["turnsWithBeam", "fixed"])
    .optional()
    .describe("The receptor under which the values hold; where unknown, the intervals hold both."),
  matched: z.enum(["byIndex", "byLevel"]).describe("How the points of the views were paired."),
  levels: z
    .array(
      z.strictObject({
        alongMm: z.array(z.number()).describe("Distance along each view's trace from its first point, in mm."),
        zMm: z.number().describe("Height of the level below the point counted from."),
        fixed: z.boolean().describe("Whether a person said that these places are one level."),
      }),
    )
    .optional()
    .describe("10 to 20 levels from orifice to foramen: which places of the traces were taken as one."),
  seen: z
    .array(z.strictObject({ profile: z.array(z.strictObject({ sMm: z.number(), turnDeg: z.number() })) }))
    .optional()
    .describe(
      "Per view: all turning of the course's image from the orifice to each distance along the canal in space, whichever way it turns.",
    ),
  turn: z
    .array(z.strictObject({ sMm: z.number(), turnDeg: z.number(), lowDeg: z.number(), highDeg: z.number() }))
    .optional()
    .describe("The same in space, with its interval of 95 %, at the same distances."),
  intervals: z.record(z.string(), intervalSchema).describe("An interval for each number."),
  ...outputParts,
});
/** See {@link twoViewOutput}. */
export type TwoViewOutput = z.infer<typeof twoViewOutput>;
