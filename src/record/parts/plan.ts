import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, words } from "../values.ts";

/** The ways a tooth can go. */
export const ways = [
  "watch",
  "indirectCapping",
  "directCapping",
  "partialPulpotomy",
  "fullPulpotomy",
  "treat",
  "apicalBarrier",
  "regeneration",
  "retreat",
  "surgery",
  "replantation",
  "extraction",
] as const;

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
  }),
});
