import { describe, expect, it } from "vitest";
import { conflictFields, mergedBody } from "./conflict-fields.ts";

const mine = { because: "mine", visitsExpected: 2, canals: [{ canal: "MB1", size: 25 }], note: "" };
const theirs = { because: "theirs", visitsExpected: 3, canals: [{ canal: "MB1", size: 30 }], note: "" };

describe("two versions of a part", () => {
  it("are shown only where they differ, by the row's own name", () => {
    expect(conflictFields(mine, theirs)).toEqual([
      { name: "because", label: "Because", mine: ["mine"], theirs: ["theirs"] },
      { name: "visitsExpected", label: "Visits expected", mine: ["2"], theirs: ["3"] },
      { name: "canals", label: "Canals", mine: ["MB1, size: 25"], theirs: ["MB1, size: 30"] },
    ]);
  });

  it("are called as their form calls them, also inside, where that is told", () => {
    const labels = { story: "What happened, in order", "rows.mm": "Dentine" };
    const of = (story: string, mm: number) => ({ story, rows: [{ side: "mesial", mm }] });
    expect(conflictFields(of("a", 1), of("b", 2), labels)).toEqual([
      { name: "story", label: "What happened, in order", mine: ["a"], theirs: ["b"] },
      { name: "rows", label: "Rows", mine: ["1, dentine: 1"], theirs: ["1, dentine: 2"] },
    ]);
  });

  it("show a field that only one of them has", () => {
    expect(conflictFields({ a: 1 }, { a: 1, b: false })).toEqual([{ name: "b", label: "B", mine: [], theirs: ["no"] }]);
  });

  it("are put together field by field, as chosen", () => {
    expect(mergedBody(mine, theirs, new Set(["visitsExpected"]))).toEqual({ ...mine, visitsExpected: 3 });
    expect(mergedBody(mine, theirs, new Set())).toEqual(mine);
    expect(mergedBody({ a: 1, b: 2 }, { a: 1 }, new Set(["b"]))).toEqual({ a: 1 });
  });
});
