import { describe, expect, it } from "vitest";
import type { Part } from "./parts.ts";
import { strayCanals } from "./stray-canals.ts";

const part = (id: string, kind: string, body: unknown): Part => ({ id, kind, revision: 1, body }) as Part;
const roots = part("roots", "anatomy", { roots: [{ name: "M", levels: [2], orifices: ["MB", "ML"] }], foundBy: [] });
const visit = (id: string, ...canals: string[]) => part(id, "visit", { canals: canals.map((canal) => ({ canal })) });

describe("canals that no root holds", () => {
  it("are told with what names them, each part once", () => {
    const parts = [
      roots,
      visit("a", "MB", "MM", "MM"),
      visit("b", "MM"),
      part("m", "mishap", { canal: "D" }),
      part("t", "mark", { shape: "trace", canal: "MM" }),
      part("u", "mark", { shape: "crownRoot", root: "X" }),
      part("v", "mark", { shape: "trace" }),
      part("p", "pairing", { canal: "ML" }),
      part("f", "findings", { existing: [{ canal: "D", is: "filled" }] }),
      part("g", "findings", {}),
    ];
    expect(strayCanals(parts)).toEqual([
      {
        canal: "MM",
        namedBy: [
          { kind: "visit", count: 2 },
          { kind: "mark", count: 1 },
        ],
      },
      {
        canal: "D",
        namedBy: [
          { kind: "mishap", count: 1 },
          { kind: "findings", count: 1 },
        ],
      },
    ]);
  });

  it("are also those that are said to have come filled", () => {
    const filled = part("roots", "anatomy", { roots: [{ name: "D", levels: [1] }], foundBy: [], filledBefore: ["P"] });
    expect(strayCanals([filled])).toEqual([{ canal: "P", namedBy: [{ kind: "anatomy", count: 1 }] }]);
  });

  it("are none while no roots are recorded, and none where all are held", () => {
    expect(strayCanals([visit("a", "MB")])).toEqual([]);
    expect(strayCanals([roots, visit("a", "MB", "ML")])).toEqual([]);
  });
});
