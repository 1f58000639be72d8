import type { CaseFile } from "../record/case-file.ts";
import { type Change, patchesOf } from "../record/change.ts";
import { advance, beforeFirst, type Standing } from "../record/standing.ts";
import { checkIdIsFree, stateOf, type Writing, writeChain } from "./record-change.ts";
import type { CaseState, DeriveLedger } from "./store.ts";

/** The links that the gestures of a case file make, and where the case stands after them. */
export interface Chain {
  readonly changes: readonly Change[];
  readonly standing: Standing;
}

/**
 * The chain of a case file: each gesture with its own moment and writer, those that change nothing left out.
 * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`
 */
export function chainOf({ caseId, gestures }: CaseFile): Chain {
  const changes: Change[] = [];
  let standing = beforeFirst(caseId);
  for (const { at, who, words, operations } of gestures) {
    const patches = patchesOf({ words, operations }, standing.parts);
    if (patches.length === 0) continue;
    const next = advance(standing, { at, who, words, patches });
    changes.push(next.change);
    standing = next.standing;
  }
  return { changes, standing };
}

/**
 * Records the chain of a case file as a new case: all its changes in one transaction, the ledger worked out once at the
 * end. Its films must be kept already.
 * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`, `file.missing`
 */
export async function writeCaseFile(writing: Writing, chain: Chain, deriveLedger: DeriveLedger): Promise<CaseState> {
  await checkIdIsFree(writing.db, chain.standing.caseId);
  await writeChain(writing, chain.changes, chain.standing, deriveLedger);
  return stateOf(chain.standing);
}
