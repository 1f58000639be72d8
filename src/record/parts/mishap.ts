import { z } from "zod";
import { instrumentAsTold } from "../instrument-geometry.ts";
import { definePart } from "../part.ts";
import { between, canalName, day, mmBetween, otherPart, words } from "../values.ts";
import { mishapDetails, stepDone, toldAbout } from "./mishap-details.ts";
import { mishapKinds } from "./mishap-kinds.ts";

/** Something that went otherwise than meant, what was done about it and what the patient was told. */
export const mishapPart = definePart({
  kind: "mishap",
  version: 1,
  single: false,
  migrations: [],
  body: z
    .strictObject({
      on: day,
      visit: otherPart.optional(),
      what: z.enum(mishapKinds),
      canal: canalName.optional(),
      instrument: z
        .strictObject({ ...instrumentAsTold, rpm: between(0, 20_000, "turns a minute").optional() })
        .optional()
        .describe("As far as it is known; nothing of it is taken to be so before it is said."),
      fragmentMm: mmBetween(0.1, 30).optional(),
      third: z.enum(["coronal", "middle", "apical", "notRecorded"]),
      bend: z.enum(["before", "in", "beyond", "none", "notRecorded"]),
      handled: z.enum(["removed", "bypassed", "left", "repaired", "referred", "open", "other"]),
      toldPatient: z.enum(["told", "notYet"]),
      story: words,
      ...mishapDetails,
      steps: z.array(stepDone).max(40).optional().describe("Of the usual immediate steps, those done."),
      told: toldAbout.optional(),
      defence: words.optional().describe("The resident's own account of why."),
      objection: words.optional().describe("What a supervisor objects."),
    })
    .refine(({ on, missedCanal }) => missedCanal?.since === undefined || missedCanal.since <= on, {
      path: ["missedCanal", "since"],
      message: "is after the day on which it was found",
    }),
});
