import { describe, expect, it } from "vitest";
import { mishapPart } from "../../../../record/parts/mishap.ts";
import { mishapKinds } from "../../../../record/parts/mishap-kinds.ts";
import { newBodies } from "../new-bodies.ts";
import { detailOf, keptDetails, kindOf, type Mishap, withDetails, withKind } from "./with-kind.ts";

const fresh: Mishap = newBodies.mishap("2026-01-02");
const ledge: Mishap = { ...fresh, what: "ledge", ledge: { depthMm: 17, wall: "outer", passed: "notTried" } };

describe("the kind of a mishap", () => {
  it.each(mishapKinds)("as %s begins a record that the case takes, and says nothing in it", (kind) => {
    const mishap = withKind(fresh, kind);
    expect(mishapPart.body.safeParse(mishap).error).toBeUndefined();
    expect(mishap.what).toBe(kind);
    expect(keptDetails(withKind(mishap, "other"))).toEqual([]);
    const detail = detailOf(kind);
    if (detail !== undefined) expect([mishap[detail] !== undefined, kindOf(detail)]).toEqual([true, kind]);
  });

  it("keeps what was said of another kind, and tells of it", () => {
    const block = withKind(ledge, "block");
    expect(block.ledge).toEqual(ledge.ledge);
    expect(keptDetails(block)).toEqual(["ledge"]);
    expect(keptDetails(ledge)).toEqual([]);
    // Back again, all stands as it did, and the untouched form between is gone.
    expect(withKind(block, "ledge")).toEqual(ledge);
  });

  it("begins the record of a kind once; what stands there stays", () => {
    expect(withDetails(ledge)).toBe(ledge);
    expect(withDetails({ ...fresh, what: "separatedInstrument" }).separated).toMatchObject({ tipBound: "notKnown" });
    expect(withDetails(fresh)).toBe(fresh);
  });
});
