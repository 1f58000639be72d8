import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holdsOf } from "./condition.ts";

const facts = new Map<string, string | number>([
  ["lesion", "present"],
  ["ageYears", 57],
]);

describe("a condition (C2)", () => {
  it.each([
    [{}, "yes", [], []],
    [{ lesion: ["present"] }, "yes", [], []],
    [{ lesion: ["none"] }, "no", [], ["lesion"]],
    [{ apex: ["open"] }, "unknown", ["apex"], []],
    [{ lesion: ["present"], apex: ["open"] }, "unknown", ["apex"], []],
    [{ lesion: ["none"], apex: ["open"] }, "no", [], ["lesion"]],
    [{ ageYears: { atLeast: 57 } }, "yes", [], []],
    [{ ageYears: { atLeast: 58 } }, "no", [], ["ageYears"]],
    [{ ageYears: { atMost: 57 } }, "yes", [], []],
    [{ ageYears: { atMost: 56 } }, "no", [], ["ageYears"]],
    [{ ageYears: { above: 57 } }, "no", [], ["ageYears"]],
    [{ ageYears: { above: 56 } }, "yes", [], []],
    [{ lesion: { atLeast: 1 } }, "no", [], ["lesion"]],
  ] as const)("%j holds: %s", (condition, holds, missing, against) => {
    expect(holdsOf(structuredClone(condition) as never, facts)).toEqual({ holds, missing, against });
  });

  it("never turns from yes to no, or back, where a further fact is recorded (property)", () => {
    const word = fc.constantFrom("none", "present", undefined);
    const named = fc.record({ a: word, b: word, c: word });
    fc.assert(
      fc.property(named, named, (wanted, known) => {
        const condition = Object.fromEntries(
          Object.entries(wanted).flatMap(([fact, value]) => (value === undefined ? [] : [[fact, [value]]])),
        );
        const recorded = Object.entries(known).flatMap(([fact, value]): [string, string][] =>
          value === undefined ? [] : [[fact, value]],
        );
        const some = holdsOf(condition, new Map(recorded.slice(0, -1))).holds;
        const all = holdsOf(condition, new Map(recorded)).holds;
        expect(some === "unknown" || some === all).toBe(true);
      }),
      { numRuns: 300, seed: 9 },
    );
  });
});
