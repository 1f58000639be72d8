import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, words } from "../values.ts";

/** Consent as an event: who explained what, who agreed or refused, and to which use of images. */
export const consentPart = definePart({
  kind: "consent",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    to: line,
    explainedBy: z.enum(["resident", "supervisor", "other"]),
    answeredBy: z.enum(["patient", "parentOrGuardian", "representative"]),
    answer: z.enum(["agreed", "refused", "undecided"]),
    capacity: z.enum(["has", "lacks", "doubtful", "minor"]),
    imagesFor: z.array(z.enum(["treatment", "teaching", "publication"])).max(3),
    note: words,
  }),
});
