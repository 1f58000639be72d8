import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { difficultyGroups, thresholdKinds, thresholdMarks } from "./difficulty-table.ts";

const group = z.enum(difficultyGroups).describe("What it makes harder: to reach, to shape, to seal, to keep.");
const threshold = {
  value: z.number().optional().describe("Absent where the fact is there or not."),
  source: z.string().describe("Id of the source, or common practice."),
  mark: z.enum(thresholdMarks),
} as const;

const fact = z.strictObject({
  id: z.string(),
  group,
  canal: z.string().optional(),
  says: z.string().describe("The fact in words, with how far it lies above or below the threshold."),
  because: z.string().describe("Why it makes the tooth harder."),
  value: z.union([z.number(), z.string(), z.boolean()]),
  unit: z.string().optional(),
  interval: intervalSchema.optional(),
  atLeast: z.boolean().optional().describe("Seen on one film alone: the true angle may be larger."),
  threshold: z.strictObject({ ...threshold, is: z.enum(thresholdKinds).describe("Which side of it is harder.") }),
  lies: z.enum(["above", "below", "at", "present", "absent"]),
  by: z.number().optional().describe("How far from the threshold, in the unit of the value."),
  sure: z.boolean().optional().describe("Whether the whole interval lies on this side; absent without an interval."),
  otherThresholds: z
    .array(
      z.strictObject({ ...threshold, value: z.number(), says: z.string(), lies: z.enum(["above", "below", "at"]) }),
    )
    .optional(),
});
/** One recorded fact beside its threshold. */
export type DifficultyFact = z.infer<typeof fact>;

/** What makes a tooth harder: see docs/methods/difficulty.md. */
export const difficultyOutput = z.strictObject({
  facts: z.array(fact).describe("What makes it harder, in the order reach, shape, seal, keep."),
  within: z.array(fact).describe("What was recorded and lies on the other side of its threshold, in the same order."),
  asked: z
    .array(z.strictObject({ id: z.string(), group, canal: z.string().optional(), says: z.string() }))
    .describe("What nobody recorded, and would matter; it counts neither as harder nor as easier."),
  ...outputParts,
});
/** See {@link difficultyOutput}. */
export type DifficultyOutput = z.infer<typeof difficultyOutput>;
