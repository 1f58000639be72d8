import { type FractureOutput, fractureOutput } from "../core/instrument/fracture-input.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of how an instrument broke. */
export type FractureTold = FractureOutput;
/** One of the explanations. */
export type ExplanationTold = FractureOutput["explanations"][number];

/** What the explanation of a break is called in the ledger. */
export const fractureSubject = (mishapId: string): string => `fracture of ${mishapId}`;

/** See {@link FractureTold}; undefined for an entry that refused. */
export const fractureTold = (entry: Pick<LedgerEntry, "output"> | undefined): FractureTold | undefined =>
  fractureOutput.safeParse(entry?.output).data;
