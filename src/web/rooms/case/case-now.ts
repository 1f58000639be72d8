import { createContext, useContext } from "react";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";
import type { Addable } from "./spine/addable.ts";

/** The case that is shown: its parts and what the ledger says of them, for forms that read other moments. */
export interface CaseAsShown {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  /** Adds a moment and goes to it; absent where the case is only looked at. */
  readonly add?: ((kind: Addable) => void) | undefined;
  /** The moment that was added and not yet gone to. */
  readonly added?: { current: string | undefined };
}

/** See {@link CaseAsShown}. */
export const CaseNow = createContext<CaseAsShown>({ caseId: "", parts: [], ledger: [] });

/** See {@link CaseAsShown}. */
export const useCaseNow = (): CaseAsShown => useContext(CaseNow);
