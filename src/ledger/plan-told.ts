import { z } from "zod";
import { type PlanOption, type PlanOutput, planOutput } from "../core/diagnosis/plan/plan-output.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../record/parts.ts";
import { latestOf } from "./latest-of.ts";

/** What an entry of the ledger says of the ways that a tooth can go. */
export type PlanTold = PlanOutput;
/** One of those ways. */
export type WayTold = PlanOption;

/** See {@link PlanTold}; undefined for an entry that refused, or that keeps its answer in an older form. */
export const planTold = (entry: Pick<LedgerEntry, "output"> | undefined): PlanTold | undefined =>
  planOutput.safeParse(entry?.output).data;

/** What the entry about the ways on the day of a plan is about; takes the plan's id. */
export const planSubject = (plan: string): string => `plan of ${plan}`;

/** The plan that was made last. */
export const lastPlan = (parts: readonly Part[]): PartOf<"plan"> | undefined => latestOf(partsOf(parts, "plan"));

/** The facts on which two entries rest differently, by their names in the topic's input. */
export function factsSince(then: Pick<LedgerEntry, "input">, now: Pick<LedgerEntry, "input">): readonly string[] {
  const [before, after] = [factsIn(then), factsIn(now)];
  const names = [...new Set([...Object.keys(after), ...Object.keys(before)])];
  return names.filter((name) => canonicalJson(before[name] ?? null) !== canonicalJson(after[name] ?? null));
}

const factsIn = ({ input }: Pick<LedgerEntry, "input">): Readonly<Record<string, unknown>> =>
  z.record(z.string(), z.unknown()).safeParse(input).data ?? {};

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
