import { expect, test } from "vitest";
import { cabinetBodies, putItem, removeItem } from "../../../test/samples/cabinet.ts";
import { cabinetInverse, cabinetPatchesOf } from "./cabinet-change.ts";
import type { CabinetGesture } from "./cabinet-gesture.ts";
import type { CabinetItem } from "./cabinet-item.ts";

const { instrument, file, sequence, stock, template } = cabinetBodies;
const items: readonly CabinetItem[] = [
  { id: "shaper", kind: "instrument", revision: 3, body: instrument },
  { id: "file-1", kind: "file", revision: 1, body: file },
  { id: "usual", kind: "sequence", revision: 1, body: sequence },
  { id: "bleach", kind: "stock", revision: 2, body: stock },
  { id: "first", kind: "template", revision: 1, body: template },
];
const both = (...gestures: CabinetGesture[]): CabinetGesture => ({
  words: "Both",
  operations: gestures.flatMap(({ operations }) => operations),
});

test("a gesture gives what each item was and what it is then; what stays the same is left out", () => {
  const gesture = both(putItem("shaper", "instrument", 3, { rpm: 250 }), putItem("file-1", "file", 1));
  const patches = cabinetPatchesOf(gesture, items);
  expect(patches).toEqual([
    { id: "shaper", kind: "instrument", version: 1, before: instrument, after: { ...instrument, rpm: 250 } },
  ]);
  expect(cabinetInverse(patches)).toEqual([
    { id: "shaper", kind: "instrument", version: 1, before: { ...instrument, rpm: 250 }, after: instrument },
  ]);
});

test("an instrument and what names it can come, and go, in one gesture", () => {
  const coming = both(putItem("file-1", "file"), putItem("usual", "sequence"), putItem("shaper", "instrument"));
  expect(cabinetPatchesOf(coming, []).map(({ before }) => before)).toEqual([null, null, null]);
  const going = both(
    removeItem("shaper", "instrument", 3),
    removeItem("file-1", "file", 1),
    removeItem("usual", "sequence", 1),
  );
  expect(cabinetPatchesOf(going, items).map(({ after }) => after)).toEqual([null, null, null]);
});

test("a material and a template that names it can come, and go, in one gesture, and are taken back whole", () => {
  const coming = both(putItem("first", "template"), putItem("bleach", "stock"));
  const came = cabinetPatchesOf(coming, []);
  expect(came.map(({ after }) => after)).toEqual([template, stock]);
  expect(cabinetInverse(came).map(({ id, after }) => [id, after])).toEqual([
    ["bleach", null],
    ["first", null],
  ]);
  const going = both(removeItem("bleach", "stock", 2), removeItem("first", "template", 1));
  expect(cabinetPatchesOf(going, items).map(({ after }) => after)).toEqual([null, null]);
});

const faultsOf = (gesture: unknown, stood = items): unknown => {
  try {
    return cabinetPatchesOf(gesture as CabinetGesture, stood);
  } catch (thrown) {
    return thrown;
  }
};

test.each([
  [
    "a file of an instrument that is not there",
    putItem("file-2", "file", 0, { instrument: "none" }),
    "operations[0].body.instrument",
    "the cabinet has no instrument none",
  ],
  [
    "a file of what is no instrument",
    putItem("file-2", "file", 0, { instrument: "usual" }),
    "operations[0].body.instrument",
    "the cabinet has no instrument usual",
  ],
  [
    "a step with an instrument that is not there",
    putItem("usual", "sequence", 1, { steps: [{ instrument: "shaper" }, { instrument: "none" }] }),
    "operations[0].body.steps[1].instrument",
    "the cabinet has no instrument none",
  ],
  [
    "an instrument taken out that a file still names",
    both(putItem("other", "instrument"), removeItem("usual", "sequence", 1), removeItem("shaper", "instrument", 3)),
    "operations[2].id",
    "shaper is still named by file S1",
  ],
  [
    "an instrument taken out that a sequence still names",
    both(removeItem("shaper", "instrument", 3), removeItem("file-1", "file", 1)),
    "operations[0].id",
    "shaper is still named by sequence Usual",
  ],
  [
    "a template of a material that is not there",
    putItem("first", "template", 1, { stock: ["bleach", "none"] }),
    "operations[0].body.stock[1]",
    "the cabinet has no material none",
  ],
  [
    "a template of what is no material",
    putItem("first", "template", 1, { stock: ["shaper"] }),
    "operations[0].body.stock[0]",
    "the cabinet has no material shaper",
  ],
  [
    "a material taken out that a template still names",
    removeItem("bleach", "stock", 2),
    "operations[0].id",
    "bleach is still named by template First visit",
  ],
  [
    "a material as a template",
    putItem("bleach", "template", 2, { stock: [] }),
    "operations[0].kind",
    "bleach is a material, not a template",
  ],
  [
    "an item touched twice",
    both(putItem("shaper", "instrument", 3, { rpm: 250 }), removeItem("shaper", "instrument", 3)),
    "operations[1].id",
    "shaper is touched twice in one gesture; touch each item once",
  ],
  [
    "an item as another kind",
    putItem("shaper", "sequence", 3),
    "operations[0].kind",
    "shaper is an instrument, not a sequence",
  ],
])("%s is refused with its path", (_, gesture, path, says) => {
  expect(faultsOf(gesture)).toMatchObject({ code: "input.impossible", faults: [{ path, says }] });
});

test.each([
  ["a size that no instrument has", putItem("shaper", "instrument", 3, { size: 5 }), "operations[0].body.size"],
  ["a day that is none", putItem("file-1", "file", 1, { since: "2026-02-30" }), "operations[0].body.since"],
  ["a sequence without steps", putItem("usual", "sequence", 1, { steps: [] }), "operations[0].body.steps"],
  [
    "a material of no kind",
    putItem("bleach", "stock", 2, { holds: { solution: "EDTA" } as never }),
    "operations[0].body.holds.kind",
  ],
  [
    "a strength above the whole",
    putItem("bleach", "stock", 2, { holds: { kind: "irrigant", solution: "EDTA", percent: 170 } }),
    "operations[0].body.holds.percent",
  ],
  [
    "a usual volume below nothing",
    putItem("bleach", "stock", 2, { holds: { kind: "solvent", solvent: "xylene", volumeMl: -1 } }),
    "operations[0].body.holds.volumeMl",
  ],
  [
    "a day of expiry that is none",
    putItem("bleach", "stock", 2, { expires: "2026-13-01" }),
    "operations[0].body.expires",
  ],
  ["a material without a name", putItem("bleach", "stock", 2, { name: " " }), "operations[0].body.name"],
  [
    "a step without words",
    putItem("first", "template", 1, { steps: [{ says: "One" }, { says: "" }] }),
    "operations[0].body.steps[1].says",
  ],
  [
    "a hold point that there is not",
    putItem("first", "template", 1, { steps: [{ says: "One", holdPoint: "lunch" as never }] }),
    "operations[0].body.steps[0].holdPoint",
  ],
  ["no words", { ...putItem("shaper", "instrument", 3), words: " " }, "words"],
  ["no operation", { words: "Nothing", operations: [] }, "operations"],
  [
    "a kind that there is not",
    { words: "A try", operations: [{ op: "put", id: "one", kind: "tray", baseRevision: 0, body: {} }] },
    "operations[0].kind",
  ],
  [
    "a maker's name in a field that there is not",
    putItem("shaper", "instrument", 3, { maker: "x" } as object),
    "operations[0].body.maker",
  ],
])("%s does not fit, and its path is named", (_, gesture, path) => {
  expect(faultsOf(gesture)).toMatchObject({ code: "input.invalid", faults: [{ path }] });
});

test("a gesture on what has changed since is a conflict before anything else is judged", () => {
  expect(faultsOf(putItem("shaper", "instrument", 2))).toMatchObject({
    code: "record.conflict",
    facts: { conflicts: [{ id: "shaper", kind: "instrument", yours: instrument, theirs: { revision: 3 } }] },
  });
});
