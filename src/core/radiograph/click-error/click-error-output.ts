import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";

const sigma = z.number().min(0);
const count = z.int().min(0);
const group = { n: count.describe("Pairs."), sigmaPx: sigma, interval: intervalSchema };

/** The error of a person's click, and how sure it is. */
export const clickErrorOutput = z.strictObject({
  n: count.describe("Pairs."),
  clicks: count.describe("Marks: two a pair."),
  sigmaPx: sigma.describe("Standard deviation of one click in each direction, px, all pairs, both directions."),
  sigmaColumnPx: sigma.describe("The same across."),
  sigmaRowPx: sigma.describe("The same down."),
  driftColumnPx: z.number().describe("Second mark less first, on the mean; above 0: farther right."),
  driftRowPx: z.number().describe("Above 0: farther down."),
  biasColumnPx: z.number().optional().describe("Middle of both marks less the true place, on the mean."),
  biasRowPx: z.number().optional(),
  missPx: sigma.optional().describe("Root mean square of mark less truth in each direction: error and bias together."),
  truths: count.describe("Pairs whose true place is known."),
  intervals: z.record(z.string(), intervalSchema).describe("95 % intervals by the name of the value."),
  byName: z
    .array(z.strictObject({ name: z.string(), ...group, missPx: sigma.optional() }))
    .describe("By kind of place."),
  byTool: z.array(z.strictObject({ tool: z.enum(["pointer", "keyboard"]), ...group })),
  outliers: z
    .array(z.strictObject({ film: z.string(), name: z.string(), apartPx: z.number(), expectedPx: z.number() }))
    .describe("Pairs that lie farther apart than the rule expects of any: apart, and the rule's bound."),
  without: z.strictObject(group).optional().describe("The same without the outliers; absent where there are none."),
  zoom: z.strictObject({ low: z.number(), middle: z.number(), high: z.number() }).optional(),
  ...outputParts,
});
/** See {@link clickErrorOutput}. */
export type ClickErrorOutput = z.infer<typeof clickErrorOutput>;
