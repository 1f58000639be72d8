import { describe, expect, it } from "vitest";
import { nextCanal } from "./next-canal.ts";
import type { InstrumentUse } from "./use-of-step.ts";

const canals = [{ canal: "MB1", workingLengthMm: 19.5 }, { canal: "MB2" }, { canal: "P" }];
const into = (canal?: string): InstrumentUse => ({
  ...{ size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
  ...(canal === undefined ? {} : { canal }),
});

describe("the next canal", () => {
  it.each([
    [[], "MB1"],
    [[into("MB1")], "MB2"],
    [[into("MB1"), into("P")], "MB2"],
    [[into("P")], "MB1"],
    [[into(undefined), into("X")], "MB1"],
    [[into("MB1"), into("MB2"), into("P")], "MB1"],
  ])("after %# rows is %s", (uses, canal) => {
    expect(nextCanal(canals, uses)?.canal).toBe(canal);
  });

  it("is none where the visit names none", () => {
    expect(nextCanal([], [into("MB1")])).toBeUndefined();
  });
});
