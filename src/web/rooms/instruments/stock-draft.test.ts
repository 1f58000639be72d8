import { describe, expect, it } from "vitest";
import { stockOfDraft } from "./stock-draft.ts";

const holds = { kind: "anaesthetic", agent: "lidocaine", percent: 2, cartridgeMl: 1.8 };
const faultsOf = (draft: unknown) => {
  const made = stockOfDraft(draft);
  return "faults" in made ? made.faults.map(({ path }) => path) : [];
};

describe("a new material", () => {
  it("is nothing before its kind is told, and holds nothing that nobody told", () => {
    expect(faultsOf({})).toContain("holds");
    expect(faultsOf({ holds: { kind: "irrigant" } })).toEqual(["holds.solution"]);
    expect(stockOfDraft({ holds: { kind: "irrigant", solution: "EDTA" } })).toEqual({
      body: { name: "EDTA", holds: { kind: "irrigant", solution: "EDTA" } },
    });
  });

  it("keeps the name that the clinic gives it", () => {
    expect(stockOfDraft({ name: "Bleach", holds: { kind: "irrigant", solution: "EDTA" } })).toMatchObject({
      body: { name: "Bleach" },
    });
  });

  it("of an anaesthetic is plain only where somebody said so", () => {
    expect(faultsOf({ holds })).toEqual(["holds.vasoconstrictor.name"]);
    expect(stockOfDraft({ holds: { ...holds, vasoconstrictor: { name: "plain" } } })).toEqual({
      body: { name: "lidocaine 2 %, plain", holds },
    });
    expect(faultsOf({ holds: { ...holds, vasoconstrictor: { name: "epinephrine" } } })).toEqual([
      "holds.vasoconstrictor.ratio",
    ]);
    expect(faultsOf({ holds: { ...holds, vasoconstrictor: { name: "felypressin" } } })).toEqual([
      "holds.vasoconstrictor.iuPerMl",
    ]);
  });

  it.each([
    [
      "a strength in parts of a thousand",
      { ...holds, percent: 20, vasoconstrictor: { name: "plain" } },
      "holds.percent",
    ],
    ["a negative volume", { kind: "irrigant", solution: "EDTA", volumeMl: -1 }, "holds.volumeMl"],
    ["another solution without its name", { kind: "irrigant", solution: "other" }, "holds.named"],
    ["another solvent without its numbers", { kind: "solvent", solvent: "other" }, "holds.own.name"],
    ["half of its numbers", { kind: "solvent", solvent: "other", own: { name: "x" } }, "holds.own.densityGMl"],
    ["a filling of no use", { kind: "filling", material: "gutta-percha" }, "holds.as"],
    ["no material", { kind: "temporary" }, "holds.material"],
  ])("with %s is refused at its field", (_, wrong, path) => {
    expect(faultsOf({ holds: wrong })).toContain(path);
  });
});
