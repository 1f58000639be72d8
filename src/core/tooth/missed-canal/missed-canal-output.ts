import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { lookKinds, lookResults } from "./look.ts";
import { priorMethods } from "./prior-of-series.ts";

const share = z.number().min(0).max(1);

const step = z.strictObject({
  evidence: z.number().int().min(0).describe("Its place in the input's evidence, from 0."),
  kind: z.enum(lookKinds),
  result: z.enum(lookResults),
  sensitivity: share,
  specificity: share,
  from: z.string().describe("Where the two come from."),
  likelihoodRatio: z
    .union([z.number().min(0), z.literal("unbounded")])
    .describe("By what the odds are multiplied; unbounded where the result can't be had without the feature."),
  posterior: share.describe("The chance after this step."),
  interval: intervalSchema.describe("The prior's two ends after this step."),
});

const nextLook = z.strictObject({
  kind: z.enum(lookKinds),
  harm: z
    .union([z.literal(1), z.literal(2), z.literal(3), z.literal(4)])
    .describe("1 none, 2 a film, 3 a limited-field CBCT, 4 dentine."),
  says: z.string().describe("What to do."),
  expectedFallBits: z.number().min(0).optional().describe("How much uncertainty it takes away on average, in bits."),
  missing: z
    .array(z.enum(["sensitivity", "specificity"]))
    .optional()
    .describe("What nobody has published for it, so that it can't be ranked by its fall."),
  needs: z.string().optional().describe("What must be there first."),
});
/** One look that is left, with its class of harm. */
export type NextLook = z.infer<typeof nextLook>;

/** How likely a feature is that nobody has seen yet, and what to look at next. */
export const missedCanalOutput = z.strictObject({
  prior: z.strictObject({
    mean: share.describe("The chance before any look."),
    interval: intervalSchema.describe("Of the share in the population that the tooth comes from."),
    n: z.number().int().describe("Teeth with the feature, added up over the series."),
    N: z.number().int().describe("Teeth looked at, added up over the series."),
    source: z.string().describe("The series by the ids of their sources, with their regions."),
    method: z
      .enum(priorMethods)
      .describe("Random effects over several series, the span of two, or the beta distribution of one."),
    series: z.array(z.strictObject({ region: z.string(), n: z.number(), N: z.number(), source: z.string() })),
  }),
  posterior: z.strictObject({
    mean: share.describe("The chance after every look that could be counted."),
    interval: intervalSchema.describe("The prior's two ends, each taken through the same looks."),
  }),
  steps: z.array(step).describe("The evidence that could be counted, in its order."),
  nextBestLook: z.array(nextLook).describe("What is left to look at, best first: by harm, then by the expected fall."),
  ...outputParts,
});
/** See {@link missedCanalOutput}. */
export type MissedCanalOutput = z.infer<typeof missedCanalOutput>;
