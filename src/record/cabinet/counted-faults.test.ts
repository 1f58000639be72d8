import { expect, test } from "vitest";
import { cabinetBodies, putItem, removeItem } from "../../../test/samples/cabinet.ts";
import type { CabinetItem } from "./cabinet-item.ts";
import { countedFaults } from "./counted-faults.ts";

const file = (id: string, sterilisedOn: string[]): CabinetItem => ({
  ...{ id, kind: "file", revision: 1 },
  body: { ...cabinetBodies.file, label: id.toUpperCase(), sterilisedOn },
});
const items: readonly CabinetItem[] = [
  { id: "shaper", kind: "instrument", revision: 1, body: cabinetBodies.instrument },
  ...[file("new", []), file("boiled", ["2026-01-05"]), file("used", [])],
];
const taken = (...ids: string[]) => ({
  words: "Taken out",
  operations: ids.flatMap((id) => removeItem(id, "file", 1).operations),
});

test("a file that was used or sterilised stays, each with its path; one that was not may go", () => {
  expect(countedFaults(taken("new", "boiled", "used"), items, new Set(["used"]))).toEqual([
    { path: "operations[1].id", says: "file BOILED has sterilisations: discard it, and it stays" },
    { path: "operations[2].id", says: "file USED has uses: discard it, and it stays" },
  ]);
  expect(countedFaults(taken("new", "used"), items, new Set())).toEqual([]);
});

test("what is no removal of a file is not asked about", () => {
  const used = new Set(["used", "shaper"]);
  expect(countedFaults(putItem("used", "file", 1), items, used)).toEqual([]);
  expect(countedFaults(removeItem("shaper", "instrument", 1), items, used)).toEqual([]);
  expect(countedFaults(taken("none"), items, new Set(["none"]))).toEqual([]);
});
