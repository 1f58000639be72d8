import { describe, expect, it } from "vitest";
import { fileItem, instrumentItem } from "../../../record/cabinet/cabinet-for-tests.ts";
import type { CabinetView } from "../../../server/api.ts";
import { fileState } from "./file-state.ts";

type Tally = CabinetView["files"][string];
const tally = (more: Partial<Tally> = {}): Tally => ({
  ...{ uses: 1, canals: 3, cases: 1, sterilisations: 0, turnsNet: 100, turnsSwept: 100, untimed: 0, over: [], ...more },
});
const file = fileItem("f-1", "shaper");
const viewWith = (own: Tally | undefined, limits = {}): Pick<CabinetView, "items" | "files"> => ({
  items: [instrumentItem("shaper", { limits }), file],
  files: own ? { "f-1": own } : {},
});

describe("how a counted file stands", () => {
  it("is in use without limits, below them, and while it is not counted yet", () => {
    for (const view of [viewWith(tally()), viewWith(tally(), { canals: 4 }), viewWith(undefined, { canals: 3 })])
      expect(fileState(file, view)).toEqual({ is: "open", says: [] });
  });

  it("is at a limit that one more would pass", () => {
    expect(fileState(file, viewWith(tally(), { canals: 3 }))).toEqual({
      is: "atLimit",
      says: ["3 canals, at the limit"],
    });
  });

  it("is over a limit by so much, with those that it is at beside", () => {
    const over = [{ name: "turns" as const, limit: 60, found: 100 }];
    expect(fileState(file, viewWith(tally({ over }), { turns: 60, uses: 1 }))).toEqual({
      ...{ is: "overLimit", says: ["100 turns, 40 above the limit of 60", "1 visit in use, at the limit"] },
    });
  });

  it("once discarded says when and why, whatever its counts", () => {
    const gone = fileItem("f-1", "shaper", true);
    expect(fileState(gone, viewWith(tally(), { canals: 3 }))).toEqual({
      ...{ is: "discarded", says: ["1 Mar 2026: at its limit"] },
    });
  });
});
