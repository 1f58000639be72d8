import { z } from "zod";
import table from "../../../../data/diagnosis-rules/rules.json" with { type: "json" };

const wanted = z.enum(["yes", "no", "unknown", "notYes", "notNo"]);
/** What a row wants of facts, by their names; all of it at once. */
export const whenSchema = z.record(z.string(), wanted);
/** See {@link whenSchema}. */
export type When = z.infer<typeof whenSchema>;

const opened = z.strictObject({ term: z.string(), separatedBy: z.string() });
const terms = z.array(z.string()).default([]);

const rowSchema = z.strictObject({
  id: z.string(),
  axis: z.string(),
  kind: z.enum(["urgent", "source", "term", "speaks", "open", "also", "contradiction", "asks", "caution"]),
  when: whenSchema,
  says: z.string(),
  term: z.string().default(""),
  status: z.enum(["determined", "possible", "not determined"]).default("possible"),
  settledBy: z.array(z.string()).default([]),
  restsOnPain: z.boolean().default(false),
  origin: z.enum(["another tooth", "not odontogenic suspected", "not reproduced"]).optional(),
  separatedBy: z.string().default(""),
  open: z.array(opened).default([]),
  for: terms,
  against: terms,
  source: z.string(),
  mark: z.enum(["seen", "memory", "common practice"]),
});

/** One row of the table: what it looks at, what it says, and whose word that is. */
export type Row = z.infer<typeof rowSchema>;
/** What a row wants of one fact. */
export type Wanted = z.infer<typeof wanted>;

/** The rows of the table in the order in which they are asked; within an axis the first that holds decides. */
export const rows: readonly Row[] = z.array(rowSchema).parse(table.rows);

/** What each fact means, and what would settle it. */
export const factWords: Readonly<Record<string, { readonly means: string; readonly asks: string }>> = table.facts;
