import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { filmPoint } from "./film-point.ts";
import type { Mark, MarkBody } from "./mark-shape.ts";
import { drawnSpots, nameWishes } from "./name-wishes.ts";

const film = "film-one";
const mark = (id: string, body: MarkBody): Mark => ({ id: partId(id), kind: "mark", revision: 1, body });
const trace = mark("trace", {
  ...{ shape: "trace", film, polarity: "dark", canal: "MB1" },
  anchors: [
    [100, 100],
    [120, 300],
  ],
  points: [
    [100, 100],
    [120, 300],
  ],
});
const unnamed = mark("unnamed", { shape: "spot", film, what: "", at: [50, 50] });
const spot = mark("spot", { shape: "spot", film, what: "apex", at: [60, 60] });
const outline = mark("outline", {
  shape: "outline",
  film,
  what: "lesion",
  points: [
    [10, 90],
    [40, 20],
    [70, 90],
  ],
});
const known = mark("known", {
  shape: "knownLength",
  film,
  object: "gauge",
  lengthMm: 21,
  from: [200, 10],
  to: [200, 400],
});
const lying = {
  placement: { zoom: 1, centre: filmPoint(200, 200), orientation: { quarterTurns: 0, mirrored: false } },
  pane: { width: 400, height: 400 },
};
const colours = { chosen: "orange", course: "green", length: "white" };

describe("the names on a film", () => {
  it("are wanted by the chosen mark first, then by courses; an unnamed mark wants none", () => {
    const names = nameWishes([unnamed, spot, outline, known, trace], lying, "spot", colours).map(({ text }) => text);
    expect(names).toEqual(["apex", "MB1", "21 mm", "lesion"]);
  });

  it("stand at the apex of a course and at the top of an outline, each in its colour", () => {
    const wishes = nameWishes([trace, outline, known], lying, "trace", colours);
    expect(wishes).toEqual([
      { text: "MB1", near: { x: 120, y: 300 }, fill: "orange" },
      { text: "21 mm", near: { x: 200, y: 10 }, fill: "white" },
      { text: "lesion", near: { x: 40, y: 20 }, fill: "green" },
    ]);
  });

  it("are not wanted for places outside the pane", () => {
    const away = { ...lying, placement: { ...lying.placement, centre: filmPoint(2000, 2000) } };
    expect(nameWishes([trace, outline, known, spot], away, undefined, colours)).toEqual([]);
    expect(drawnSpots([trace, outline], away)).toEqual([]);
  });

  it("keep off the lines, which are looked at here and there", () => {
    expect(drawnSpots([trace, known], lying)).toEqual([
      { x: 100, y: 100 },
      { x: 200, y: 10 },
    ]);
  });
});
