import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";
import { courseSchema } from "./course-fields.ts";
import { instrumentSchema } from "./instrument-fields.ts";

/** What the strain of a seated instrument is computed from. */
export const bendInput = z.strictObject({
  instrument: instrumentSchema,
  course: courseSchema,
  tipDepthMm: z
    .number()
    .gt(0)
    .max(45)
    .describe("Depth of the tip along the canal from where the course starts, in mm."),
  courseStarts: z
    .enum(["orifice", "referencePoint"])
    .optional()
    .describe("Where the course and the depth begin; at the orifice where absent."),
  convention: z
    .enum(["neutral", "outer", "inner"])
    .optional()
    .describe("Whose radius the course's is: the instrument's axis (neutral, where absent), or a side of it."),
  view: z
    .strictObject({
      films: z
        .enum(["one", "space"])
        .optional()
        .describe("One film, or known in its own plane; where absent, one for points of a plane."),
      longAxis: z
        .enum(["parallel", "notKnown"])
        .optional()
        .describe("Of the tooth, to the film; notKnown where absent."),
      turnAtMostDeg: z
        .number()
        .min(0)
        .max(180)
        .optional()
        .describe("The largest turn that another view or a scan leaves open, in degrees."),
    })
    .optional()
    .describe("How the course was seen; it decides what the numbers bound."),
  clearance: z
    .enum(["none", "some", "notKnown"])
    .optional()
    .describe("Whether the canal is wider than the instrument in its bend; notKnown where absent."),
});
/** See {@link bendInput}. */
export type BendInput = z.infer<typeof bendInput>;

/** What a seated instrument's strain comes to. */
export const bendOutput = z.strictObject({
  peakStrain: z.number().describe("Largest strain at the surface, as a fraction: 0.043 is 4.3 %."),
  fromTipMm: z.number().optional().describe("Where on the instrument, mm from its tip; absent in a straight canal."),
  fromOrificeMm: z.number().optional().describe("Where in the canal, mm from its orifice."),
  fromReferenceMm: z.number().optional().describe("The same from the reference point, where the course starts there."),
  radiusMm: z.number().optional().describe("Radius of the course at that place, in mm."),
  turnDeg: z.number().describe("All turning of the course, in degrees."),
  profile: z
    .array(z.strictObject({ fromTipMm: z.number(), strain: z.number() }))
    .describe("Along the seated part from the tip; where the curvature jumps, the larger strain."),
  overTenPercent: z.boolean().describe("Whether the canal would bend the instrument beyond a strain of 10 %."),
  intervals: z
    .strictObject({ peakStrain: intervalSchema.optional(), fromTipMm: intervalSchema.optional() })
    .describe("From the tolerance of the diameter and what the points of the course leave open."),
  bounds: z
    .array(
      z.strictObject({
        name: z.enum(["turnDeg", "radiusMm", "peakStrain"]),
        bound: z
          .enum(["asMeasured", "lower", "upper", "none"])
          .describe(
            "lower: the true value is no less; upper: no more; none: no bound; asMeasured: within its interval.",
          ),
        why: z.string(),
      }),
    )
    .describe("What each value says about the true one, as the course was seen."),
  ...outputParts,
});
/** See {@link bendOutput}. */
export type BendOutput = z.infer<typeof bendOutput>;
