import { z } from "zod";
import { apicalTerms, pulpalTerms } from "../../core/diagnosis/terms/consensus-terms.ts";
import { definePart } from "../part.ts";
import { day, words } from "../values.ts";

/** Where a complaint comes from. */
const painSources = ["thisTooth", "anotherTooth", "notOdontogenicSuspected", "notReproduced"] as const;

/** The clinician's own diagnosis on one day, in the terms of the named list, with the reason. */
export const diagnosisPart = definePart({
  kind: "diagnosis",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    madeOn: day,
    taxonomy: z.literal("consensus2009").describe("AAE/ABE consensus wording, 2009."),
    pulpal: z.enum(pulpalTerms),
    apical: z.enum(apicalTerms),
    because: words,
    apicalAlso: z.literal("condensingOsteitis").optional().describe("A second apical term, beside the first."),
    source: z.enum(painSources).optional().describe("Where the complaint comes from."),
    suggestion: z
      .string()
      .regex(/^[0-9a-f]{64}$/, "is not the id of a ledger entry")
      .optional()
      .describe("The ledger entry of the suggestion that stood when it was made."),
    differsBecause: words.optional().describe("Why it differs from what the rules gave."),
  }),
});
