import { type CaseId, caseId } from "../core/ids.ts";
import { Refusal } from "../core/refusal.ts";
import { apply, type Change, follows, noHash, type PartPatch, seal } from "./change.ts";
import type { Part } from "./parts.ts";
import { readPart } from "./read-part.ts";

/** Where a case stands after its last change. */
export interface Standing {
  readonly caseId: CaseId;
  /** The last change; 0 before the first. */
  readonly sequence: number;
  /** The hash of that change; 64 zeros before the first. */
  readonly headHash: string;
  /** The parts that stand, in the order in which they came. */
  readonly parts: readonly Part[];
  /** How often each part was ever touched, removed ones too: a part that comes back goes on counting. */
  readonly revisions: ReadonlyMap<string, number>;
}

/** What a change needs beside the place that the chain gives it. */
export interface Step {
  readonly at: string;
  readonly who: string;
  readonly words: string;
  readonly patches: readonly PartPatch[];
  readonly inverts?: number;
}

/** A case before its first change. */
export const beforeFirst = (id: string): Standing => ({
  caseId: caseId(id),
  sequence: 0,
  headHash: noHash,
  parts: [],
  revisions: new Map(),
});

/** The next link of a case's chain, and where the case stands after it. */
export function advance(standing: Standing, step: Step): { readonly change: Change; readonly standing: Standing } {
  const { caseId, headHash } = standing;
  const change = seal({ caseId, sequence: standing.sequence + 1, previousHash: headHash, ...step });
  return { change, standing: standAfter(standing, change, step.patches) };
}

/**
 * Where a case stands after the changes of its chain, first to last.
 * @throws Refusal `store.brokenChain` naming the first link that does not hold, `record.newerVersion`, `input.invalid`
 */
export function replay(id: string, changes: readonly Change[]): Standing {
  return changes.reduce<Standing>((standing, change) => {
    if (change.sequence !== standing.sequence + 1 || change.caseId !== id || !follows(change, standing.headHash))
      throw new Refusal(
        "store.brokenChain",
        `Cannot replay case ${id}: change ${change.sequence} does not follow the one before it; restore a backup`,
        { caseId: id, sequence: change.sequence },
      );
    return standAfter(standing, change, change.patches.map(inTodaysForm));
  }, beforeFirst(id));
}

/**
 * A patch with both its bodies in today's form, whatever version wrote it.
 * @throws Refusal `record.newerVersion`, `input.invalid`
 */
export function inTodaysForm(patch: PartPatch): PartPatch {
  const { id, kind, version } = patch;
  const today = (body: unknown) => (body === null ? null : readPart({ id, kind, version, revision: 1, body }).body);
  return { ...patch, before: today(patch.before), after: today(patch.after) };
}

function standAfter(standing: Standing, change: Change, patches: readonly PartPatch[]): Standing {
  const revisions = new Map(standing.revisions);
  for (const { id } of patches) revisions.set(id, (revisions.get(id) ?? 0) + 1);
  const parts = apply(standing.parts, patches, standing.revisions);
  return { caseId: standing.caseId, sequence: change.sequence, headHash: change.hash, parts, revisions };
}
