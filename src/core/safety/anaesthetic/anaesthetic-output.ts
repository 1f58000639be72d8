import { z } from "zod";
import { outputParts } from "../../basis.ts";
import { historyNames, limitSetNames } from "./anaesthetic-input.ts";

const mark = z.enum(["seen", "memory", "own"]);

const limitParts = {
  limitMg: z.number().describe("The lower of mg/kg and the maximum, in mg."),
  limitRule: z.string().describe("How the limit came about, in words."),
  source: z.string().describe("Folders of data/, or what the person named."),
  mark,
};

const agentRow = z.strictObject({
  agent: z.string(),
  givenMg: z.number(),
  ...limitParts,
  fraction: z.number().describe("Given in its limit."),
  otherSets: z
    .array(z.strictObject({ set: z.enum(limitSetNames), limitMg: z.number() }))
    .describe("What the other published sets allow this person, the lowest first."),
});
/** One agent and how much of its limit was given. */
export type AgentRow = z.infer<typeof agentRow>;

const vasoconstrictorRow = z.strictObject({
  name: z.enum(["epinephrine", "levonordefrin", "felypressin"]),
  given: z.number(),
  limit: z.number().optional().describe("In a visit; absent where no source that was read has one."),
  unit: z.enum(["micrograms", "IU"]),
  fraction: z.number().optional(),
  source: z.string().optional(),
  mark: mark.optional(),
});
/** One vasoconstrictor and how much of its limit was given. */
export type VasoconstrictorRow = z.infer<typeof vasoconstrictorRow>;

const stop = z.strictObject({
  by: z.enum(["sum", "vasoconstrictor", "age"]),
  says: z.string(),
  mark,
});
/** Why nothing more of it should be given without a decision. */
export type Stop = z.infer<typeof stop>;

const bound = z.strictObject({
  by: z.enum(["agent", "vasoconstrictor", "sum"]),
  cartridges: z.number().describe("Before it is rounded down; never below 0."),
});
/** How many cartridges one limit leaves. */
export type Bound = z.infer<typeof bound>;

const planned = z.strictObject({
  cartridgesLeft: z.int().describe("Whole cartridges, rounded down."),
  mg: z.number().describe("What they hold, in mg."),
  boundBy: bound.shape.by.describe("The limit that leaves the fewest."),
  mgPerCartridge: z.number(),
  ...limitParts,
  bounds: z.array(bound).describe("Every limit that counts, the fewest first."),
  wanted: z
    .strictObject({
      cartridges: z.number(),
      mg: z.number(),
      fractionSum: z.number(),
      overLimit: z.boolean(),
      asks: z.array(z.string()).describe("What has to be asked before it is recorded; empty below every limit."),
    })
    .optional()
    .describe("What the wanted cartridges would come to together with what was given."),
});
/** What is left of the planned solution. */
export type PlannedRow = z.infer<typeof planned>;

const question = z.strictObject({
  about: z.enum([...historyNames, "cardiacRisk", "ageYears"]),
  asks: z.string(),
  answered: z.literal("yes").optional().describe("Absent while nobody has answered."),
  mark: z.enum(["seen", "memory"]),
});
/** What a person is asked before the sum is relied on. */
export type Question = z.infer<typeof question>;

/** How much was given, of what, against whose limits, and what is left. */
export const anaestheticOutput = z.strictObject({
  limitSet: z.strictObject({
    name: z.enum([...limitSetNames, "own"]),
    says: z.string().describe("Whose limits these are, in words."),
  }),
  dosingMass: z.strictObject({
    kg: z.number().describe("What the limits are reckoned by."),
    says: z.string(),
  }),
  agents: z.array(agentRow),
  fractionSum: z.number().describe("Over all agents; above 1 is a stop."),
  overLimit: z.boolean().describe("Whether the sum, or a vasoconstrictor, is above its limit."),
  vasoconstrictors: z.array(vasoconstrictorRow),
  planned: planned.optional(),
  stops: z.array(stop),
  questions: z.array(question),
  ...outputParts,
});
/** See {@link anaestheticOutput}. */
export type AnaestheticOutput = z.infer<typeof anaestheticOutput>;
