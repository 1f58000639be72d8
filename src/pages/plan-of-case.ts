import { type PlanOption, type PlanOutput, planOutput } from "../core/diagnosis/plan/plan-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf, thePart } from "../record/parts.ts";

/** What the ledger says of the ways that a tooth can go. */
export type WaysOfCase = PlanOutput;
/** One of those ways. */
export type WayOfCase = PlanOption;

/** The ways that an entry of the ledger tells of; undefined where it was refused, or keeps them in an older form. */
export function waysOfEntry(entry: Pick<LedgerEntry, "output"> | undefined): WaysOfCase | undefined {
  const read = planOutput.safeParse(entry?.output);
  return read.success ? read.data : undefined;
}

/** What the ledger's entry about a case's ways is about. */
export function planSubject(parts: readonly Part[]): string {
  return `plan of ${thePart(parts, "case")?.id ?? ""}`;
}

/** The plan that was made last. */
export const lastPlan = (parts: readonly Part[]): PartOf<"plan"> | undefined =>
  partsOf(parts, "plan")
    .sort((a, b) => (a.body.madeOn < b.body.madeOn ? -1 : a.body.madeOn > b.body.madeOn ? 1 : 0))
    .at(-1);
