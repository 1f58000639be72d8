import type { Fault } from "../../core/refusal.ts";
import type { CabinetGesture } from "./cabinet-gesture.ts";
import type { CabinetItem } from "./cabinet-item.ts";

/**
 * The counted files that a gesture would take out although something was counted of them, each with its path: what cases
 * say of a file would name nothing any more. Takes the items that stand before it and the ids of the files that cases used.
 */
export function countedFaults(
  { operations }: CabinetGesture,
  before: readonly CabinetItem[],
  used: ReadonlySet<string>,
): Fault[] {
  return operations.flatMap(({ op, id }, index): Fault[] => {
    const item = op === "remove" ? before.find((one) => one.id === id) : undefined;
    if (item?.kind !== "file" || !(used.has(id) || item.body.sterilisedOn.length > 0)) return [];
    const counted = used.has(id) ? "has uses" : "has sterilisations";
    return [{ path: `operations[${index}].id`, says: `file ${item.body.label} ${counted}: discard it, and it stays` }];
  });
}
