import { type IrrigationOutput, irrigationOutput } from "../core/safety/irrigation/irrigation-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type SumIfTold, type SumTold, subjectsUnder, sumIfTold, sumTold } from "./sum-told.ts";
import type { WhatIfAnswer } from "./what-if.ts";

/** What irrigants of a visit met, and their totals. */
export type IrrigationTold = IrrigationOutput;

/** What the irrigation of a visit is called in the ledger; of one canal where rows name canals. */
export const irrigationSubject = (visitId: string, canal?: string): string =>
  `irrigation of ${visitId}${canal === undefined ? "" : ` ${canal}`}`;

/** See {@link IrrigationTold}; of a visit whose rows name canals takes the name of one. */
export const irrigationTold = (
  entries: readonly LedgerEntry[],
  visitId: string,
  canal?: string,
): SumTold<IrrigationTold> | undefined => sumTold(irrigationOutput, entries, irrigationSubject(visitId, canal));

/** What a visit's irrigation says canal by canal; one without a canal where no row names one. */
export function irrigationsTold(
  entries: readonly LedgerEntry[],
  visitId: string,
): readonly (SumTold<IrrigationTold> & { readonly canal?: string })[] {
  const whole = irrigationSubject(visitId);
  return subjectsUnder(entries, whole).flatMap((subject) => {
    const told = sumTold(irrigationOutput, entries, subject);
    if (told === undefined) return [];
    return [subject === whole ? told : { ...told, canal: subject.slice(whole.length + 1) }];
  });
}

/** The same of an answer to a question "what if". */
export const irrigationIfTold = (answer: WhatIfAnswer | undefined): SumIfTold<IrrigationTold> | undefined =>
  sumIfTold(irrigationOutput, answer);
