import { describe, expect, it } from "vitest";
import { markPart } from "../../../record/parts/mark.ts";
import { filmPoint } from "./film-point.ts";
import { handlesOf, lineOf, type MarkBody, markName, withHandleAt } from "./mark-shape.ts";

const film = "film-one";
const distance = { shape: "distance", film, what: "", from: [1, 2], to: [3, 4] } as const satisfies MarkBody;
const known = {
  shape: "knownLength",
  film,
  object: "scaleBar",
  lengthMm: 2,
  from: [1, 2],
  to: [3, 4],
} as const satisfies MarkBody;
const spot = { shape: "spot", film, what: "apex", at: [5, 6] } as const satisfies MarkBody;
const outline: Exclude<MarkBody, { shape: "trace" }> = {
  shape: "outline",
  film,
  what: "lesion",
  points: [
    [0, 0],
    [9, 0],
    [9, 9],
  ],
};

describe("the shape of a mark", () => {
  it("gives the places to take hold of", () => {
    expect(handlesOf(distance)).toEqual([filmPoint(1, 2), filmPoint(3, 4)]);
    expect(handlesOf(spot)).toEqual([filmPoint(5, 6)]);
    expect(handlesOf(outline)).toHaveLength(3);
  });

  it("closes an outline", () => {
    expect(lineOf(outline).at(-1)).toEqual(filmPoint(0, 0));
  });

  it("stays a mark that the record accepts when a place is moved", () => {
    for (const body of [distance, known, spot, outline]) {
      const moved = withHandleAt(body, 0, filmPoint(77.123, 8));
      expect(markPart.body.safeParse(moved).success).toBe(true);
      expect(handlesOf(moved)[0]).toEqual(filmPoint(77.12, 8));
    }
    expect(handlesOf(withHandleAt(distance, 1, filmPoint(7, 7)))).toEqual([filmPoint(1, 2), filmPoint(7, 7)]);
  });

  it("has a name in every shape", () => {
    expect(markName(distance)).toBe("distance");
    expect(markName({ ...distance, what: "crown to apex" })).toBe("crown to apex");
    expect(markName(known)).toBe("known length of 2 mm");
    expect(markName(spot)).toBe("apex");
    expect(markName(outline)).toBe("lesion");
    expect(
      markName({
        shape: "trace",
        film,
        polarity: "dark",
        canal: "MB1",
        anchors: [
          [0, 0],
          [1, 1],
        ],
        points: [
          [0, 0],
          [1, 1],
        ],
      }),
    ).toBe("MB1");
  });
});
