import type { Fault } from "../../core/refusal.ts";
import type { CabinetGesture } from "./cabinet-gesture.ts";
import type { CabinetItem } from "./cabinet-item.ts";

/**
 * What names an instrument or a material that is not there, once a gesture is done, each with its path in the gesture.
 * Takes the gesture and the items as they would stand after it. Where the item that names it was not touched, the path is
 * that of the removal that took the instrument away.
 */
export function linkFaults({ operations }: CabinetGesture, after: readonly CabinetItem[]): Fault[] {
  const stand = new Set(after.map(({ id, kind }) => `${kind} ${id}`));
  return after.flatMap((item) =>
    namedBy(item).flatMap(({ path, kind, named }): Fault[] => {
      if (stand.has(`${kind} ${named}`)) return [];
      const touched = operations.findIndex(({ op, id }) => op === "put" && id === item.id);
      if (touched >= 0)
        return [
          {
            path: `operations[${touched}].body.${path}`,
            says: `the cabinet has no ${kind === "stock" ? "material" : kind} ${named}`,
          },
        ];
      const removed = operations.findIndex(({ id }) => id === named);
      return [{ path: `operations[${removed}].id`, says: `${named} is still named by ${called(item)}` }];
    }),
  );
}

interface Named {
  readonly path: string;
  readonly kind: "instrument" | "stock";
  readonly named: string;
}

/** What an item names, each with its path in the item's body. */
function namedBy(item: CabinetItem): Named[] {
  switch (item.kind) {
    case "file":
      return [{ path: "instrument", kind: "instrument", named: item.body.instrument }];
    case "sequence":
      return item.body.steps.map(({ instrument: named }, at) => ({
        ...{ path: `steps[${at}].instrument`, kind: "instrument", named },
      }));
    case "template":
      return item.body.stock.map((named, at) => ({ path: `stock[${at}]`, kind: "stock", named }));
    default:
      return [];
  }
}

const called = (item: CabinetItem): string =>
  item.kind === "file" ? `file ${item.body.label}` : `${item.kind} ${item.body.name}`;
