import { z } from "zod";
import { isRootCountNote } from "../core/tooth/canal-notes.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, thePart } from "../record/parts.ts";

const answered = z.looseObject({
  roots: z.array(z.looseObject({ name: z.string(), sequence: z.string(), vertucci: z.string().nullable() })),
  canalCount: z.number(),
  foramenCount: z.number(),
  code: z.looseObject({ display: z.string() }),
  extraRoot: z.string().nullable().optional(),
  notes: z.array(z.string()).default([]),
  notComputed: z.array(z.looseObject({ name: z.string(), why: z.string() })).default([]),
});

/** Roots and canals of a tooth as an entry of the ledger holds them. */
export type CanalsRead = z.infer<typeof answered>;

/** The entry about the roots and canals of a case, if they are recorded. */
export const canalsEntry = (ledger: readonly LedgerEntry[]): LedgerEntry | undefined =>
  ledger.find(({ topic }) => topic === "canals");

/** See {@link CanalsRead}; undefined for an entry that refused. */
export const canalsRead = (entry: LedgerEntry | undefined): CanalsRead | undefined =>
  answered.safeParse(entry?.output).data;

const asked = z.looseObject({ roots: z.unknown() });

/** Whether an entry is about these roots and not about roots that have been changed since. */
export function isAbout(entry: LedgerEntry | undefined, roots: unknown): boolean {
  const input = asked.safeParse(entry?.input).data;
  return input !== undefined && canonicalJson(input.roots) === canonicalJson(roots);
}

/** What is unusual in the number of roots, in words; undefined where nothing is. */
export const unusualRootCount = (read: CanalsRead | undefined): string | undefined => read?.notes.find(isRootCountNote);

/** Whether the roots of a case are unusual in number for its tooth and nobody has said yet why that is right. */
export function isReasonOpen(ledger: readonly LedgerEntry[], parts: readonly Part[]): boolean {
  const anatomy = thePart(parts, "anatomy")?.body;
  const unusual = unusualRootCount(canalsRead(canalsEntry(ledger)));
  return anatomy !== undefined && unusual !== undefined && (anatomy.unusualBecause ?? "") === "";
}
