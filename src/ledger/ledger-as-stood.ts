import { canonicalJson } from "../record/canonical-json.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type DoSums, deriveLedgerBy, type LedgerSource } from "./derive-ledger.ts";

/** A past state of a case, and every entry that was ever kept for it. */
export interface PastLedger extends Pick<LedgerSource, "caseId" | "parts" | "settings" | "at"> {
  readonly kept: readonly LedgerEntry[];
  /** The moment of the change that came next; absent where none did. */
  readonly until?: string;
}

/**
 * The ledger as it stood at a past change: what its parts ask, answered by the entries that are kept. Of the same sum in
 * several versions of its topic, the one that held then; what was never kept is worked out from the parts of then.
 */
export function ledgerAsStood({ kept, until, ...source }: PastLedger, doSums: DoSums): Promise<LedgerEntry[]> {
  const sums = new Map<string, LedgerEntry[]>();
  for (const entry of kept) sums.set(sumOf(entry), [...(sums.get(sumOf(entry)) ?? []), entry]);
  return deriveLedgerBy(doSums, {
    ...source,
    known: () => undefined,
    instead: (sum) => heldThen(sums.get(sumOf(sum)) ?? [], until),
  });
}

const sumOf = ({ subject, topic, input }: Pick<LedgerEntry, "subject" | "topic" | "input">): string =>
  canonicalJson({ subject, topic, input });

/** The last that was kept before the next change, else the first that was kept at all. */
function heldThen(sums: readonly LedgerEntry[], until: string | undefined): LedgerEntry | undefined {
  const inOrder = [...sums].sort((a, b) => (a.at < b.at ? -1 : 1));
  return inOrder.filter(({ at }) => until === undefined || at <= until).at(-1) ?? inOrder[0];
}
