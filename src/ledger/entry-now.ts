import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, thePart } from "../record/parts.ts";
import { lastPlan } from "./plan-told.ts";

/** What is said of a case as it stands now: by its own entry, else by that of the last plan, which says the same. */
export function entryNow(
  topic: "plan" | "difficulty",
  ledger: readonly LedgerEntry[],
  parts: readonly Part[],
): LedgerEntry | undefined {
  const of = (part: Part | undefined) => ledger.find(({ subject }) => subject === `${topic} of ${part?.id ?? ""}`);
  return of(thePart(parts, "case")) ?? of(lastPlan(parts));
}
