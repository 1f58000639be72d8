import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { filmErrors } from "./film-errors.ts";

const place = z.tuple([z.number().min(-100_000).max(100_000), z.number().min(-100_000).max(100_000)]);

/** Three places along the long axis of a tooth. */
export const crownRootInput = z.strictObject({
  crown: place.describe("The cusp or incisal edge, [x,y]."),
  level: place.describe("Where crown and root part, on or beside the axis."),
  apex: place.describe("The root's apex."),
  levelIs: z
    .enum(["boneCrest", "cementoEnamelJunction"])
    .describe("Bone crest: the clinical ratio. Cemento-enamel junction: the anatomical one."),
  unit: z
    .enum(["mm", "px"])
    .optional()
    .describe("Of the places; mm where absent. In px, on a film without a scale, only the ratio is given."),
  ...filmErrors,
  sigmaPx: z.number().min(0).max(100).optional().describe("The click error where the places are in px."),
});
/** See {@link crownRootInput}. */
export type CrownRootInput = z.infer<typeof crownRootInput>;

const length = z.number().positive();

/** How long crown and root are along the axis, and their ratio. */
export const crownRootOutput = z.strictObject({
  crownMm: length.optional().describe("From the cusp or incisal edge to the level, along the axis."),
  rootMm: length.optional().describe("From the level to the apex, along the axis."),
  crownToRoot: length.describe("The crown's length over the root's: 0.6 is 1 : 1.67."),
  kind: z.enum(["clinical", "anatomical"]),
  foot: place.describe("The foot of the level on the axis, in the input's unit."),
  intervals: z
    .record(z.string(), intervalSchema)
    .describe("95 % intervals by the name of the value; the ratio's holds no error of the scale."),
  ...outputParts,
});
/** See {@link crownRootOutput}. */
export type CrownRootOutput = z.infer<typeof crownRootOutput>;
