import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { CaseSource } from "./case-source.ts";

/** An entry for a decision, and whether it is the one that the decision was made on. */
export interface EntryAsDecided {
  readonly entry: LedgerEntry;
  readonly stood: boolean;
}

/** The entry that a decision names, else the one that holds now; undefined where there is neither. */
export function entryAsDecided(
  { ledger, kept = [] }: CaseSource,
  id: string | undefined,
  subject: string,
): EntryAsDecided | undefined {
  const named = [...ledger, ...kept].find((entry) => entry.id === id);
  if (named !== undefined) return { entry: named, stood: true };
  const now = ledger.find((entry) => entry.subject === subject);
  return now === undefined ? undefined : { entry: now, stood: false };
}
