import { deriveLedger, type LedgerSource } from "../ledger/derive-ledger.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { DeriveLedger, Store } from "../store/store.ts";

/** What is wanted of a ledger beside itself. */
interface More extends Pick<LedgerSource, "waits"> {
  /** An entry that has just been computed and is not stored yet. */
  readonly fresh?: LedgerEntry;
}

/** The ledger as the store asks for it inside a transaction, with the settings of now. */
export async function deriveWith(store: Store, { fresh, waits }: More = {}): Promise<DeriveLedger> {
  const settings = await store.settings();
  const at = new Date().toISOString();
  return ({ caseId, parts }, known) =>
    deriveLedger({
      ...{ caseId, parts, settings, at },
      known: (id) => (id === fresh?.id ? fresh : known(id)),
      ...(waits === undefined ? {} : { waits }),
    });
}
