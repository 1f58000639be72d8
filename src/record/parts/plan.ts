import { z } from "zod";
import { planWays } from "../../core/diagnosis/plan/plan-ways.ts";
import { definePart } from "../part.ts";
import { between, day, line, words, yesNo } from "../values.ts";

/** The ways a tooth can go. */
export const ways = planWays;

const entry = z.string().regex(/^[0-9a-f]{64}$/, "is not the id of a ledger entry");
const percent = between(0, 100, "%");

const ownOutcome = z
  .strictObject({
    way: z.enum(ways),
    what: line.min(1),
    kind: z.enum(["healing", "retention", "pulp", "replacement"]),
    events: z.int().min(0).max(10_000_000).optional(),
    n: z.int().min(1).max(10_000_000).optional(),
    percent: percent.optional(),
    lowPercent: percent.optional(),
    highPercent: percent.optional(),
    followUp: line.min(1),
    from: line.min(1).describe("Where the figure comes from."),
  })
  .describe("A figure of the person's own for a way: a count, or a percentage with its range.");

/** What could be done, what was chosen and why. */
export const planPart = definePart({
  kind: "plan",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    madeOn: day,
    options: z.array(z.strictObject({ way: z.enum(ways), forIt: line, againstIt: line })).max(12),
    chosen: z.enum(ways),
    because: words,
    saidPlainly: words.optional().describe("Why, in words for the patient, as the consent page prints it."),
    visitsExpected: z.int().min(1).max(12).optional(),
    risksNamed: z.array(line).max(20),
    difficultyEntry: entry.optional().describe("The list of difficulty that stood when the plan was made."),
    planEntry: entry.optional().describe("The ways as they were weighed when the plan was made."),
    altered: z
      .enum(["respected", "altered", "notAssessed"])
      .optional()
      .describe("Whether earlier treatment kept the form of the canals."),
    crowned: yesNo.optional().describe("The tooth carries a crown or a bridge."),
    own: z.array(ownOutcome).max(40).optional(),
  }),
});
