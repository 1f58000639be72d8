import { z } from "zod";
import { share } from "../../share.ts";
import { features } from "./feature.ts";
import { lookKinds, lookResults } from "./look.ts";

const evidence = z.strictObject({
  kind: z.enum(lookKinds).describe("What was looked at, or which sign was looked for."),
  result: z
    .enum(lookResults)
    .describe("seen or notSeen of a look; yes or no of a sign (offCentreInstrument, lesionOnOneRoot)."),
  sensitivity: share
    .optional()
    .describe("Share of teeth with the feature in which it is seen, 0 to 1. Needed where nothing is published."),
  specificity: share
    .optional()
    .describe("Share of teeth without it in which it is rightly not seen, 0 to 1. Needed where nothing is published."),
  depthMm: z.number().min(0).max(5).optional().describe("Of troughing alone: how deep below the orifices' level."),
  from: z.string().trim().max(300).optional().describe("Where your own sensitivity and specificity come from."),
});

/** A tooth, what may hide in it, and what was looked at so far. */
export const missedCanalInput = z.strictObject({
  tooth: z.string().describe("Two-digit number of ISO 3950, as 26."),
  feature: z.enum(features).describe("The canal or root that may hide."),
  population: z
    .string()
    .trim()
    .min(1)
    .max(60)
    .optional()
    .describe("A region that a series was taken in, as China; all series where absent or world."),
  evidence: z.array(evidence).max(40).describe("The looks and signs so far, in their order; may be empty."),
  wallKnownMm: z.number().min(0).max(10).optional().describe("The wall where troughing would cut, if it is known."),
  lessWasNotEnough: z
    .string()
    .trim()
    .max(2_000)
    .optional()
    .describe("Why films and the microscope were not enough for a CBCT."),
});
/** See {@link missedCanalInput}. */
export type MissedCanalInput = z.infer<typeof missedCanalInput>;
/** One look or sign of the input. */
export type Evidence = MissedCanalInput["evidence"][number];
