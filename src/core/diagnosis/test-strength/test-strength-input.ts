import { z } from "zod";
import { share } from "../../share.ts";
import { accuracySources } from "./published-accuracy.ts";

const count = z.int().min(0).max(1_000_000);

/** The tests whose results can be weighed. */
export const strengthTests = [
  "cold",
  "heat",
  "electric",
  "percussion",
  "palpation",
  "pulseOximetry",
  "laserDoppler",
  "custom",
] as const;

const result = z.strictObject({
  test: z.enum(strengthTests),
  name: z.string().trim().min(1).max(60).optional().describe("What a custom test is called."),
  result: z
    .enum(["positive", "negative"])
    .describe(
      "Positive points to a non-vital pulp: no reply to cold, heat or current, pain on percussion or palpation.",
    ),
  sensitivity: share.optional().describe("Share of non-vital pulps that the test calls positive; with specificity."),
  specificity: share.optional().describe("Share of vital pulps that the test calls negative; with sensitivity."),
  truePositive: count.optional().describe("Teeth of one's own series, all four counts in the place of the two shares."),
  falsePositive: count.optional(),
  falseNegative: count.optional(),
  trueNegative: count.optional(),
  source: z.enum(accuracySources).optional().describe("Which published accuracy is taken, where several are kept."),
  group: z
    .string()
    .trim()
    .min(1)
    .max(40)
    .optional()
    .describe(
      "Tests of one group may depend on each other; by itself sensibility, touch, bloodFlow, or a custom test alone.",
    ),
});
/** One result of a test on the tooth. */
export type StrengthResult = z.infer<typeof result>;

/** What is known before the tests, and what each test said. */
export const testStrengthInput = z.strictObject({
  prior: share.optional().describe("Probability of a non-vital pulp before the tests; or priorCounts."),
  priorCounts: z
    .strictObject({ events: count.describe("Non-vital pulps."), n: count.min(1).describe("Teeth like this one.") })
    .optional(),
  results: z.array(result).min(1).max(20),
  dependence: share
    .default(0)
    .describe("0: results are independent given the state; 1: a further result of the same group tells nothing new."),
  controls: z
    .enum(["replied", "noneReplied", "notTested"])
    .optional()
    .describe("Whether a tooth taken to be healthy replied to the tests of sensibility."),
  replyMayFailFor: z
    .array(z.enum(["openApex", "trauma", "calcified"]))
    .max(3)
    .optional()
    .describe("What may keep a vital pulp from replying."),
  draws: z.int().min(200).max(100_000).default(4_000).describe("Monte Carlo draws."),
  seed: z.int().min(0).max(4_294_967_295).default(1).describe("The same seed gives the same draws."),
});
/** See {@link testStrengthInput}. */
export type TestStrengthInput = z.infer<typeof testStrengthInput>;
