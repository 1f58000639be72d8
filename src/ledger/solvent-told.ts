import { type SolventOutput, solventOutput } from "../core/safety/solvent/solvent-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type SumIfTold, type SumTold, subjectsUnder, sumIfTold, sumTold } from "./sum-told.ts";
import type { WhatIfAnswer } from "./what-if.ts";

/** What a solvent made of the air during a visit, and what passed the foramen. */
export type SolventTold = SolventOutput;

/** What the solvent of a visit is called in the ledger; with its name where the visit has several. */
export const solventSubject = (visitId: string, name?: string): string =>
  `solvent of ${visitId}${name === undefined ? "" : ` ${name}`}`;
/** The same as the patient breathes it, without the day's other cases. */
export const solventForPatientSubject = (visitId: string, name?: string): string =>
  `solvent for the patient of ${visitId}${name === undefined ? "" : ` ${name}`}`;

/** What stands in the ledger for what passed the foramen, where it could not be held against anything. */
export const extrusionSubject = (visitId: string): string => `extrusion of ${visitId}`;

/** See {@link SolventTold}; of a visit with several solvents takes the name of one. */
export const solventTold = (
  entries: readonly LedgerEntry[],
  visitId: string,
  name?: string,
): SumTold<SolventTold> | undefined => sumTold(solventOutput, entries, solventSubject(visitId, name));

/** The same as the patient breathes it; undefined where no other case of that day is recorded: then it is the same. */
export const solventForPatientTold = (
  entries: readonly LedgerEntry[],
  visitId: string,
  name?: string,
): SumTold<SolventTold> | undefined => sumTold(solventOutput, entries, solventForPatientSubject(visitId, name));

/** The subjects of all solvents of a visit, as whom the staff breathes them. */
export const solventSubjects = (entries: readonly LedgerEntry[], visitId: string): string[] =>
  subjectsUnder(entries, solventSubject(visitId));

/** The same of an answer to a question "what if". */
export const solventIfTold = (answer: WhatIfAnswer | undefined): SumIfTold<SolventTold> | undefined =>
  sumIfTold(solventOutput, answer);

/** What passed the foramen against published doses, or why it is held against none; undefined where nothing is told to have passed. */
export function extrusionTold(
  entries: readonly LedgerEntry[],
  visitId: string,
): SumTold<NonNullable<SolventTold["extrusion"]>> | undefined {
  const gap = sumTold(solventOutput, entries, extrusionSubject(visitId));
  if (gap !== undefined && gap.why !== undefined) return gap;
  const told = solventTold(entries, visitId);
  const extrusion = told?.output?.extrusion;
  return told === undefined || extrusion === undefined ? undefined : { entryId: told.entryId, output: extrusion };
}
