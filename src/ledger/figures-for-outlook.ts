import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";
import { wayChosen } from "../record/way-chosen.ts";
import { lastPlan, planSubject, planTold, type WayTold } from "./plan-told.ts";

/** A published series with its counts, and where an entry holds it. */
export interface FigureForOutlook {
  readonly entryId: LedgerEntry["id"];
  readonly subject: string;
  readonly way: WayTold["way"];
  /** Its place in the entry's output. */
  readonly at: string;
  readonly outcome: WayTold["outcomes"][number] & { readonly events: number; readonly n: number };
}

/**
 * The figures that an outlook can be told with: series of the way chosen last that print how many of how many, the nearest
 * group first. One without its counts is not offered.
 * Takes the entries that hold (and, where there are some, those that decisions were made on).
 */
export function figuresForOutlook(parts: readonly Part[], ledger: readonly LedgerEntry[]): readonly FigureForOutlook[] {
  const plan = lastPlan(parts);
  if (plan === undefined) return [];
  const named = ledger.find(({ id }) => id === plan.body.planEntry);
  const entry = named ?? ledger.find(({ subject }) => subject === planSubject(plan.id));
  const chosen = wayChosen(plan.body);
  return chosen === undefined ? [] : figuresIn(entry, chosen);
}

/** The counted series of one way in an entry. */
function figuresIn(entry: LedgerEntry | undefined, chosen: WayTold["way"]): readonly FigureForOutlook[] {
  const options = planTold(entry)?.options ?? [];
  const index = options.findIndex(({ way }) => way === chosen);
  if (entry === undefined) return [];
  return (options[index]?.outcomes ?? []).flatMap((outcome, place) => {
    const { events, n } = outcome;
    if (events === undefined || n === undefined) return [];
    const at = `options[${index}].outcomes[${place}]`;
    return [{ entryId: entry.id, subject: entry.subject, way: chosen, at, outcome: { ...outcome, events, n } }];
  });
}

/** The series that a hand-back names, from the entry that it names; undefined where that is no longer kept. */
export const figureNamed = (
  { entry: id, way, outcome }: { readonly entry: string; readonly way: WayTold["way"]; readonly outcome: string },
  entries: readonly LedgerEntry[],
): FigureForOutlook | undefined =>
  figuresIn(
    entries.find((entry) => entry.id === id),
    way,
  ).find((figure) => figure.outcome.id === outcome);
