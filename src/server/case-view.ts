import { Refusal } from "../core/refusal.ts";
import { type Change, stateHash } from "../record/change.ts";
import { factsOf } from "../record/facts.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { undoStack } from "../record/undo-stack.ts";
import type { CaseState, Store } from "../store/store.ts";
import type { CaseView, ChangeLine } from "./api.ts";

/** A case as the windows see it: parts, the ledger of now or the one given, and what can be undone. */
export async function caseView(store: Store, state: CaseState, stood?: readonly LedgerEntry[]): Promise<CaseView> {
  const [ledger, changes] = await Promise.all([stood ?? store.ledger(state.caseId), store.changes(state.caseId)]);
  const facts = factsOf(state.caseId, state.parts);
  if (facts === undefined)
    throw new Refusal("record.notFound", "Cannot show this case: nothing says which tooth it is");
  return {
    ...{ caseId: state.caseId, sequence: state.sequence, stateHash: stateHash(state.parts), facts },
    ...{ parts: state.parts, ledger },
    ...topsOf(changes),
  };
}

/** A change without its patches. */
export function changeLine(change: AnyChange): ChangeLine {
  const { sequence, at, who, words, inverts, patches } = change;
  const touched = patches.map((patch) => patch.id);
  return inverts === undefined ? { sequence, at, who, words, touched } : { sequence, at, who, words, touched, inverts };
}

/** A change of a case or of the cabinet. */
type AnyChange = Pick<Change, "sequence" | "at" | "who" | "words" | "inverts"> & {
  readonly patches: readonly { readonly id: string }[];
};

function topsOf(changes: readonly Change[]): Pick<CaseView, "undo" | "redo"> {
  const { undo, redo } = undoStack(changes);
  const lineOf = (sequence: number | undefined) => changes.find((change) => change.sequence === sequence);
  const [undone, redone] = [lineOf(undo), lineOf(redo)];
  return {
    ...(undone === undefined ? {} : { undo: changeLine(undone) }),
    ...(redone === undefined ? {} : { redo: changeLine(redone) }),
  };
}
