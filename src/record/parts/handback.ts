import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, words } from "../values.ts";
import { ways } from "./plan.ts";

/** To whom a tooth is handed back, by part: the record names no one. */
const handedTo = ["restoringDentist", "referringDentist", "otherDentist"] as const;

/** A published figure that the outlook is told with: the entry that holds it, and which of its series. */
const publishedFigure = z.strictObject({
  entry: z.string().regex(/^[0-9a-f]{64}$/, "is not the id of a ledger entry"),
  way: z.enum(ways),
  outcome: line.min(1).describe("The series, by its id in the entry."),
});

/** The tooth handed back to the restoring dentist: what must be done by when, and what a later re-entry must know. */
export const handbackPart = definePart({
  kind: "handback",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    to: z.enum(handedTo).optional(),
    restoreWith: line,
    restoreBy: day.optional(),
    orificesMarkedBy: line,
    warnings: words,
    prognosis: words,
    figure: publishedFigure.optional().describe("Chosen by the person; absent: the outlook stands without a figure."),
    recallOn: day.optional(),
    recallAsks: words.optional().describe("What the recall is to look at, and who does it."),
    painAdvice: words.optional().describe("Which pain is to be expected, and when to call."),
  }),
});
