import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { canalNamesOf, isCanalName, namesToOffer } from "./canal-names.ts";
import type { Mark } from "./mark-shape.ts";

const trace = (canal: string): Mark => ({
  id: partId(`mark-${canal}`),
  kind: "mark",
  revision: 1,
  body: {
    shape: "trace",
    film: "film-one",
    polarity: "dark",
    canal,
    anchors: [
      [0, 0],
      [1, 1],
    ],
    points: [
      [0, 0],
      [1, 1],
    ],
  },
});

describe("the names of canals", () => {
  it("are the root's, numbered where it has more than one, or those that the anatomy gives", () => {
    const roots = [
      { name: "MB", levels: [2, 1] },
      { name: "DB", levels: [1] },
      { name: "P", levels: [2], orifices: ["PM", "PD"] },
      { name: "D", levels: [{ canals: 2, cShape: "C2" as const }] },
    ];
    expect(canalNamesOf({ roots, foundBy: [] })).toEqual(["MB1", "MB2", "DB", "PM", "PD", "D1", "D2"]);
  });

  it("are offered with the untraced first", () => {
    expect(namesToOffer(["MB1", "MB2", "DB"], [trace("MB1")])).toEqual(["MB2", "DB", "MB1"]);
  });

  it("are accepted as the trade writes them, and not as a sentence", () => {
    expect(["MB2", "P", "ML"].map(isCanalName)).toEqual([true, true, true]);
    expect(["", "MB 2", "2MB", "the second mesiobuccal"].map(isCanalName)).toEqual([false, false, false, false]);
  });
});
