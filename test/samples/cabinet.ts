import type { CabinetGesture } from "../../src/record/cabinet/cabinet-gesture.ts";
import type { CabinetItemOf, CabinetKind } from "../../src/record/cabinet/cabinet-item.ts";

type Bodies = { readonly [K in CabinetKind]: CabinetItemOf<K>["body"] };

/** One instrument, one counted file of it and one sequence with it, one material and one template with it; invented. */
export const cabinetBodies: Bodies = {
  instrument: {
    ...{ name: "Rotary", size: 25, taper: 0.06, lengthMm: 25, alloy: "nickelTitanium", movement: "continuous" },
    ...{ rpm: 300, torqueLimitNmm: 20, limits: { uses: 2, turns: 400 } },
  },
  file: { instrument: "shaper", label: "S1", since: "2026-01-05", sterilisedOn: ["2026-01-05"] },
  sequence: { name: "Usual", steps: [{ instrument: "shaper", shortByMm: 0.5, seconds: 20 }] },
  stock: { name: "Bleach", holds: { kind: "irrigant", solution: "sodium hypochlorite", percent: 3 } },
  template: { name: "First visit", steps: [{ says: "Tooth and side", about: "timeOut" }], stock: ["bleach"] },
};

/** Puts an item of the cabinet. */
export const putItem = <Kind extends keyof Bodies>(
  id: string,
  kind: Kind,
  baseRevision = 0,
  more: Partial<Bodies[Kind]> = {},
): CabinetGesture =>
  ({
    words: `${id} put`,
    operations: [{ op: "put", id, kind, baseRevision, body: { ...cabinetBodies[kind], ...more } }],
  }) as CabinetGesture;

/** Removes an item of the cabinet. */
export const removeItem = (id: string, kind: keyof Bodies, baseRevision: number): CabinetGesture => ({
  words: `${id} removed`,
  operations: [{ op: "remove", id, kind, baseRevision }],
});
