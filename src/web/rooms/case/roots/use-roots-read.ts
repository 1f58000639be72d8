import { useMemo } from "react";
import type { Fault } from "../../../../core/refusal.ts";
import { type CanalsRead, canalsEntry, canalsRead, isAbout, unusualRootCount } from "../../../../ledger/canals-read.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { useCaseNow } from "../case-now.ts";
import { faultsAtPlaces } from "../ledger/faults-at-places.ts";

/** What the ledger says of the roots that are on the board. */
export interface RootsAsRead {
  readonly entry: LedgerEntry | undefined;
  /** Whether the entry is about these roots, and not about those before the last change. */
  readonly isAbout: boolean;
  /** Sequences, types and code of these roots; undefined while they are worked out, and where they are refused. */
  readonly now: CanalsRead | undefined;
  readonly unusual: string | undefined;
  /** What was refused in these roots, each at its place in the part. */
  readonly faults: readonly Fault[];
}

/** See {@link RootsAsRead}. */
export function useRootsRead(partId: string, roots: unknown): RootsAsRead {
  const { ledger } = useCaseNow();
  return useMemo(() => {
    const entry = canalsEntry(ledger);
    const holds = isAbout(entry, roots);
    const now = holds ? canalsRead(entry) : undefined;
    const faults = holds ? faultsAtPlaces(ledger, partId) : [];
    return { entry, isAbout: holds, now, unusual: unusualRootCount(now), faults };
  }, [ledger, partId, roots]);
}
