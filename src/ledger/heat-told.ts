import {
  type UltrasonicHeatOutput,
  ultrasonicHeatOutput,
} from "../core/safety/ultrasonic-heat/ultrasonic-heat-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type SumIfTold, type SumTold, sumIfTold, sumTold } from "./sum-told.ts";
import type { WhatIfAnswer } from "./what-if.ts";

/** How long ultrasound worked in a visit, beside published rises of temperature. */
export type HeatTold = UltrasonicHeatOutput;

/** What the ultrasound of a visit is called in the ledger. */
export const heatSubject = (visitId: string): string => `ultrasonicHeat of ${visitId}`;

/** See {@link HeatTold}; undefined where no ultrasound was recorded. */
export const heatTold = (entries: readonly LedgerEntry[], visitId: string): SumTold<HeatTold> | undefined =>
  sumTold(ultrasonicHeatOutput, entries, heatSubject(visitId));

/** The same of an answer to a question "what if". */
export const heatIfTold = (answer: WhatIfAnswer | undefined): SumIfTold<HeatTold> | undefined =>
  sumIfTold(ultrasonicHeatOutput, answer);
