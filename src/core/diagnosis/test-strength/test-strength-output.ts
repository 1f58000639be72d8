import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { strengthTests } from "./test-strength-input.ts";

const chance = z
  .strictObject({ mean: z.number(), interval: intervalSchema.optional() })
  .describe("A probability of a non-vital pulp; without an interval where nothing behind it comes with counts.");
/** A probability with its interval, where it has one. */
export type Chance = z.infer<typeof chance>;

const accuracy = {
  sensitivity: z.number(),
  specificity: z.number(),
  likelihoodRatioPositive: z.number().optional().describe("sens / (1 - spec); absent where spec is 1."),
  likelihoodRatioNegative: z.number().optional().describe("(1 - sens) / spec; absent where spec is 0."),
  intervals: z
    .strictObject({
      sensitivity: intervalSchema.optional(),
      specificity: intervalSchema.optional(),
      likelihoodRatioPositive: intervalSchema.optional(),
      likelihoodRatioNegative: intervalSchema.optional(),
    })
    .describe("Empty where no counts are known."),
  counts: z
    .strictObject({
      truePositive: z.number(),
      falsePositive: z.number(),
      falseNegative: z.number(),
      trueNegative: z.number(),
    })
    .optional(),
  countsAre: z.enum(["printed", "derived", "given"]).optional(),
} as const;

const published = {
  mark: z.enum(["seen", "memory"]),
  method: z.string().optional(),
  condition: z.string().describe("What the test was held against."),
} as const;

const step = z.strictObject({
  test: z.enum(strengthTests),
  name: z.string().optional(),
  result: z.enum(["positive", "negative"]),
  group: z.string(),
  accuracyFrom: z.string().describe("input, or the id of the published source."),
  mark: published.mark.optional(),
  method: published.method,
  ...accuracy,
  before: chance,
  posterior: chance.describe("After this result and all before it."),
  alsoPublished: z
    .array(
      z.strictObject({
        source: z.string(),
        ...published,
        ...accuracy,
        posterior: z.number().optional().describe("After all results, had this accuracy been taken for this one."),
      }),
    )
    .describe("Every other accuracy that is kept for this test."),
});

/** What the results make of the probability: see docs/methods/test-strength.md. */
export const testStrengthOutput = z.strictObject({
  prior: chance,
  posterior: chance.describe("After all results."),
  steps: z
    .array(step)
    .describe("One for each result that an accuracy is kept or given for, in the order of the input."),
  bounds: z
    .strictObject({ independent: z.number(), redundant: z.number() })
    .describe("The mean after all results at dependence 0 and at 1."),
  dependence: z.number(),
  ...outputParts,
});
/** See {@link testStrengthOutput}. */
export type TestStrengthOutput = z.infer<typeof testStrengthOutput>;
/** One rung of the ladder. */
export type StrengthStep = TestStrengthOutput["steps"][number];
