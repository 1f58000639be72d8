import { deriveLedger } from "../ledger/derive-ledger.ts";
import type { DeriveLedger, Store } from "../store/store.ts";

/** The ledger as the store asks for it inside a transaction, with the settings of now. */
export async function deriveWith(store: Store): Promise<DeriveLedger> {
  const settings = await store.settings();
  const at = new Date().toISOString();
  return ({ caseId, parts }, known) => deriveLedger({ caseId, parts, settings, at, known });
}
