import { z } from "zod";
import { definePart } from "../part.ts";
import { day, toothNumber, words } from "../values.ts";

/** Who and which tooth, and why the person came: the first moment of the spine. A patient is a pseudonym, a birth year and sex. */
export const casePart = definePart({
  kind: "case",
  version: 1,
  single: true,
  migrations: [],
  body: z.strictObject({
    pseudonym: z
      .string()
      .regex(/^[A-Za-z]{0,4}-?[0-9]{1,8}$/, "is not a pseudonym: up to four letters, a dash, digits (P-0417)"),
    birthYear: z.int().min(1900).max(2100),
    sex: z.enum(["female", "male", "other", "notRecorded"]),
    tooth: toothNumber,
    treatment: z.enum(["firstTreatment", "retreatment", "apicalBarrier", "vitalPulp", "surgery", "watch"]),
    presentedOn: day,
    complaint: words.describe("The complaint in the patient's words, without a name."),
    referredFor: words,
    background: words.describe("History of this tooth."),
    demo: z.boolean().describe("Invented for the demo; every page and document says so."),
  }),
});
