import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { markPart } from "../../../record/parts/mark.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import { markInHand, moveAtRest, movePathsWanted, stepMove } from "./move-tool.ts";
import type { ToolEvent } from "./tool-step.ts";
import { after, moveTo, notYet, pressAt, pressTwiceAt, releaseAt, worldWith } from "./tool-world-for-tests.ts";
import { pathsWanted } from "./tools.ts";

const film = "film-one";
const trace: Mark = {
  id: partId("mark-trace"),
  kind: "mark",
  revision: 3,
  body: {
    ...{ shape: "trace", film, polarity: "dark", canal: "MB1" },
    anchors: [
      [100, 100],
      [120, 200],
      [100, 300],
    ],
    points: [
      [100, 100],
      [115, 150],
      [120, 200],
      [115, 250],
      [100, 300],
    ],
  },
};
const distance: Mark = {
  id: partId("mark-distance"),
  kind: "mark",
  revision: 1,
  body: { shape: "distance", film, what: "", from: [400, 100], to: [500, 100] },
};
const marks = [trace, distance];
const world = worldWith({ marks, chosen: trace.id });
const run = (events: readonly ToolEvent[], seen = world) =>
  after(moveAtRest, events, (state, event) => stepMove(state, event, seen));

describe("moving the film", () => {
  it("pushes it by each step of the hand", () => {
    expect(run([pressAt(700, 700), moveTo(710, 690), moveTo(720, 690), releaseAt(720, 690)]).effects).toEqual([
      { do: "pushed", by: { x: 10, y: -10 } },
      { do: "pushed", by: { x: 10, y: 0 } },
    ]);
  });

  it("lets go of the chosen mark with a press beside everything", () => {
    expect(run([pressAt(700, 700), releaseAt(700, 700)]).effects).toEqual([
      { do: "chosen", markId: undefined, handle: undefined },
    ]);
  });

  it("chooses a mark by its line", () => {
    expect(run([pressAt(450, 102), releaseAt(450, 102)]).effects).toEqual([
      { do: "chosen", markId: distance.id, handle: undefined },
    ]);
  });
});

describe("moving an anchor of a course", () => {
  it("looks for the course on both its sides again and records it at the end", () => {
    const { effects } = run([pressAt(121, 200), moveTo(150, 210), releaseAt(150, 210)]);
    expect(effects[0]).toEqual({ do: "chosen", markId: trace.id, handle: 1 });
    expect(effects[1]).toMatchObject({
      do: "reshaped",
      mark: trace,
      body: {
        canal: "MB1",
        anchors: [
          [100, 100],
          [150, 210],
          [100, 300],
        ],
      },
    });
    expect(markPart.body.safeParse(Reflect.get(Object(effects[1]), "body")).success).toBe(true);
  });

  it("wants paths from the two fixed neighbours only", () => {
    const { state } = run([pressAt(121, 200)]);
    expect(movePathsWanted(state)).toEqual([filmPoint(100, 100), filmPoint(100, 300)]);
    expect(pathsWanted(state)).toHaveLength(2);
    expect(movePathsWanted(run([pressAt(100, 100)]).state)).toEqual([filmPoint(120, 200)]);
  });

  it("waits for the paths after it was let go, then records", () => {
    const blind = worldWith({ marks, chosen: trace.id, find: () => notYet });
    const { state, effects } = run([pressAt(121, 200), moveTo(150, 210), releaseAt(150, 210)], blind);
    expect(effects).toHaveLength(1);
    expect(stepMove(state, moveTo(500, 500), blind).state).toBe(state);
    expect(stepMove(state, { is: "pathsFound" }, world).effects).toMatchObject([{ do: "reshaped" }]);
  });

  it("shows the course in the hand while it moves", () => {
    const { state } = run([pressAt(121, 200), moveTo(150, 210)]);
    expect(markInHand(state)).toMatchObject({
      markId: trace.id,
      body: {
        anchors: [
          [100, 100],
          [150, 210],
          [100, 300],
        ],
      },
    });
  });

  it("is no change without a step, and none after Escape", () => {
    expect(run([pressAt(121, 200), releaseAt(121, 200)]).effects).toHaveLength(1);
    expect(run([pressAt(121, 200), moveTo(150, 210), { is: "cancelled" }, releaseAt(150, 210)]).effects).toHaveLength(
      1,
    );
  });

  it("needs the mark to be chosen first, so that no course is bent by chance", () => {
    const unchosen = worldWith({ marks });
    expect(run([pressAt(120, 200), moveTo(150, 210), releaseAt(150, 210)], unchosen).effects).toEqual([
      { do: "chosen", markId: trace.id, handle: undefined },
    ]);
  });
});

describe("an anchor put into a course", () => {
  it("stands where the line was pressed twice, and the course keeps its points", () => {
    const { effects } = run([pressTwiceAt(114, 150)]);
    expect(effects).toMatchObject([
      {
        do: "reshaped",
        body: {
          anchors: [
            [100, 100],
            [115, 150],
            [120, 200],
            [100, 300],
          ],
          points: trace.body.shape === "trace" ? trace.body.points : [],
        },
      },
      { do: "chosen", markId: trace.id, handle: 1 },
    ]);
  });
});

describe("moving a place of another mark", () => {
  it("records the mark with that place moved", () => {
    const seen = worldWith({ marks, chosen: distance.id });
    const { effects } = run([pressAt(500, 101), moveTo(510, 120), releaseAt(510, 120)], seen);
    expect(effects[1]).toMatchObject({ do: "reshaped", mark: distance, body: { from: [400, 100], to: [510, 120] } });
  });
});
