import { type FractureOutput, fractureOutput } from "../core/instrument/fracture-input.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";

/** What an entry of the ledger says of how an instrument broke. */
export type FractureTold = FractureOutput;
/** One of the explanations. */
export type ExplanationTold = FractureOutput["explanations"][number];

/** What the explanation of a break is called in the ledger. */
export const fractureSubject = (mishapId: string): string => `fracture of ${mishapId}`;

type Entry = Pick<LedgerEntry, "output"> & Partial<Pick<LedgerEntry, "inputPaths">>;

/**
 * See {@link FractureTold}; undefined for an entry that refused. Where the canal's course begins at the reference point, the
 * places in the canal are left out: the topic counts them from the beginning of the course, and that is not the orifice.
 */
export function fractureTold(entry: Entry | undefined): FractureTold | undefined {
  const told = fractureOutput.safeParse(entry?.output).data;
  if (told === undefined || !entry?.inputPaths?.some(({ input }) => input === "courseStarts")) return told;
  const { breakFromOrificeMm: _otherStart, explanations, ...others } = told;
  return { ...others, explanations: explanations.map(({ fromOrificeMm: _sameStart, ...one }) => one) };
}
