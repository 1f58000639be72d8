import { z } from "zod";
import { definePart } from "../part.ts";
import { day, line, words } from "../values.ts";

/** The tooth handed back to the restoring dentist: what must be done by when, and what a later re-entry must know. */
export const handbackPart = definePart({
  kind: "handback",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    on: day,
    restoreWith: line,
    restoreBy: day.optional(),
    orificesMarkedBy: line,
    warnings: words,
    prognosis: words,
  }),
});
