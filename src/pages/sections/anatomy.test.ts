import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import type { BodyOf } from "../../record/parts.ts";
import { anatomyPages } from "./anatomy.ts";

const notesOf = (anatomy: Partial<BodyOf<"anatomy">>): readonly string[] => {
  const others = sampleParts().filter(({ kind }) => kind === "case");
  const own = part("anatomy", "anatomy-1", { roots: [{ name: "R", levels: [1] }], foundBy: [], ...anatomy });
  return anatomyPages(sampleSource([...others, own]))[0]?.notes ?? ["no page"];
};

describe("the page of roots and canals", () => {
  it("says beside it what is unusual and why it is right, or that nobody has said so", () => {
    expect(notesOf({})).toEqual([
      expect.stringContaining("1 root is unusual for the upper"),
      "No reason is recorded for it yet.",
    ]);
    expect(notesOf({ unusualBecause: "fused on every film" })[1]).toBe("Why this form is right: fused on every film");
  });

  it("says a reason alone where the number of roots is a usual one, and nothing without", () => {
    const roots: BodyOf<"anatomy">["roots"] = ["MB", "DB", "P"].map((name) => ({ name, levels: [1] }));
    expect(notesOf({ roots })).toEqual([]);
    expect(notesOf({ roots, unusualBecause: "a wide palatal canal" })).toEqual([
      "Why this form is right: a wide palatal canal",
    ]);
  });
});
