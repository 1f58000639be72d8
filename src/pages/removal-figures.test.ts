import { describe, expect, it } from "vitest";
import { sampleRemovalTold } from "../../test/sample-removal.ts";
import type { RemovalTold } from "../ledger/removal-told.ts";
import { waysFigure } from "./removal-figures.ts";

const told = sampleRemovalTold();
const [remove, bypass] = told.ways;
const keptRow = remove?.from.find(({ column }) => column === "kept");
if (remove === undefined || bypass === undefined || keptRow === undefined) throw new Error("no ways");

describe("the ways drawn beside each other", () => {
  const same: RemovalTold["ways"][number] = { ...bypass, kept: remove.kept, from: [keptRow] };
  const says = (ways: RemovalTold["ways"]) => waysFigure({ ways }, { theme: "paper", widthPx: 700 }).alternative;

  it("draw one figure for the tooth that is kept once, where ways rest on the very same series", () => {
    expect(says([remove, same, { ...same, way: "leave" }]).split("the same figure as above")).toHaveLength(3);
  });

  it.each([
    ["another share", { ...same, kept: bypass.kept }],
    ["another series", { ...same, from: [{ ...keptRow, source: "hole-2003" }] }],
    ["no figure", { ...same, kept: undefined }],
  ])("draw both where one has %s", (_, other) => {
    expect(says([remove, other])).not.toContain("the same figure as above");
  });
});
