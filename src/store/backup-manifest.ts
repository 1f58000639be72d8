import { z } from "zod";

/** The name of the list inside a backup. */
export const manifestName = "manifest.json";

/** Files of a home, beside database, films and documents, that belong to the record. */
export const otherFiles = ["demo.json"] as const;

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
const path = z
  .string()
  .regex(/^(canalog\.sqlite|demo\.json|(films|documents)\/[0-9a-f]{2}\/[0-9a-f]{64})$/, "is not a file of a record");

/** The list inside a backup: every file with its length and hash. No other name than these is ever written to disk. */
export const manifestSchema = z.strictObject({
  format: z.literal("canalog backup"),
  version: z.literal(1),
  madeAt: z.iso.datetime(),
  files: z.array(z.strictObject({ path, bytes: z.int().min(0), sha256 })).min(1),
  missing: z.array(path).describe("Files that rows named and that were already gone when the backup was made."),
});
/** See {@link manifestSchema}. */
export type Manifest = z.infer<typeof manifestSchema>;
