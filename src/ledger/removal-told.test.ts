import { describe, expect, it } from "vitest";
import { sampleRemovalEntry, sampleRemovalTold } from "../../test/sample-removal.ts";
import { removalFromElsewhere, removalSubject, removalTold } from "./removal-told.ts";

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
});
