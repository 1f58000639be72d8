import { caseId as known } from "../../../src/core/ids.ts";
import { Refusal } from "../../../src/core/refusal.ts";
import { type CaseFile, caseFileSchema } from "../../../src/record/case-file.ts";
import { patchesOf } from "../../../src/record/change.ts";
import type { BodyOf, PartKind } from "../../../src/record/parts.ts";
import { advance, beforeFirst, type Standing } from "../../../src/record/standing.ts";

/** One part as somebody leaves it: written new, or written again under the same id. */
export type Writing = {
  readonly [Kind in PartKind]: { readonly kind: Kind; readonly id: string; readonly body: BodyOf<Kind> };
}[PartKind];

/** One finished gesture of an invented case: when, what was done in words, and the parts that it wrote. */
export interface Moment {
  /** `2024-02-20` */
  readonly day: string;
  /** `09:12`, UTC. */
  readonly time: string;
  readonly words: string;
  /** "Resident" unless it says otherwise. */
  readonly who?: string;
  readonly writes: readonly Writing[];
}

/** A part to write, its body checked against its kind while typing. */
export const write = <Kind extends PartKind>(kind: Kind, id: string, body: BodyOf<Kind>): Writing =>
  ({ kind, id, body }) as Writing;

/**
 * The case file that moments make, in the order of their days and times.
 * Each gesture is tried on the record as it is made, so that a file with a fault is never written.
 * @throws Refusal of the record, with the moment's words before it
 */
export function caseOfMoments(caseId: string, moments: readonly Moment[]): CaseFile {
  const inOrder = [...moments].sort((a, b) => (stampOf(a) < stampOf(b) ? -1 : 1));
  let standing = beforeFirst(known(caseId));
  const gestures = inOrder.map((moment): CaseFile["gestures"][number] => {
    const operations = moment.writes.map(({ kind, id, body }) => {
      const baseRevision = standing.parts.find((part) => part.id === id)?.revision ?? 0;
      return { op: "put" as const, id, kind, baseRevision, body };
    });
    const gesture = { at: stampOf(moment), who: moment.who ?? "Resident", words: moment.words, operations };
    standing = afterGesture(standing, gesture);
    return gesture;
  });
  return caseFileSchema.parse({ format: "canalog case", version: 1, caseId, gestures });
}

const stampOf = ({ day, time }: Moment): string => `${day}T${time}:00Z`;

function afterGesture(standing: Standing, gesture: CaseFile["gestures"][number]): Standing {
  const { at, who, words } = gesture;
  try {
    const patches = patchesOf(gesture, standing.parts);
    if (patches.length === 0) throw new Refusal("input.invalid", "it changes nothing");
    return advance(standing, { at, who, words, patches }).standing;
  } catch (thrown) {
    if (thrown instanceof Refusal)
      throw new Refusal(
        thrown.code,
        `${standing.caseId}, "${words}": ${thrown.message} ${thrown.faults.map((fault) => `${fault.path} ${fault.says}`).join("; ")}`,
      );
    throw thrown;
  }
}
