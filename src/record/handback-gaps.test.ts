import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import { handbackGaps } from "./handback-gaps.ts";
import type { BodyOf } from "./parts.ts";

const empty: BodyOf<"handback"> = {
  ...{ on: "2024-04-01", restoreWith: "", orificesMarkedBy: "", warnings: "", prognosis: "" },
};
const whole: BodyOf<"handback"> = {
  ...{ on: "2024-04-01", to: "restoringDentist", restoreWith: "a crown", restoreBy: "2024-04-29" },
  ...{ orificesMarkedBy: "red resin", warnings: "none", prognosis: "good", recallOn: "2025-04-01", painAdvice: "call" },
  figure: { entry: "a".repeat(64), way: "retreat", outcome: "one" },
};

describe("what is missing for a letter of hand-back", () => {
  it("is each field that says nothing, in the order of the letter", () => {
    expect(handbackGaps(sampleParts(), empty).flatMap(({ at }) => at ?? [])).toEqual([
      ...["to", "restoreWith", "restoreBy", "orificesMarkedBy", "warnings", "prognosis", "figure"],
      ...["recallOn", "painAdvice"],
    ]);
  });

  it("is none of the fields where all are said, and of the sample how it is closed and its lots", () => {
    expect(handbackGaps(sampleParts(), whole)).toEqual([
      { of: "visit", says: "How the tooth is closed: temporary filling or build-up" },
      { of: "visit", says: "Lots of what stays in the tooth" },
    ]);
    const parts = sampleParts().map((one) =>
      one.kind === "visit"
        ? part("visit", one.id, { ...one.body, buildUp: "resin", lots: [{ material: "sealer", lot: "7" }] })
        : one,
    );
    expect(handbackGaps(parts, whole)).toEqual([]);
  });

  it("of an empty record is that there is nothing", () => {
    expect(handbackGaps([], undefined).map(({ of }) => of)).toEqual(["case", "diagnosis", "visit", "handback"]);
  });
});
