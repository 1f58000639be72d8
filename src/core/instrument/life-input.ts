import { z } from "zod";
import { outputParts } from "../basis.ts";
import { courseSchema } from "./course-fields.ts";
import { instrumentSchema } from "./instrument-fields.ts";

/** One use of an instrument in a canal. */
export const useSchema = z.strictObject({
  rpm: z.number().gt(0).max(20_000).optional().describe("Turns a minute in one direction. Or reciprocation."),
  reciprocation: z
    .strictObject({
      forwardDeg: z.number().gt(0).max(3_600).describe("Turn of one stroke forward, in degrees."),
      backDeg: z.number().gt(0).max(3_600).describe("Turn of one stroke back, in degrees."),
      frequencyHz: z.number().gt(0).max(100).describe("Pairs of strokes a second."),
    })
    .optional()
    .describe("Two angles and their frequency. Or rpm."),
  seconds: z.number().gt(0).max(7_200).describe("How long it turned, in s."),
  tipDepthMm: z.number().gt(0).max(45).describe("Depth of the tip along the canal from the orifice, in mm."),
  course: courseSchema,
  engagedFraction: z
    .number()
    .min(0)
    .max(1)
    .optional()
    .describe("Share of the turns that it turned at that depth; all of them where absent."),
});
/** See {@link useSchema}. */
export type Use = z.infer<typeof useSchema>;

/** What the life used of an instrument is computed from. */
export const lifeInput = z.strictObject({
  instrument: instrumentSchema,
  uses: z.array(useSchema).min(1).max(200).describe("Every use of this one instrument, in their order."),
  slope: z
    .strictObject({ strong: z.number().min(-2).max(-0.1), weak: z.number().min(-2).max(-0.1) })
    .optional()
    .describe("Range of the strain-life slope c; the published one, -0.56 to -0.40, where absent."),
  referenceStrain: z
    .number()
    .gt(0)
    .max(0.5)
    .optional()
    .describe("Strain of one reference turn, as a fraction; the largest in the reference canal where absent."),
  limits: z
    .strictObject({
      uses: z.int().min(0).optional(),
      turns: z.number().min(0).optional().describe("Net turns."),
      equivalentTurns: z.number().min(0).optional().describe("Equivalent reference turns at the worst section."),
    })
    .optional()
    .describe("What a person has set for this instrument; over one of them it is to be discarded."),
});
/** See {@link lifeInput}. */
export type LifeInput = z.infer<typeof lifeInput>;

const turns = z.strictObject({
  net: z.number().describe("Turns that are left of both directions: what limits count."),
  swept: z.number().describe("All turning added up whatever its direction: what wears."),
});

const band = (text: string) => z.strictObject({ low: z.number(), high: z.number() }).describe(text);

/** What the life used of an instrument comes to. */
export const lifeOutput = z.strictObject({
  turns,
  equivalentTurns: band(
    "Turns at the reference strain that would have worn the worst section as much; over all slopes.",
  ),
  referenceStrain: z.number().describe("Strain of one reference turn, as a fraction."),
  worstSection: z
    .strictObject({
      fromTipMm: z.number().describe("At the middle of the slopes, mm from the tip."),
      within: band("Over all slopes, mm from the tip."),
    })
    .optional()
    .describe("The section that is worn most; absent where nothing was bent."),
  ratioToReference: band("Wear of the worst section in that of one minute in the reference canal; over all slopes."),
  uses: z.array(
    z.strictObject({
      turns,
      peakStrain: z.number().describe("Largest strain of this use, as a fraction."),
      share: band("Share of the wear at the worst section; over all slopes."),
    }),
  ),
  profile: z
    .array(z.strictObject({ fromTipMm: z.number(), low: z.number(), high: z.number() }))
    .describe("Equivalent reference turns along the instrument; over all slopes."),
  over: z
    .array(z.strictObject({ name: z.enum(["uses", "turns", "equivalentTurns"]), limit: z.number(), found: z.number() }))
    .describe("Each limit that is passed; of equivalent turns the upper end is held to it."),
  discard: z.boolean().describe("Whether a limit that a person set is passed."),
  ...outputParts,
});
/** See {@link lifeOutput}. */
export type LifeOutput = z.infer<typeof lifeOutput>;
