import { type AnaestheticOutput, anaestheticOutput } from "../core/safety/anaesthetic/anaesthetic-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type SumIfTold, type SumTold, sumIfTold, sumTold } from "./sum-told.ts";
import type { WhatIfAnswer } from "./what-if.ts";

/** How much anaesthetic was given in a visit and what is left. */
export type AnaestheticTold = AnaestheticOutput;

/** What the anaesthetic of a visit is called in the ledger. */
export const anaestheticSubject = (visitId: string): string => `anaesthetic of ${visitId}`;

/** See {@link AnaestheticTold}; undefined where nothing was given or is to be given. */
export const anaestheticTold = (
  entries: readonly LedgerEntry[],
  visitId: string,
): SumTold<AnaestheticTold> | undefined => sumTold(anaestheticOutput, entries, anaestheticSubject(visitId));

/** The same of an answer to a question "what if". */
export const anaestheticIfTold = (answer: WhatIfAnswer | undefined): SumIfTold<AnaestheticTold> | undefined =>
  sumIfTold(anaestheticOutput, answer);
