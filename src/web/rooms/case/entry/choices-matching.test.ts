import { expect, test } from "vitest";
import { cabinetBodies } from "../../../../../test/samples/cabinet.ts";
import type { CabinetItem } from "../../../../record/cabinet/cabinet-item.ts";
import { choicesMatching } from "./choices-matching.ts";

const choices: readonly CabinetItem[] = [
  { id: "usual", kind: "sequence", revision: 1, body: { ...cabinetBodies.sequence, name: "Curved canals" } },
  ...(["Rotary", "Glide path", "Hand file"] as const).map(
    (name, index): CabinetItem => ({
      ...{ id: `i-${index}`, kind: "instrument", revision: 1 },
      body: { ...cabinetBodies.instrument, name, size: 15 + 10 * index },
    }),
  ),
];
const found = (typed: string): string[] => choicesMatching(choices, typed).map(({ id }) => id);

test("every word is looked for, in any order and case, in the name and the geometry", () => {
  expect(found("PATH gl")).toEqual(["i-1"]);
  expect(found("a")).toEqual(["usual", "i-0", "i-1", "i-2"]);
  expect(found("25")).toEqual(["i-1"]);
  expect(found("path 15")).toEqual([]);
});

test("without a word all stand, in their order", () => {
  for (const none of ["", "  "]) expect(found(none)).toEqual(choices.map(({ id }) => id));
});
