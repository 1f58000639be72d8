import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { planWays } from "./plan-ways.ts";

const share = z.number().min(0).max(1);
const mark = z
  .enum(["seen", "memory", "common practice", "own"])
  .describe("Read in a copy, recalled, the trade's usage, or the person's own.");
const from = {
  source: z.string().describe("Id of the published source, a folder of data/; or `common practice`, or `own`."),
  mark,
} as const;

const reason = z.strictObject({
  row: z.string().describe("Id of the row of the table that says so."),
  speaks: z.enum(["for", "against", "asks"]),
  says: z.string(),
  ...from,
});

const mustBeTrue = z.strictObject({
  id: z.string(),
  says: z.string().describe("What must be true, in one line."),
  standing: z.enum(["met", "notMet", "notRecorded"]),
  value: z.union([z.number(), z.string()]).optional().describe("What this case has."),
  threshold: z.number().optional().describe("What it is held against."),
  unit: z.string().optional().describe("Of value and threshold."),
  by: z.number().optional().describe("How far the value lies above the threshold; negative: below."),
  decides: z.boolean().describe("True: the way needs an answer first where this is not met or not recorded."),
  note: z.string().optional().describe("What the threshold rests on, and others that are published."),
  ...from,
});

const outcome = z.strictObject({
  id: z.string(),
  what: z.string().describe("What was counted, as `healed`."),
  kind: z
    .enum(["healing", "notWorse", "retention", "pulp", "replacement"])
    .describe("Neither retention nor a lesion that did not get worse is healing: never in one row."),
  events: z.int().min(0).optional().describe("How many had it; absent where no counts are printed."),
  n: z.int().min(1).optional().describe("Of how many that were looked at."),
  proportion: share.describe("Events over n, or the printed share."),
  interval: intervalSchema.optional(),
  intervalIs: z.enum(["wilson", "wilsonOfImpliedCounts", "printed", "none"]),
  definition: z.enum(["strict", "loose", "survival", "asPrinted"]),
  definitionSays: z.string().describe("What counts, in words."),
  imaging: z.enum(["film", "cbct", "none", "notStated"]),
  unit: z.enum(["tooth", "root", "patient", "implant", "bridge", "notStated"]),
  design: z.string(),
  followUp: z.string(),
  recall: z
    .strictObject({ examined: z.int(), of: z.int(), proportion: share })
    .optional()
    .describe("How many of those treated were seen again, where printed."),
  group: z.string().describe("Whom the figure counts."),
  nearest: z.enum(["nearest", "near", "wider", "other"]).describe("How near the group is to this case."),
  nearestSays: z.string(),
  note: z.string().optional(),
  ...from,
});

const personalFigure = z.strictObject({
  proportion: share,
  interval: intervalSchema.optional().describe("Of the odds ratio alone."),
  says: z.string(),
});

const factor = z.strictObject({
  id: z.string(),
  says: z.string(),
  standing: z.enum(["here", "notHere", "notRecorded"]),
  ratio: z.number().positive().optional(),
  ratioIs: z.enum(["odds ratio", "hazard ratio", "risk ratio", "none printed"]),
  oddsRatio: z.number().positive().optional().describe("The ratio, where it is an odds ratio."),
  interval: intervalSchema.optional(),
  adjusted: z.boolean().optional(),
  appliesTo: z.string().describe("The outcome and the series that it was found in."),
  direction: z.enum(["lowers", "raises", "either"]).describe("What it does to the outcome that is wished for."),
  personalFigure: personalFigure
    .optional()
    .describe("Only where the odds ratio stands on the same series' own group without the factor."),
  noPersonalFigure: z.string().optional().describe("Why there is none."),
  ...from,
});

const risk = z.strictObject({
  id: z.string(),
  says: z.string().describe("In words of the trade."),
  because: z.string().describe("The fact of this case that calls for it."),
  plain: z.string().describe("For the patient: short sentences without a word of the trade."),
  outOf: z
    .strictObject({ events: z.int(), n: z.int(), interval: intervalSchema })
    .optional()
    .describe("How often, where a count is kept; said at the end of `plain`."),
  ...from,
});

const visits = z.strictObject({
  least: z.int().min(0),
  most: z.int().min(0),
  usual: z.string(),
  why: z.string(),
  ...from,
});

const plainWay = z.strictObject({
  name: z.string(),
  whatItIs: z.array(z.string()),
  whatItAsks: z.array(z.string()).describe("What it asks of the patient, then and later."),
  whatItLeaves: z.array(z.string()).describe("What may happen if this way is taken and it does not work."),
  visits: z.string(),
  chances: z
    .array(z.strictObject({ outcome: z.string(), says: z.string() }))
    .describe("Sentences made of the rows of outcomes, by their ids."),
});

/** One way with all that is known about it for this case. */
export const planOption = z.strictObject({
  way: z.enum(planWays),
  standing: z.enum(["open", "needs an answer first", "does not fit"]),
  why: z.array(reason).describe("The rows of the table that put it there."),
  steps: z.array(z.string()),
  mustBeTrueFirst: z.array(mustBeTrue),
  outcomes: z
    .array(outcome)
    .describe(
      "Published series, the nearest group first; none is pooled with another. Like all that follows empty where the way does not fit.",
    ),
  conflicts: z.array(z.strictObject({ says: z.string(), sources: z.array(z.string()) })),
  factors: z.array(factor),
  risks: z.array(risk).describe("Every material risk that the facts call for."),
  visits,
  plain: plainWay,
});
/** See {@link planOption}. */
export type PlanOption = z.infer<typeof planOption>;

/** What can be done with a tooth, way by way. */
export const planOutput = z.strictObject({
  options: z.array(planOption).length(planWays.length).describe("Every way once, from the least done to the most."),
  ask: z
    .array(
      z.strictObject({
        fact: z.string(),
        says: z.string(),
        ways: z.array(z.enum(planWays)),
        risks: z.array(z.string()),
      }),
    )
    .describe("Facts that are not recorded, with the ways that wait for them and the risks that they could call for."),
  plain: z.strictObject({
    whatIsWrong: z.array(z.string()),
    ifNothingIsDone: z.array(z.string()),
  }),
  ...outputParts,
});
/** See {@link planOutput}. */
export type PlanOutput = z.infer<typeof planOutput>;
