import { expect, test } from "vitest";
import { cabinetBodies } from "../../../test/samples/cabinet.ts";
import { apply } from "../change.ts";
import { cabinetPatchesOf } from "./cabinet-change.ts";
import type { CabinetItem } from "./cabinet-item.ts";
import { demoTakenOut, withoutStanding } from "./demo-items.ts";

const { instrument, file, sequence, stock, template } = cabinetBodies;
const demo = true as const;
const ofDemo: readonly CabinetItem[] = [
  { id: "shaper", kind: "instrument", revision: 2, body: { ...instrument, demo } },
  { id: "file-1", kind: "file", revision: 1, body: { ...file, demo } },
  { id: "usual", kind: "sequence", revision: 1, body: { ...sequence, demo } },
];
const own: CabinetItem = { id: "mine", kind: "instrument", revision: 1, body: instrument };
const after = (items: readonly CabinetItem[]): CabinetItem[] => {
  const gesture = demoTakenOut(items);
  return gesture === undefined ? [...items] : apply(items, cabinetPatchesOf(gesture, items));
};

test("the demo goes whole, and what is one's own stays as it was", () => {
  expect(after([...ofDemo, own])).toEqual([own]);
  expect(demoTakenOut([own])).toBeUndefined();
  expect(demoTakenOut([])).toBeUndefined();
});

test.each([
  ["file", { id: "own-file", kind: "file", revision: 1, body: file }],
  ["sequence", { id: "own-sequence", kind: "sequence", revision: 1, body: sequence }],
] as const)("a demo instrument that one's own %s names stays, as one's own", (_, mine) => {
  expect(after([...ofDemo, mine])).toEqual([{ id: "shaper", kind: "instrument", revision: 3, body: instrument }, mine]);
});

test("a demo material that one's own template names stays, as one's own; that of a demo template goes with it", () => {
  const demoStock: CabinetItem = { id: "bleach", kind: "stock", revision: 4, body: { ...stock, demo } };
  const mine: CabinetItem = { id: "own", kind: "template", revision: 1, body: template };
  const theirs: CabinetItem = { id: "visit", kind: "template", revision: 1, body: { ...template, demo } };
  expect(after([demoStock, mine, theirs])).toEqual([{ id: "bleach", kind: "stock", revision: 5, body: stock }, mine]);
  expect(after([demoStock, theirs])).toEqual([]);
});

test("of a gesture, what stands already is left out", () => {
  const put = { op: "put", kind: "instrument", baseRevision: 0, body: instrument } as const;
  const gesture = {
    words: "Both",
    operations: [
      { ...put, id: "mine" },
      { ...put, id: "other" },
    ],
  };
  expect(withoutStanding(gesture, [own])).toEqual({ words: "Both", operations: [{ ...put, id: "other" }] });
  expect(withoutStanding(gesture, [])).toEqual(gesture);
  expect(withoutStanding(gesture, [own, { ...own, id: "other" }])).toBeUndefined();
});
