import { describe, expect, it } from "vitest";
import { notToldOf, sizedInstrument } from "./instrument-as-told.ts";
import { mishapPart } from "./parts/mishap.ts";

describe("an instrument that is told afterwards", () => {
  it("has no shape before its size and its taper are told", () => {
    for (const told of [undefined, {}, { size: 25 }, { taper: 0.06 }]) expect(sizedInstrument(told)).toBeUndefined();
    expect(sizedInstrument({ size: 25, taper: 0.06 })).toEqual({ size: 25, taper: 0.06 });
  });

  it("is without what a row says of its use", () => {
    const row = { size: 25, taper: 0.06, alloy: "other", movement: "hand", rpm: 300, seconds: 8 } as const;
    expect(sizedInstrument(row)).toEqual({ size: 25, taper: 0.06, alloy: "other", movement: "hand" });
  });

  it("lacks what was not told, in one order", () => {
    expect(notToldOf({})).toEqual(["size", "taper", "alloy", "movement"]);
    expect(notToldOf({ movement: "hand", size: 10 })).toEqual(["taper", "alloy"]);
    expect(notToldOf({ size: 10, taper: 0.02, alloy: "stainlessSteel", movement: "hand" })).toEqual([]);
  });

  it("may be begun empty in a mishap, and what is told of it stays within its ranges", () => {
    const body = (instrument: object) =>
      mishapPart.body.safeParse({
        ...{ on: "2026-01-02", what: "separatedInstrument", third: "notRecorded", bend: "notRecorded" },
        ...{ handled: "open", toldPatient: "notYet", story: "", instrument },
      });
    expect(body({}).success).toBe(true);
    expect(body({ size: 25, alloy: "nickelTitanium" }).success).toBe(true);
    expect(body({ size: 5 }).error?.issues[0]?.path).toEqual(["instrument", "size"]);
    expect(body({ maker: "x" }).success).toBe(false);
  });
});
