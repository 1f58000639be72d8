import { createContext, useContext } from "react";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import type { Part } from "../../../record/parts.ts";

/** The case that is shown: its parts and what the ledger says of them, for forms that read other moments. */
export interface CaseAsShown {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
}

/** See {@link CaseAsShown}. */
export const CaseNow = createContext<CaseAsShown>({ caseId: "", parts: [], ledger: [] });

/** See {@link CaseAsShown}. */
export const useCaseNow = (): CaseAsShown => useContext(CaseNow);
