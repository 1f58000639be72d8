import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { Part } from "../../../../record/parts.ts";
import { capital } from "../../../words/capital.ts";
import { entrySubject } from "./entry-subject.ts";

/** Entries that were measured on one film, or on the same films together. */
export interface LedgerGroup {
  /** What was measured on, as `Angled film of 12 Mar 2026`; empty for what rests on no film. */
  readonly name: string;
  readonly entries: readonly LedgerEntry[];
}

/** Entries film by film in the order of the days, what rests on no film first; in each what is about no canal first, then canal by canal. */
export function ledgerGroups(entries: readonly LedgerEntry[], parts: readonly Part[]): readonly LedgerGroup[] {
  const subjects = new Map(entries.map((entry) => [entry, entrySubject(entry, parts)]));
  const films = new Map([...subjects.values()].map(({ film, day }) => [film, day]));
  const canals = ["", ...new Set([...subjects.values()].map(({ canal }) => canal))];
  const place = (entry: LedgerEntry) => canals.indexOf(subjects.get(entry)?.canal ?? "");
  return [...films]
    .sort(([a, dayA], [b, dayB]) => (a === "" ? -1 : b === "" ? 1 : dayA.localeCompare(dayB)))
    .map(([film]) => ({
      name: capital(film),
      entries: entries.filter((entry) => subjects.get(entry)?.film === film).sort((a, b) => place(a) - place(b)),
    }));
}
