import { faultsOf } from "../../core/faults-of.ts";
import { faultAt, Refusal } from "../../core/refusal.ts";
import { canonicalJson } from "../canonical-json.ts";
import { apply, type Conflict, type Link } from "../change.ts";
import { type CabinetGesture, type CabinetOperation, cabinetGestureSchema } from "./cabinet-gesture.ts";
import type { CabinetItem, CabinetKind } from "./cabinet-item.ts";
import { linkFaults } from "./cabinet-links.ts";

/** The version of the forms of items that is written now. */
export const cabinetVersion = 1;

/** One item before and after a change; null where it did not stand. */
export interface CabinetPatch {
  readonly id: string;
  readonly kind: CabinetKind;
  readonly version: number;
  readonly before: CabinetItem["body"] | null;
  readonly after: CabinetItem["body"] | null;
}

/** One link of the cabinet's chain: who did what when, and the hash that ties it to the link before. */
export interface CabinetChange extends Link {
  readonly at: string;
  readonly who: string;
  readonly words: string;
  readonly patches: readonly CabinetPatch[];
  /** The change that this one takes back; an undo names a change, a redo names an undo. */
  readonly inverts?: number;
}

/**
 * The patches that a gesture makes on the items of the cabinet; none where it changes nothing.
 * @throws Refusal `input.invalid` for a gesture that does not fit, `record.conflict` (facts.conflicts) when an item has
 * changed since the person saw it, `input.impossible` with a path each for an item that is touched twice, that is of
 * another kind, or that names an instrument which is not there
 */
export function cabinetPatchesOf(raw: CabinetGesture, items: readonly CabinetItem[]): CabinetPatch[] {
  const gesture = checked(raw);
  checkTouchedOnce(gesture);
  const conflicts = gesture.operations.flatMap((operation) => conflictOf(operation, items));
  if (conflicts.length > 0)
    throw new Refusal(
      "record.conflict",
      `Cannot record "${gesture.words}": it was changed elsewhere in the meantime; both versions are kept, choose one`,
      { conflicts },
    );
  const patches = gesture.operations.map((operation, index) => patchOf(operation, index, items));
  const faults = linkFaults(gesture, apply(items, patches));
  if (faults.length > 0)
    throw new Refusal("input.impossible", `Cannot record "${gesture.words}": ${faults[0]?.says}`, {}, faults);
  return patches.filter(({ before, after }) => canonicalJson(before) !== canonicalJson(after));
}

/** The patches that take patches back, last first. */
export const cabinetInverse = (patches: readonly CabinetPatch[]): CabinetPatch[] =>
  patches.map((patch) => ({ ...patch, before: patch.after, after: patch.before })).reverse();

function checked(raw: CabinetGesture): CabinetGesture {
  const parsed = cabinetGestureSchema.safeParse(raw);
  if (parsed.success) return parsed.data;
  throw new Refusal("input.invalid", "Cannot record in the cabinet: it has faults", {}, faultsOf(parsed.error, raw));
}

/** One gesture touches an item once, else its inverse would be ambiguous. */
function checkTouchedOnce({ operations }: CabinetGesture): void {
  operations.forEach(({ id }, index) => {
    if (operations.findIndex((other) => other.id === id) < index)
      throw faultAt(`operations[${index}].id`, `${id} is touched twice in one gesture; touch each item once`);
  });
}

function conflictOf(operation: CabinetOperation, items: readonly CabinetItem[]): Conflict<CabinetItem>[] {
  const { id, kind, baseRevision } = operation;
  const theirs = items.find((item) => item.id === id) ?? null;
  if ((theirs?.revision ?? 0) === baseRevision) return [];
  return [{ id, kind, yours: operation.op === "put" ? operation.body : null, theirs }];
}

function patchOf(operation: CabinetOperation, index: number, items: readonly CabinetItem[]): CabinetPatch {
  const { id, kind } = operation;
  const stands = items.find((item) => item.id === id);
  if (stands !== undefined && stands.kind !== kind)
    throw faultAt(`operations[${index}].kind`, `${id} is ${aKind(stands.kind)}, not ${aKind(kind)}`);
  const after = operation.op === "put" ? operation.body : null;
  return { id, kind, version: cabinetVersion, before: stands?.body ?? null, after };
}

const aKind = (kind: CabinetKind): string =>
  kind === "instrument" ? "an instrument" : kind === "stock" ? "a material" : `a ${kind}`;
