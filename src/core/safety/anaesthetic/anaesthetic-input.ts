import { z } from "zod";

/** Agents whose limits are held in data/, by their international names. */
export const publishedAgents = ["articaine", "lidocaine", "mepivacaine", "prilocaine", "bupivacaine"] as const;

/** The published sets of limits by name. */
export const limitSetNames = ["unitedStatesLabel", "canada", "australia", "conservative"] as const;
/** One of {@link limitSetNames}. */
export type LimitSetName = (typeof limitSetNames)[number];

/** What the sum asks a person before it is relied on, each by name. */
export const historyNames = [
  "unselectiveBetaBlocker",
  "tricyclic",
  "cocaineWithinADay",
  "uncontrolledBloodPressure",
  "uncontrolledThyroid",
  "sulphiteAllergy",
  "anaestheticAllergy",
  "methaemoglobinRisk",
  "pregnancy",
  "liverFailure",
] as const;
/** One of {@link historyNames}. */
export type HistoryName = (typeof historyNames)[number];

const agent = z
  .string()
  .regex(/^[a-z]{4,40}$/, "is not an agent by its international name in small letters, as lidocaine")
  .describe(`By its international name: ${publishedAgents.join(", ")}; another one with limits of one's own.`);

const vasoconstrictorName = z.enum(["epinephrine", "levonordefrin", "felypressin"]);
/** The vasoconstrictors that are known. */
export type VasoconstrictorName = z.infer<typeof vasoconstrictorName>;

const vasoconstrictor = z
  .strictObject({
    name: vasoconstrictorName,
    ratio: z.number().optional().describe("1:100000 is 100000. For epinephrine and levonordefrin."),
    iuPerMl: z.number().gt(0).optional().describe("International units a ml, as 0.03. For felypressin."),
  })
  .describe("Absent for a plain solution.");
/** A vasoconstrictor and its strength. */
export type Vasoconstrictor = z.infer<typeof vasoconstrictor>;

/** What can be confirmed to be as it is written although it is unusual. */
const confirmable = z.enum(["bodyMassKg", "percent", "ratio", "iuPerMl", "cartridgeMl", "cartridges"]);
/** One of them by name. */
export type Confirmable = z.infer<typeof confirmable>;

const solution = {
  agent,
  percent: z.number().gt(0).max(100).describe("4 for 4 %, which is 40 mg/ml."),
  vasoconstrictor: vasoconstrictor.optional(),
  cartridgeMl: z.number().gt(0).max(50).describe("Volume of a cartridge, as 1.7, 1.8 or 2.2 ml."),
  confirmed: z.array(confirmable).max(6).optional().describe("What of this one a person confirmed although unusual."),
};

const givenDose = z.strictObject({
  ...solution,
  cartridges: z.number().min(0).max(100).describe("Parts of one count as such, as 0.5."),
  atMin: z
    .number()
    .min(0)
    .max(1_440)
    .optional()
    .describe("Minutes from the start of the visit; no elimination is credited."),
});
/** What was given at one time. */
export type GivenDose = z.infer<typeof givenDose>;

const plannedDose = z.strictObject({
  ...solution,
  cartridges: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .describe("How many are wanted; then it is said what they would come to."),
});
/** What is to be given next. */
export type PlannedDose = z.infer<typeof plannedDose>;

/** What a cartridge holds, given or planned. */
export type Solution = Omit<PlannedDose, "cartridges" | "confirmed">;

const ownDoseLimit = z.strictObject({
  agent,
  mgPerKg: z.number().min(0.001).max(50).optional(),
  maxMg: z.number().min(0.001).max(5_000).optional(),
  source: z.string().min(1).max(300).describe("Where it is printed."),
});
/** A limit of an agent that a person gives. */
export type OwnDoseLimit = z.infer<typeof ownDoseLimit>;

const ownVasoconstrictorLimit = z.strictObject({
  name: vasoconstrictorName,
  limit: z.number().min(0.001).max(5_000).describe("In a visit: micrograms, of felypressin international units."),
  source: z.string().min(1).max(300),
});

/** What the anaesthetic that is left to give is computed from. */
export const anaestheticInput = z.strictObject({
  bodyMassKg: z.number().min(2).max(400).describe("In kilograms."),
  ageYears: z.number().min(0).max(120).optional(),
  ageIsLeast: z.boolean().optional().describe("Whether the age is the lower of the two that a year of birth allows."),
  heightCm: z.number().min(45).max(250).optional().describe("With sex: the ideal mass of an adult in obesity."),
  sex: z.enum(["female", "male"]).optional(),
  idealMassKg: z.number().min(2).max(200).optional().describe("Given by a person; goes before height and sex."),
  cardiacRisk: z.boolean().optional().describe("Significant disease of the heart: the lower limit of epinephrine."),
  history: z
    .partialRecord(z.enum(historyNames), z.enum(["yes", "no"]))
    .optional()
    .describe("Questions that are answered; the others are asked."),
  given: z.array(givenDose).max(60).describe("In any order; empty where nothing was given yet."),
  planned: plannedDose.optional(),
  limitSet: z
    .union([z.enum(limitSetNames), z.array(ownDoseLimit).min(1).max(20)])
    .optional()
    .describe("Whose limits; unitedStatesLabel where absent."),
  vasoconstrictorLimits: z.array(ownVasoconstrictorLimit).max(3).optional().describe("In place of the published ones."),
  confirmed: z.array(confirmable).max(6).optional().describe("What a person confirmed although it is unusual."),
});
/** See {@link anaestheticInput}. */
export type AnaestheticInput = z.infer<typeof anaestheticInput>;
