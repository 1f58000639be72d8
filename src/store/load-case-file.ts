import type { CaseFile } from "../record/case-file.ts";
import { type Change, patchesOf } from "../record/change.ts";
import { advance, beforeFirst } from "../record/standing.ts";
import { checkIdIsFree, type Plan, type Planned } from "./record-change.ts";

/**
 * The chain of a case file and where the case stands after it: each gesture with its own moment and writer, those that
 * change nothing left out.
 * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`
 */
export function chainOf({ caseId, gestures }: CaseFile): Planned {
  const changes: Change[] = [];
  let standing = beforeFirst(caseId);
  for (const { at, who, words, operations } of gestures) {
    const patches = patchesOf({ words, operations }, standing.parts);
    if (patches.length === 0) continue;
    const next = advance(standing, { at, who, words, patches });
    changes.push(next.change);
    standing = next.standing;
  }
  return { changes, after: standing };
}

/**
 * Plans the chain of a case file as a new case, all its changes at once. Its films must be kept already.
 * @throws Refusal `input.invalid`, `record.conflict`
 */
export const planCaseFile =
  (chain: Planned): Plan =>
  async (db) => {
    await checkIdIsFree(db, chain.after.caseId);
    return chain;
  };
