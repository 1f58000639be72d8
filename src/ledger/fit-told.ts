import { type FitOutput, fitOutput } from "../core/instrument/fit-input.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of the instruments that a piece could be from. */
export type FitTold = FitOutput;

/** What the fit of a piece is called in the ledger. */
export const fitSubject = (mishapId: string): string => `fit of ${mishapId}`;

/** See {@link FitTold}; undefined for an entry that refused. */
export const fitTold = (entry: Pick<LedgerEntry, "output"> | undefined): FitTold | undefined =>
  fitOutput.safeParse(entry?.output).data;
