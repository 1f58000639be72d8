import { z } from "zod";
import { apicalTerms, pulpalTerms } from "../terms/consensus-terms.ts";
import { planWays } from "./plan-ways.ts";

/** What of a medical history changes a plan. */
export const planFlags = [
  "anticoagulant",
  "antiresorptive",
  "jawIrradiation",
  "endocarditisRisk",
  "pregnancy",
  "immuneSuppression",
  "diabetes",
  "allergyLatex",
  "allergyPenicillin",
  "allergyHypochlorite",
  "allergyAnaesthetic",
] as const;

const presence = z.enum(["none", "present", "unknown"]).optional();
const yesNo = z.enum(["yes", "no", "unknown"]).optional();
const within = (low: number, high: number) => z.number().min(low).max(high).optional();

const ownOutcome = z
  .strictObject({
    way: z.enum(planWays),
    what: z.string().min(1).max(120).describe("What was counted, as `healed`."),
    kind: z.enum(["healing", "retention", "pulp", "replacement"]),
    events: z.int().min(0).max(10_000_000).optional(),
    n: z.int().min(1).max(10_000_000).optional(),
    percent: within(0, 100),
    lowPercent: within(0, 100),
    highPercent: within(0, 100),
    followUp: z.string().min(1).max(120),
    from: z.string().min(1).max(300).describe("Where the figure comes from."),
  })
  .describe("A figure of the person's own: a count, or a percentage with its range.");

/** What is known of the tooth. Absent and `unknown` both mean not recorded: a silence is never a no. */
export const planInput = z.strictObject({
  tooth: z.string().min(1).describe("A permanent tooth, two digits of ISO 3950."),
  pulpal: z.enum(pulpalTerms).optional().describe("The clinician's own term."),
  apical: z.enum(apicalTerms).optional().describe("The clinician's own term."),
  lesion: presence.describe("At the apex, on the film."),
  lesionMm: within(0, 40).describe("Its largest diameter."),
  earlierFilling: presence,
  earlierFillingIs: z.enum(["adequate", "inadequate", "unknown"]).optional(),
  earlierFillingEndMm: within(-5, 20).describe("mm short of the apex, negative if beyond."),
  apex: z.enum(["closed", "open", "unknown"]).optional(),
  morphology: z
    .enum(["respected", "altered", "unknown"])
    .optional()
    .describe("Whether earlier treatment kept the canal's form."),
  fragment: presence.describe("A separated instrument in a canal."),
  perforation: presence,
  perforationMm: within(0, 15).describe("Its width."),
  exposure: z
    .enum(["none", "caries", "excavation", "trauma", "unknown"])
    .optional()
    .describe("What laid the pulp open."),
  caries: z.enum(["none", "shallow", "deep", "exposed", "unknown"]).optional(),
  resorption: presence,
  pain: presence.describe("Spontaneous, to heat or cold, or on biting."),
  sinusTract: presence,
  crack: z.enum(["none", "suspected", "present", "unknown"]).optional(),
  mobility: z.int().min(0).max(3).optional().describe("Grade."),
  post: yesNo,
  crowned: yesNo.describe("The tooth carries a crown or a bridge."),
  calcified: yesNo,
  bendDeg: within(0, 180).describe("The sharpest measured bend of its canals."),
  roots: z.int().min(1).max(6).optional().describe("How many."),
  ageYears: within(0, 120),
  ferruleHeightMm: within(0, 15),
  ferruleWidthMm: within(0, 10),
  crownToRoot: within(0.05, 20).describe("The clinical ratio, crown over root."),
  deepestProbingMm: within(0, 20),
  narrowDefect: yesNo.describe("The deep pocket is narrow."),
  medical: z.array(z.enum(planFlags)).max(20).optional().describe("Flags of the history; absent: not taken."),
  own: z.array(ownOutcome).max(40).optional(),
});
/** See {@link planInput}. */
export type PlanInput = z.infer<typeof planInput>;
