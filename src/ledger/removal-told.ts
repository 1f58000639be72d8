import { type RemovalOutput, removalOutput } from "../core/instrument/removal-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of a piece's removal. */
export type RemovalTold = RemovalOutput;

/** What the weighing of a removal is called in the ledger. */
export const removalSubject = (removalId: string): string => `removal of ${removalId}`;

/** See {@link RemovalTold}; undefined for an entry that refused. */
export const removalTold = (entry: Pick<LedgerEntry, "output"> | undefined): RemovalTold | undefined =>
  removalOutput.safeParse(entry?.output).data;
