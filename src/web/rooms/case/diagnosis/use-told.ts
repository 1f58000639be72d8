import { type DiagnosisTold, diagnosisEntry, diagnosisTold } from "../../../../ledger/diagnosis-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { useCaseNow } from "../case-now.ts";

/** What the ledger says of a sheet of findings. */
export interface FindingsTold {
  readonly entry: LedgerEntry | undefined;
  /** Absent where nothing is computed, or the ledger refused. */
  readonly told: DiagnosisTold | undefined;
}

/** Whether the findings give a term on either axis, determined or possible. */
export const hasTerm = ({ pulpal, apical }: DiagnosisTold): boolean =>
  [pulpal, apical].some(({ status }) => status !== "not determined");

/** See {@link FindingsTold}. */
export function useTold(findings: string | undefined): FindingsTold {
  const { ledger } = useCaseNow();
  const entry = findings === undefined ? undefined : diagnosisEntry(ledger, findings);
  return { entry, told: diagnosisTold(entry) };
}
