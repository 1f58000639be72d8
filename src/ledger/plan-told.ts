import { type PlanOption, type PlanOutput, planOutput } from "../core/diagnosis/plan/plan-output.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf, thePart } from "../record/parts.ts";

/** What an entry of the ledger says of the ways that a tooth can go. */
export type PlanTold = PlanOutput;
/** One of those ways. */
export type WayTold = PlanOption;

/** See {@link PlanTold}; undefined for an entry that refused, or that keeps its answer in an older form. */
export const planTold = (entry: Pick<LedgerEntry, "output"> | undefined): PlanTold | undefined =>
  planOutput.safeParse(entry?.output).data;

/** What the entry about the ways of a case is about. */
export const planSubject = (parts: readonly Part[]): string => `plan of ${thePart(parts, "case")?.id ?? ""}`;

/** The plan that was made last. */
export const lastPlan = (parts: readonly Part[]): PartOf<"plan"> | undefined =>
  partsOf(parts, "plan")
    .sort((a, b) => (a.body.madeOn < b.body.madeOn ? -1 : a.body.madeOn > b.body.madeOn ? 1 : 0))
    .at(-1);

/** A way that stands elsewhere than it did. */
export interface WayChange {
  readonly way: WayTold["way"];
  readonly was: WayTold["standing"];
  readonly now: WayTold["standing"];
}

/** The ways whose standing changed between two answers. */
export const waysSince = (then: PlanTold, now: PlanTold): readonly WayChange[] =>
  now.options.flatMap(({ way, standing }) => {
    const before = then.options.find((option) => option.way === way)?.standing ?? standing;
    return before === standing ? [] : [{ way, was: before, now: standing }];
  });
