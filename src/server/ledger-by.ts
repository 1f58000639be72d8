import { type DoSums, deriveLedger, deriveLedgerBy, type LedgerSource } from "../ledger/derive-ledger.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { CaseState, DeriveLedger, LedgerGround } from "../store/store.ts";

/** What is wanted of a ledger beside itself. */
interface More extends Pick<LedgerSource, "waits"> {
  /** An entry that has just been computed and is not stored yet. */
  readonly fresh?: LedgerEntry;
}

/** Gives the ledger as the store asks for it, now. */
export type LedgerNow = (more?: More) => DeriveLedger;

/** The ledger as the store asks for it: sums are done ahead of the transaction, inside it what is still not known. */
export const ledgerBy =
  (doSums: DoSums): LedgerNow =>
  ({ fresh, waits } = {}) => {
    const at = new Date().toISOString();
    const source = ({ caseId, parts }: CaseState, { settings, known }: LedgerGround): LedgerSource => ({
      ...{ caseId, parts, settings, at },
      known: (id) => (id === fresh?.id ? fresh : known(id)),
    });
    const inside = (state: CaseState, ground: LedgerGround) =>
      deriveLedger({ ...source(state, ground), ...(waits === undefined ? {} : { waits }) });
    return Object.assign(inside, {
      ahead: (state: CaseState, ground: LedgerGround) => deriveLedgerBy(doSums, source(state, ground)),
    });
  };
