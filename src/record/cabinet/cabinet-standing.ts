import { faultsOf } from "../../core/faults-of.ts";
import { Refusal } from "../../core/refusal.ts";
import { apply, follows, noHash, seal } from "../change.ts";
import { type CabinetChange, type CabinetPatch, cabinetVersion } from "./cabinet-change.ts";
import { type CabinetItem, type CabinetKind, cabinetKinds } from "./cabinet-item.ts";

/** Where the cabinet stands after its last change. */
export interface CabinetStanding {
  /** The last change; 0 before the first. */
  readonly sequence: number;
  /** The hash of that change; 64 zeros before the first. */
  readonly headHash: string;
  /** The items that stand, in the order in which they came. */
  readonly items: readonly CabinetItem[];
  /** How often each item was ever touched, removed ones too: one that comes back goes on counting. */
  readonly revisions: ReadonlyMap<string, number>;
}

/** The cabinet before its first change. */
export const emptyCabinet: CabinetStanding = { sequence: 0, headHash: noHash, items: [], revisions: new Map() };

/** What a change needs beside the place that the chain gives it. */
export type CabinetStep = Pick<CabinetChange, "at" | "who" | "words" | "patches" | "inverts">;

/** The next link of the cabinet's chain, and where it stands after it. */
export function advanceCabinet(
  standing: CabinetStanding,
  step: CabinetStep,
): { readonly change: CabinetChange; readonly standing: CabinetStanding } {
  const change = seal({ sequence: standing.sequence + 1, previousHash: standing.headHash, ...step });
  return { change, standing: standAfter(standing, change, step.patches) };
}

/**
 * Where the cabinet stands after the changes of its chain, first to last.
 * @throws Refusal `store.brokenChain` naming the first link that does not hold, `record.newerVersion`, `input.invalid`
 */
export function replayCabinet(changes: readonly CabinetChange[]): CabinetStanding {
  return changes.reduce<CabinetStanding>((standing, change) => {
    if (change.sequence !== standing.sequence + 1 || !follows(change, standing.headHash))
      throw new Refusal(
        "store.brokenChain",
        `Cannot replay the cabinet: change ${change.sequence} does not follow the one before it; restore a backup`,
        { sequence: change.sequence },
      );
    return standAfter(standing, change, change.patches.map(readCabinetPatch));
  }, emptyCabinet);
}

/** An item as it was stored: a body that nobody has checked. */
export interface StoredItem {
  readonly id: string;
  readonly kind: CabinetKind;
  readonly version: number;
  readonly body: unknown;
}

/**
 * The body of a stored item in today's form.
 * @throws Refusal `record.newerVersion` when a newer program wrote it, `input.invalid` with every fault otherwise
 */
export function readCabinetBody({ id, kind, version, body }: StoredItem): CabinetItem["body"] {
  if (version > cabinetVersion)
    throw new Refusal(
      "record.newerVersion",
      `Cannot read ${id} of the cabinet: its form is version ${version}, this program knows ${cabinetVersion}; use the newer program`,
      { kind, version },
    );
  const parsed = cabinetKinds[kind].safeParse(body);
  if (parsed.success) return parsed.data;
  throw new Refusal(
    "input.invalid",
    `Cannot read ${id} of the cabinet: it has faults`,
    { kind },
    faultsOf(parsed.error, body),
  );
}

/**
 * A patch with both its bodies in today's form, whatever version wrote it.
 * @throws Refusal `record.newerVersion`, `input.invalid`
 */
export function readCabinetPatch(patch: CabinetPatch): CabinetPatch {
  const today = (body: unknown) => (body === null ? null : readCabinetBody({ ...patch, body }));
  return { ...patch, before: today(patch.before), after: today(patch.after) };
}

function standAfter(
  { items, revisions: before }: CabinetStanding,
  { sequence, hash }: CabinetChange,
  patches: readonly CabinetPatch[],
): CabinetStanding {
  const revisions = new Map(before);
  for (const { id } of patches) revisions.set(id, (revisions.get(id) ?? 0) + 1);
  return { sequence, headHash: hash, items: apply(items, patches, before), revisions };
}
