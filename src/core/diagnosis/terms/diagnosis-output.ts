import { z } from "zod";
import { outputParts } from "../../basis.ts";

const entry = z.strictObject({
  row: z.string().describe("The row of the table."),
  finding: z.string().describe("What was found, in words."),
  says: z.string().describe("What the row says of it."),
});
/** A row that holds, with what was found and what the row says of it. */
export type Entry = z.infer<typeof entry>;

const axis = z.strictObject({
  term: z.string().describe('In the wording of the 2009 consensus, or "not determined".'),
  code: z.string().describe('Of ICD-10, by our own crosswalk, or "no code".'),
  status: z.enum(["determined", "possible", "not determined"]),
  for: z.array(entry),
  against: z.array(entry),
  alternatives: z
    .array(z.strictObject({ term: z.string(), separatedBy: z.string() }))
    .describe("Terms that remain possible, and what would separate them."),
});

const pair = z.strictObject({ pulpal: z.string(), apical: z.string() });

/** What the table gives: source and urgency, then both axes, with everything that speaks for and against. */
export const diagnosisOutput = z.strictObject({
  pulpal: axis,
  apical: axis,
  apicalAlso: z.string().optional().describe("A second apical term beside the first."),
  source: z.enum(["this tooth", "another tooth", "not odontogenic suspected", "not reproduced"]),
  sourceBecause: z.array(entry).describe("Empty where nothing points away from this tooth."),
  urgent: z.array(entry),
  contradictions: z.array(entry.extend({ places: z.array(z.string()).describe("Where in the input both stand.") })),
  asks: z.array(entry).describe("What to look for next."),
  codes: z.strictObject({
    icd10: pair,
    icd11: pair,
    icd10Cm: pair.describe("The clinical modification for the United States."),
  }),
  european: z
    .strictObject({ pulpal: z.string().optional(), apical: z.string().optional() })
    .describe("The terms of the European guideline of 2023, where they differ."),
  ...outputParts,
});
/** See {@link diagnosisOutput}. */
export type DiagnosisOutput = z.infer<typeof diagnosisOutput>;
