import { z } from "zod";
import { line } from "../values.ts";
import { atMin } from "./visit-materials.ts";

/** What a step of a visit is about; a press on it opens what records it. */
const stepAbout = z.enum([
  "history",
  "timeOut",
  "anaesthetic",
  "isolation",
  "access",
  "canals",
  "workingLength",
  "instruments",
  "irrigation",
  "film",
  "solvent",
  "medicament",
  "coneFit",
  "filling",
  "temporary",
  "lots",
  "countIn",
  "told",
  "next",
  "other",
]);

const asked = {
  says: line.min(1),
  about: stepAbout.optional(),
  holdPoint: z.enum(["access", "workingLength", "coneFit", "other"]).optional().describe("The supervisor looks here."),
};

/** A step that a template asks for. */
export const templateStep = z.strictObject(asked);

/** The same step in a visit: done at a minute, left out for a reason, or open. */
export const visitStep = z.strictObject({
  ...asked,
  doneAtMin: atMin.optional(),
  done: z.literal(true).optional().describe("Done, at a minute that nobody noted."),
  leftOut: line.optional().describe("Why it was left out."),
});
