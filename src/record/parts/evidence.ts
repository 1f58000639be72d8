import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, otherPart, words } from "../values.ts";

/** A published source that the case rests on, in the fields of CSL-JSON that a reference list needs. */
export const referencePart = definePart({
  kind: "reference",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    title: z.string().trim().min(1).max(600),
    authors: z.array(line).max(2_000),
    journal: line,
    year: z.int().min(1700).max(2100).optional(),
    volume: line,
    pages: line,
    doi: line,
    design: z.enum([
      "review",
      "trial",
      "cohort",
      "caseControl",
      "crossSectional",
      "caseSeries",
      "caseReport",
      "bench",
      "animal",
      "guideline",
      "opinion",
      "notRecorded",
    ]),
    takeaway: words,
  }),
});

/** A sentence for or against a decision, with the references and numbers it stands on. */
export const claimPart = definePart({
  kind: "claim",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    about: otherPart.describe("The part whose decision it speaks to."),
    says: z.string().trim().min(1).max(2_000),
    speaks: z.enum(["for", "against"]),
    references: z.array(otherPart).max(40),
    state: z.enum(["supported", "contested", "benchOnly", "opinionOnly", "unsupported"]),
    verdict: words,
  }),
});

/** What a supervisor read, asked and signed. */
export const reviewPart = definePart({
  kind: "review",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    by: z.enum(["supervisor", "programme", "peer"]),
    of: otherPart.optional(),
    says: words,
    signed: z.boolean(),
    answer: words,
  }),
});
