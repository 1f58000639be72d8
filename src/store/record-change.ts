import { Refusal } from "../core/refusal.ts";
import { canonicalJson } from "../record/canonical-json.ts";
import { type Change, type Conflict, type Gesture, inverseOf, type PartPatch, patchesOf } from "../record/change.ts";
import { advance, beforeFirst, inTodaysForm, type Standing, type Step } from "../record/standing.ts";
import { undoStack } from "../record/undo-stack.ts";
import { findStanding, readChanges, readStanding } from "./case-rows.ts";
import type { Db } from "./dialect.ts";
import type { CaseState, Recording } from "./store.ts";

/** What a write makes of a case: its new links, none where only the ledger is worked out anew, and where it stands then. */
export interface Planned {
  readonly changes: readonly Change[];
  readonly after: Standing;
}

/** Foresees a write on what stands, without writing: before the transaction as well as inside it. */
export type Plan = (db: Db) => Promise<Planned>;

/** A case as the store gives it away: without what only the store counts. */
export const stateOf = ({ caseId, sequence, headHash, parts }: Standing): CaseState => ({
  caseId,
  sequence,
  headHash,
  parts,
});

/**
 * Plans the first change of a new case.
 * @throws Refusal `record.conflict` when the id is taken, `input.invalid`, `input.impossible`, `file.missing`
 */
export const planNewCase =
  (caseId: string, gesture: Gesture, recording: Recording): Plan =>
  async (db) => {
    await checkIdIsFree(db, caseId);
    return planned(beforeFirst(caseId), { words: gesture.words, patches: patchesOf(gesture, []) }, recording);
  };

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
 * Plans a gesture as the next change of a case; a gesture that changes nothing leaves no link.
 * @throws Refusal `record.notFound`, `record.conflict`, `input.invalid`, `input.impossible`, `file.missing`
 */
export const planGesture =
  (caseId: string, gesture: Gesture, recording: Recording): Plan =>
  async (db) => {
    const standing = await readStanding(db, caseId);
    const patches = patchesOf(gesture, standing.parts);
    if (patches.length === 0) return { changes: [], after: standing };
    return planned(standing, { words: gesture.words, patches }, recording);
  };

/**
 * Plans the change that takes back the last one (undo), or the last undo (redo).
 * @throws Refusal `record.nothingToUndo`; `record.conflict` when the top of the history is not the change that the person
 * saw, or when what it touched no longer stands as it left it (facts.conflicts with both versions)
 */
export const planInverse =
  (caseId: string, asked: InverseAsked, recording: Recording): Plan =>
  async (db) =>
    planned(...inverted(await readStanding(db, caseId), await readChanges(db, caseId), asked), recording);

interface InverseAsked {
  readonly what: "undo" | "redo";
  readonly seen?: number | undefined;
}

function inverted(standing: Standing, changes: readonly Change[], asked: InverseAsked): [Standing, NewLink] {
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
  return [standing, { words, patches, inverts: change.sequence }];
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

type NewLink = Pick<Step, "words" | "patches" | "inverts">;

function planned(standing: Standing, link: NewLink, { at, who }: Recording): Planned {
  const next = advance(standing, { at, who, ...link });
  return { changes: [next.change], after: next.standing };
}
