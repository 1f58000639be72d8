import { canonicalJson } from "../record/canonical-json.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { deriveLedger, type LedgerSource } from "./derive-ledger.ts";

/** A past state of a case, and every entry that was ever kept for it. */
export interface PastLedger extends Omit<LedgerSource, "known"> {
  readonly kept: readonly LedgerEntry[];
  /** The moment of the change that came next; absent where none did. */
  readonly until?: string;
}

/**
 * The ledger as it stood at a past change: what its parts ask, answered by the entries that are kept. Of the same sum in
 * several versions of its topic, the one that held then; what was never kept is worked out from the parts of then.
 */
export function ledgerAsStood({ kept, until, ...source }: PastLedger): LedgerEntry[] {
  const byId = new Map<string, LedgerEntry>(kept.map((entry) => [entry.id, entry]));
  const asked = deriveLedger({ ...source, known: (id) => byId.get(id) });
  return asked.map((entry) => heldThen(sameSums(entry, kept), until) ?? entry);
}

function sameSums(asked: LedgerEntry, kept: readonly LedgerEntry[]): LedgerEntry[] {
  const input = canonicalJson(asked.input);
  return kept
    .filter(({ subject, topic }) => subject === asked.subject && topic === asked.topic)
    .filter((entry) => canonicalJson(entry.input) === input)
    .sort((a, b) => (a.at < b.at ? -1 : 1));
}

/** The last that was kept before the next change, else the first that was kept at all. */
const heldThen = (sums: readonly LedgerEntry[], until: string | undefined): LedgerEntry | undefined =>
  sums.filter(({ at }) => until === undefined || at <= until).at(-1) ?? sums[0];
