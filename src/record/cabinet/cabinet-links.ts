import type { Fault } from "../../core/refusal.ts";
import type { CabinetGesture } from "./cabinet-gesture.ts";
import type { CabinetItem } from "./cabinet-item.ts";

/**
 * What names an instrument that is not there, once a gesture is done, each with its path in the gesture.
 * Takes the gesture and the items as they would stand after it. Where the item that names it was not touched, the path is
 * that of the removal that took the instrument away.
 */
export function linkFaults({ operations }: CabinetGesture, after: readonly CabinetItem[]): Fault[] {
  const instruments = new Set(after.flatMap(({ id, kind }) => (kind === "instrument" ? [id] : [])));
  return after.flatMap((item) =>
    namedBy(item).flatMap(({ path, instrument }): Fault[] => {
      if (instruments.has(instrument)) return [];
      const touched = operations.findIndex(({ op, id }) => op === "put" && id === item.id);
      if (touched >= 0)
        return [{ path: `operations[${touched}].body.${path}`, says: `the cabinet has no instrument ${instrument}` }];
      const removed = operations.findIndex(({ id }) => id === instrument);
      return [{ path: `operations[${removed}].id`, says: `${instrument} is still named by ${called(item)}` }];
    }),
  );
}

/** The instruments that an item names, each with its path in the item's body. */
function namedBy(item: CabinetItem): { readonly path: string; readonly instrument: string }[] {
  if (item.kind === "file") return [{ path: "instrument", instrument: item.body.instrument }];
  if (item.kind === "instrument") return [];
  return item.body.steps.map(({ instrument }, index) => ({ path: `steps[${index}].instrument`, instrument }));
}

const called = (item: CabinetItem): string =>
  item.kind === "file" ? `file ${item.body.label}` : `sequence ${item.kind === "sequence" ? item.body.name : item.id}`;
