import { z } from "zod";
import table from "../../../../data/difficulty/facts.json" with { type: "json" };

/** What a fact makes harder, in the order in which a tooth is treated. */
export const difficultyGroups = ["reach", "shape", "seal", "keep"] as const;

/** How a fact is read: against a value, or as there or not. */
export const thresholdKinds = ["above", "below", "atLeast", "present"] as const;

/** Where a threshold comes from, and whether it was read, recalled, or is common practice. */
export const thresholdMarks = ["seen", "memory", "common practice"] as const;

const threshold = {
  source: z.string(),
  mark: z.enum(thresholdMarks),
} as const;

const row = z.strictObject({
  id: z.string(),
  group: z.enum(difficultyGroups),
  is: z.enum(thresholdKinds),
  value: z.number().optional(),
  unit: z.string().optional(),
  ...threshold,
  says: z.string().describe("With {value} and {canal} in their places."),
  saysNone: z.string().optional().describe("The sentence where the fact was looked for and is not there."),
  because: z.string(),
  ask: z.string().optional().describe("Asked where nobody recorded it; absent where another row asks already."),
  others: z.array(z.strictObject({ ...threshold, value: z.number(), says: z.string() })).optional(),
});
/** One row of the table: a fact, its threshold and where that comes from. */
export type DifficultyRow = z.infer<typeof row>;

/**
 * The facts in the order in which they are shown: by group, and in a group from the patient to the canal.
 * @source data/difficulty/facts.json names the source of each threshold, or says common practice
 */
export const difficultyTable: readonly DifficultyRow[] = z.array(row).parse(table.rows);
