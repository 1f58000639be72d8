import { describe, expect, it } from "vitest";
import { sampleRemovalEntry, sampleRemovalTold } from "../../test/sample-removal.ts";
import { innerSideTaken, removalFromElsewhere, removalSubject, removalTold } from "./removal-told.ts";

describe("what the ledger says of a removal", () => {
  it("is read by its form, and is not there where it refused or is of another form", () => {
    const entry = sampleRemovalEntry();
    expect(removalTold(entry)).toEqual(sampleRemovalTold());
    expect(entry.subject).toBe(removalSubject("removal-p"));
    const { output: _output, ...refused } = entry;
    expect(removalTold({ ...refused, refused: ["no"] })).toBeUndefined();
    expect(removalTold({ ...entry, output: { ways: [] } })).toBeUndefined();
    expect(removalTold(undefined)).toBeUndefined();
  });

  it("is computed with the piece's measures of other places only where its own page has none", () => {
    const fragment = { headDepthMm: 8.7, headDiameterMm: 0.43 };
    const inputPaths = [
      { input: "fragment.headDepthMm", record: "ledger/e1/tipDepthMm" },
      { input: "fragment.headDiameterMm", record: "removal-p/headDiameterMm" },
    ];
    const entry = { ...sampleRemovalEntry(), input: { fragment }, inputPaths };
    expect(removalFromElsewhere(entry, "removal-p")).toEqual({ headDepthMm: 8.7, headDiameterMm: undefined });
    expect(removalFromElsewhere(undefined, "removal-p")).toEqual({ headDepthMm: undefined, headDiameterMm: undefined });
  });

  it("takes the straight line to the furcation where nobody told the inner side, and says which of both it is", () => {
    const of = (input: object) => innerSideTaken({ input: { fragment: {}, ...input } });
    expect(of({})).toEqual({ side: "furcation", isTold: false });
    expect(of({ innerSide: "buccal" })).toEqual({ side: "buccal", isTold: true });
    expect(of({ innerSide: "furcation" })).toEqual({ side: "furcation", isTold: true });
    expect(of({ innerSide: "left" })).toBeUndefined();
    expect(innerSideTaken(undefined)).toBeUndefined();
  });
});
