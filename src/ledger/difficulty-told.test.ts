import { describe, expect, it } from "vitest";
import {
  askedInShort,
  type DifficultyTold,
  difficultySince,
  difficultyTold,
  type HardFact,
} from "./difficulty-told.ts";

const fact = (id: string, says: string, canal?: string): HardFact => ({
  ...{ id, group: "shape", says, because: "it bends", value: 31, unit: "°", lies: "above", by: 11 },
  threshold: { value: 20, source: "known-2001", mark: "memory", is: "above" },
  ...(canal === undefined ? {} : { canal }),
});
const told = (facts: readonly HardFact[]): DifficultyTold => ({
  ...{ facts: [...facts], within: [], asked: [], cautions: [], notComputed: [] },
  basis: { formula: "rows", assumptions: [], sources: [] },
});

describe("what an entry says of difficulty", () => {
  it("is read where it stands in today's form, and nothing is said of another", () => {
    expect(difficultyTold({ output: told([fact("bend", "A bend")]) })?.facts).toHaveLength(1);
    expect(difficultyTold({ output: { facts: "many" } })).toBeUndefined();
    expect(difficultyTold(undefined)).toBeUndefined();
  });
});

describe("what nobody recorded", () => {
  const ask = (says: string, canal?: string): DifficultyTold["asked"][number] => ({
    ...{ id: "course", group: "shape", says },
    ...(canal === undefined ? {} : { canal }),
  });

  it("is told once with its canals, in the order in which it is first asked", () => {
    const asked = [ask("the course: MB", "MB"), ask("whether it gags?"), ask("the course: ML", "ML")];
    expect(askedInShort(asked)).toEqual(["the course: MB, ML", "whether it gags"]);
    expect(askedInShort([ask("the bend of MB is open", "MB"), ask("the bend of ML is open", "ML")])).toEqual([
      "the bend of MB, ML is open",
    ]);
    expect(askedInShort([])).toEqual([]);
  });

  it("keeps two things apart whose words differ, and a name that is part of a word", () => {
    expect(askedInShort([ask("the bend: D", "D"), ask("the length: D", "D")])).toEqual([
      "the bend: D",
      "the length: D",
    ]);
    expect(askedInShort([ask("the CBCT of B", "B"), ask("the CBCT of P", "P")])).toEqual(["the CBCT of B, P"]);
  });
});

describe("what changed since planning", () => {
  const bend = fact("bend", "A bend of 31°", "MB");

  it("is nothing between a list and itself, in any order", () => {
    const [one, other] = [told([bend, fact("post", "A post")]), told([fact("post", "A post"), bend])];
    expect(difficultySince(one, one)).toEqual([]);
    expect(difficultySince(one, other)).toEqual([]);
  });

  it("names what is new, what is gone and what reads otherwise, canal by canal", () => {
    const then = told([bend, fact("bend", "A bend of 12°", "P"), fact("post", "A post")]);
    const now = told([
      fact("bend", "A bend of 36°", "MB"),
      fact("bend", "A bend of 12°", "P"),
      fact("fragment", "A fragment"),
    ]);
    expect(difficultySince(then, now)).toEqual([
      { id: "bend", canal: "MB", is: "changed", was: "A bend of 31°", now: "A bend of 36°" },
      { id: "post", is: "gone", was: "A post" },
      { id: "fragment", is: "new", now: "A fragment" },
    ]);
  });

  it("swaps new and gone when the lists are swapped", () => {
    const [less, more] = [told([bend]), told([bend, fact("post", "A post")])];
    expect(difficultySince(less, more).map(({ is }) => is)).toEqual(["new"]);
    expect(difficultySince(more, less).map(({ is }) => is)).toEqual(["gone"]);
  });
});
