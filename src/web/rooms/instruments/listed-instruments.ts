import type { CabinetItem, CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { instrumentsOf } from "../../../record/cabinet/items-of-cabinet.ts";

type Movement = CabinetItemOf<"instrument">["body"]["movement"];
const movements: readonly Movement[] = ["hand", "continuous", "reciprocating", "ultrasonic"];

/** Instruments that are moved alike. */
export interface MovedAlike {
  readonly movement: Movement;
  readonly instruments: readonly CabinetItemOf<"instrument">[];
}

/** The instruments of a cabinet by how they are moved, thin ones first; a way of moving that none has is left out. */
export function listedInstruments(items: readonly CabinetItem[]): readonly MovedAlike[] {
  const thinFirst = [...instrumentsOf(items)].sort(
    ({ body: a }, { body: b }) =>
      a.size - b.size || a.taper - b.taper || (a.lengthMm ?? 0) - (b.lengthMm ?? 0) || (a.name < b.name ? -1 : 1),
  );
  return movements
    .map((movement) => ({ movement, instruments: thinFirst.filter(({ body }) => body.movement === movement) }))
    .filter(({ instruments }) => instruments.length > 0);
}
