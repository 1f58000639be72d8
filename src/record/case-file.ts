import { z } from "zod";
import { gestureSchema } from "./change.ts";
import { moment } from "./values.ts";

/** A case as a file: the gestures that built it, in order, and the films they name, kept beside it by hash. */
export const caseFileSchema = z.strictObject({
  format: z.literal("canalog case"),
  version: z.literal(1),
  caseId: z.string().regex(/^[a-z0-9-]{3,64}$/),
  gestures: z
    .array(gestureSchema.extend({ at: moment, who: z.string().max(80) }))
    .min(1)
    .max(20_000),
});
/** See {@link caseFileSchema}. */
export type CaseFile = z.infer<typeof caseFileSchema>;
