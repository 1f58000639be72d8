import { describe, expect, it } from "vitest";
import { afterKeys, entryAct } from "./entry-keys.ts";

const lists = { canals: 3, sequences: 2, choices: 5 };
const at = { canal: 1, choice: 1 };

describe("the keys of the entry", () => {
  it.each([
    ["ArrowLeft", { canal: 0, choice: 1 }],
    ["ArrowRight", { canal: 2, choice: 1 }],
    ["ArrowUp", { canal: 1, choice: 0 }],
    ["ArrowDown", { canal: 1, choice: 2 }],
    ["1", { canal: 1, choice: 0 }],
    ["2", { canal: 1, choice: 1 }],
  ])("%s leads to %o", (key, to) => {
    expect(entryAct(key, at, lists)).toEqual({ to });
  });

  it("stay inside the lists", () => {
    expect(entryAct("ArrowRight", { canal: 2, choice: 0 }, lists)).toEqual({ to: { canal: 2, choice: 0 } });
    expect(entryAct("ArrowLeft", { canal: 0, choice: 0 }, lists)).toEqual({ to: { canal: 0, choice: 0 } });
    expect(entryAct("ArrowDown", { canal: 0, choice: 4 }, lists)).toEqual({ to: { canal: 0, choice: 4 } });
    expect(entryAct("ArrowDown", { canal: 0, choice: 0 }, { canals: 0, sequences: 0, choices: 0 })).toEqual({
      to: { canal: 0, choice: 0 },
    });
  });

  it("choose no sequence that is not there, and leave other keys alone", () => {
    for (const key of ["0", "3", "9", "a", "Tab", "Escape", "12"]) expect(entryAct(key, at, lists)).toBeUndefined();
  });

  it("record with Enter, unless there is nothing to record", () => {
    expect(entryAct("Enter", at, lists)).toBe("record");
    expect(entryAct("Enter", at, { canals: 1, sequences: 0, choices: 0 })).toBeUndefined();
  });
});

describe("keys that come before the entry is drawn", () => {
  it("lead where they would have led, as far as the first Enter", () => {
    expect(afterKeys(["ArrowLeft", "1"], at, lists)).toEqual({ at: { canal: 0, choice: 0 }, records: false });
    expect(afterKeys(["1", "Enter", "2"], at, lists)).toEqual({ at: { canal: 1, choice: 0 }, records: true });
    expect(afterKeys(["x", "9"], at, lists)).toEqual({ at, records: false });
    expect(afterKeys([], at, lists)).toEqual({ at, records: false });
  });
});
