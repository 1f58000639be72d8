import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { markPart } from "../../../record/parts/mark.ts";
import { type BoundBody, boundTo } from "./film-gestures.ts";
import type { Mark } from "./mark-shape.ts";
import { marksByOwner } from "./marks-by-owner.ts";
import { ownerQuestion, saidOfMark } from "./owner-question.ts";

const film = "film-1";
const spot = { film, shape: "spot" as const, what: "", at: [1, 2] as [number, number] };
const ends = { from: [1, 1] as [number, number], to: [9, 1] as [number, number] };
const axis = {
  ...{ film, shape: "crownRoot" as const, levelIs: "boneCrest" as const },
  ...{ crown: [0, 0] as [number, number], level: [0, 5] as [number, number], apex: [0, 9] as [number, number] },
};
const line = {
  anchors: [
    [0, 0],
    [0, 9],
  ] as [number, number][],
  points: [
    [0, 0],
    [0, 3],
    [0, 6],
    [0, 9],
  ] as [number, number][],
};
const bodies: BoundBody[] = [
  { ...spot, is: "apex" },
  { ...spot, is: "fillingEnd" },
  { ...spot, is: "level" },
  { film, shape: "wall", ...ends },
  { film, shape: "fragment", ...line },
  { film, shape: "trace", polarity: "dark", ...line },
  axis,
];

describe("the question about a drawn mark", () => {
  it.each(bodies)("%# has words of its own, and every answer to it is a mark that the record takes", (body) => {
    expect(ownerQuestion(body)).toMatch(/^Which (canal|root).*\?$/);
    const said = saidOfMark(body);
    for (const answer of Object.keys(said?.answers ?? { "start of bend": "" })) {
      const answered = boundTo(said?.saying(answer) ?? body, "MB1");
      expect(markPart.body.safeParse(answered).error).toBeUndefined();
      expect(Object.values(answered)).toContain("MB1");
    }
  });

  it("keeps what is said, and takes it back", () => {
    const wall = saidOfMark({ film, shape: "wall", ...ends, side: "mesial" });
    expect(wall?.value).toBe("mesial");
    expect(wall?.saying("distal")).toMatchObject({ side: "distal" });
    expect(wall?.saying("")).not.toHaveProperty("side");
    expect(saidOfMark({ ...spot, is: "fillingEnd" })?.saying("beyond")).toMatchObject({ lies: "beyond" });
    expect(saidOfMark({ ...spot, is: "level" })?.saying(" ledge ")).toMatchObject({ what: "ledge" });
    expect(saidOfMark(axis)?.saying("cementoEnamelJunction")).toMatchObject({ levelIs: "cementoEnamelJunction" });
    expect(saidOfMark({ ...spot, is: "apex" })).toBeUndefined();
  });

  it("gives an apex its name in words too, and takes both away", () => {
    const named = boundTo({ ...spot, is: "apex" }, "MB1");
    expect(named).toMatchObject({ what: "apex MB1", canal: "MB1" });
    expect(boundTo(named, "")).toEqual({ ...spot, is: "apex", what: "apex" });
    expect(boundTo(axis, "MB")).toMatchObject({ root: "MB" });
  });
});

it("marks are listed canal by canal, each canal's course first, what belongs to none last", () => {
  const mark = (id: string, body: Mark["body"]): Mark => ({ id: partId(id), kind: "mark", revision: 1, body });
  const marks = [
    mark("a", { film, shape: "distance", what: "", ...ends }),
    mark("b", { ...spot, is: "fillingEnd", canal: "MB2" }),
    mark("c", { film, shape: "trace", polarity: "dark", canal: "MB2", ...line }),
    mark("d", { ...axis, root: "MB" }),
  ];
  expect(marksByOwner(marks).map(({ owner, marks: of }) => [owner, ...of.map(({ id }) => id)])).toEqual([
    ["MB", "d"],
    ["MB2", "c", "b"],
    ["", "a"],
  ]);
});
