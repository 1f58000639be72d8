import { describe, expect, it } from "vitest";
import { markPart } from "../../../record/parts/mark.ts";
import { filmPoint } from "./film-point.ts";
import { handlesOf, lineOf, type MarkBody, markName, measureOfBody, withHandleAt } from "./mark-shape.ts";

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

  it("is taken hold of by cusp, level and apex, by both ends of a wall, by the anchors of a fragment", () => {
    const axis = {
      ...({ shape: "crownRoot", film, levelIs: "boneCrest" } as const),
      ...({ crown: [0, 0], level: [4, 30], apex: [0, 90] } satisfies Record<string, [number, number]>),
    };
    expect(handlesOf(axis)).toEqual([filmPoint(0, 0), filmPoint(4, 30), filmPoint(0, 90)]);
    for (const [index, place] of (["crown", "level", "apex"] as const).entries())
      expect(withHandleAt(axis, index, filmPoint(7, 8))).toEqual({ ...axis, [place]: [7, 8] });
    expect(measureOfBody(axis)).toMatchObject({ kind: "crownRoot", foot: [0, 30] });
    const wall = { shape: "wall", film, side: "distal", from: [1, 2], to: [3, 4] } as const satisfies MarkBody;
    expect(withHandleAt(wall, 1, filmPoint(9, 9))).toMatchObject({ from: [1, 2], to: [9, 9] });
    const line: [number, number][] = [
      [0, 0],
      [5, 40],
    ];
    const fragment: MarkBody = { shape: "fragment", film, canal: "MB1", anchors: line, points: line };
    expect(handlesOf(fragment)).toHaveLength(2);
    expect([wall, fragment, axis].map((body) => markName(body))).toEqual([
      "distal wall",
      "fragment in MB1",
      "crown and root",
    ]);
    expect(markName({ ...spot, is: "apex", canal: "MB1" })).toBe("apex MB1");
    expect(markName({ ...spot, what: "ledge", is: "level", canal: "P" })).toBe("ledge in P");
    expect(markName({ ...spot, what: "", is: "fillingEnd" })).toBe("filling's end");
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
