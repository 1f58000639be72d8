import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { isCanalName, namesToOffer } from "./canal-names.ts";
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
  it("are offered with the untraced first", () => {
    expect(namesToOffer(["MB1", "MB2", "DB"], [trace("MB1")])).toEqual(["MB2", "DB", "MB1"]);
  });

  it("are accepted as the trade writes them, and not as a sentence", () => {
    expect(["MB2", "P", "ML"].map(isCanalName)).toEqual([true, true, true]);
    expect(["", "MB 2", "2MB", "the second mesiobuccal"].map(isCanalName)).toEqual([false, false, false, false]);
  });
});
