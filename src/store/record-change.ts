import { Refusal } from "../core/refusal.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import { type Change, type Conflict, type Gesture, inverseOf, type PartPatch, patchesOf } from "../record/change.ts";
import { advance, beforeFirst, inTodaysForm, type Standing, type Step } from "../record/standing.ts";
import { undoStack } from "../record/undo-stack.ts";
import { findStanding, readChanges, readStanding, writeChanges } from "./case-rows.ts";
import type { Db } from "./dialect.ts";
import { type KnownEntries, writeLedger } from "./ledger-rows.ts";
import type { CaseState, Recording } from "./store.ts";

/** A database inside one transaction, with what the process already knows of the ledger. */
export interface Writing {
  readonly db: Db;
  readonly known: KnownEntries;
}

/** A case as the store gives it away: without what only the store counts. */
export const stateOf = ({ caseId, sequence, headHash, parts }: Standing): CaseState => ({
  caseId,
  sequence,
  headHash,
  parts,
});

/**
 * Writes the first change of a new case.
 * @throws Refusal `record.conflict` when the id is taken, `input.invalid`, `input.impossible`, `file.missing`
 */
export async function writeNewCase(writing: Writing, caseId: string, gesture: Gesture, recording: Recording) {
  await checkIdIsFree(writing.db, caseId);
  return commit(writing, beforeFirst(caseId), { words: gesture.words, patches: patchesOf(gesture, []) }, recording);
}

/**
 * Refuses an id that is no id, or one that a case has.
 * @throws Refusal `input.invalid`, `record.conflict`
 */
export async function checkIdIsFree(db: Db, caseId: string): Promise<void> {
  if (!/^[a-z0-9-]{3,64}$/.test(caseId))
    throw new Refusal("input.invalid", "Cannot make a case: its id must be 3 to 64 lower-case letters, digits, dashes");
  if ((await findStanding(db, caseId)) !== undefined)
    throw new Refusal("record.conflict", `Cannot make case ${caseId}: there is a case of that id`, { caseId });
}

/**
 * Writes a gesture as the next change of a case; a gesture that changes nothing leaves no link.
 * @throws Refusal `record.notFound`, `record.conflict`, `input.invalid`, `input.impossible`, `file.missing`
 */
export async function writeGesture(writing: Writing, caseId: string, gesture: Gesture, recording: Recording) {
  const standing = await readStanding(writing.db, caseId);
  const patches = patchesOf(gesture, standing.parts);
  if (patches.length === 0) return stateOf(standing);
  return commit(writing, standing, { words: gesture.words, patches }, recording);
}

/**
 * Writes the change that takes back the last one (undo), or the last undo (redo).
 * @throws Refusal `record.nothingToUndo`; `record.conflict` when the top of the history is not the change that the person
 * saw, or when what it touched no longer stands as it left it (facts.conflicts with both versions)
 */
export async function writeInverse(
  writing: Writing,
  caseId: string,
  asked: { readonly what: "undo" | "redo"; readonly seen?: number | undefined },
  recording: Recording,
): Promise<CaseState> {
  const standing = await readStanding(writing.db, caseId);
  const changes = await readChanges(writing.db, caseId);
  const top = undoStack(changes)[asked.what];
  const change = changes.find(({ sequence }) => sequence === top);
  if (change === undefined)
    throw new Refusal("record.nothingToUndo", `Cannot ${asked.what}: there is nothing left to ${asked.what}`);
  if (asked.seen !== undefined && asked.seen !== change.sequence)
    throw new Refusal(
      "record.conflict",
      `Cannot ${asked.what} change ${asked.seen}: the case has changed in the meantime; look at it and ask again`,
      { seen: asked.seen, top: change.sequence, conflicts: [] },
    );
  const patches = inverseOf(change.patches.map(inTodaysForm));
  checkStillStands(patches, standing, asked.what);
  const words = `${asked.what === "undo" ? "Undo" : "Redo"}: ${change.words.replace(/^((Undo|Redo): )+/, "")}`;
  return commit(writing, standing, { words, patches, inverts: change.sequence }, recording);
}

function checkStillStands(patches: readonly PartPatch[], standing: Standing, what: string): void {
  const conflicts = patches.flatMap(({ id, kind, before, after }): Conflict[] => {
    const theirs = standing.parts.find((part) => part.id === id) ?? null;
    return canonicalJson(theirs?.body ?? null) === canonicalJson(before) ? [] : [{ id, kind, yours: after, theirs }];
  });
  if (conflicts.length > 0)
    throw new Refusal(
      "record.conflict",
      `Cannot ${what}: it was changed in the meantime; both versions are kept, choose one`,
      { conflicts },
    );
}

async function commit(
  writing: Writing,
  standing: Standing,
  step: Pick<Step, "words" | "patches" | "inverts">,
  { at, who, deriveLedger }: Recording,
): Promise<CaseState> {
  const next = advance(standing, { at, who, ...step });
  await writeChain(writing, [next.change], next.standing, deriveLedger);
  return stateOf(next.standing);
}

/** Writes links, state, facts and ledger of a case: all that one transaction holds together. */
export async function writeChain(
  { db, known }: Writing,
  changes: readonly Change[],
  after: Standing,
  deriveLedger: Recording["deriveLedger"],
): Promise<void> {
  await writeChanges(db, changes, after);
  await writeLedger(db, stateOf(after), deriveLedger, await known.of(db, after.caseId));
}
