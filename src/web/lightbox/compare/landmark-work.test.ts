import { describe, expect, it } from "vitest";
import { px } from "../../../core/units.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { Landmark } from "./comparison.ts";
import {
  type LandmarkEvent,
  type LandmarkWork,
  landmarkStep,
  noLandmarkWork,
  shownLandmarks,
} from "./landmark-work.ts";

const landmarks: Landmark[] = [
  { before: [100, 100], after: [110, 95] },
  { before: [300, 120], after: [311, 118] },
];
const press = (side: "before" | "after", column: number, row: number): LandmarkEvent => ({
  ...{ is: "pressed", side, at: filmPoint(column, row) },
  reachPx: px(8),
});
const move = (side: "before" | "after", column: number, row: number): LandmarkEvent => ({
  ...{ is: "moved", side, at: filmPoint(column, row) },
});

/** The work after some events, and what was to be recorded on the way. */
function worked(...events: LandmarkEvent[]) {
  let work: LandmarkWork = noLandmarkWork;
  const effects = events.flatMap((event) => {
    const step = landmarkStep(work, event, landmarks);
    work = step.work;
    return step.effect === undefined ? [] : [step.effect];
  });
  return { work, effects };
}
const released: LandmarkEvent = { is: "released" };

describe("a landmark", () => {
  it("is made of a place on one film and one on the other, in whichever order", () => {
    const places = { before: filmPoint(20, 30), after: filmPoint(25, 28) };
    const forth = worked(press("before", 20, 30), released, press("after", 25, 28), released);
    expect(forth.effects).toEqual([{ do: "add", places }]);
    expect(forth.work).toEqual({ chosen: 2 });
    const back = worked(press("after", 25, 28), released, press("before", 20, 30), released);
    expect(back.effects).toEqual([{ do: "add", places }]);
  });

  it("is marked where the pointer is let go, not where it went down", () => {
    const { effects } = worked(
      press("before", 20, 30),
      move("before", 22, 31),
      released,
      press("after", 1, 2),
      released,
    );
    expect(effects).toEqual([{ do: "add", places: { before: filmPoint(22, 31), after: filmPoint(1, 2) } }]);
  });

  it("waits for its mate, and is marked anew by another press on the same film", () => {
    const { work, effects } = worked(press("before", 20, 30), released, press("before", 40, 50), released);
    expect(effects).toEqual([]);
    expect(work).toEqual({ waiting: { side: "before", at: filmPoint(40, 50) } });
  });

  it("is taken hold of by a press near it on its film, and moved on that film alone", () => {
    const { work, effects } = worked(press("after", 113, 96), move("before", 5, 5), move("after", 120, 99), released);
    expect(effects).toEqual([{ do: "move", index: 0, side: "after", at: filmPoint(120, 99) }]);
    expect(work.chosen).toBe(0);
    expect(worked(press("before", 113, 96), released).effects).toEqual([]);
    expect(worked(press("before", 113, 96), released).work.waiting).toBeDefined();
  });

  it("that is pressed and let go where it was is chosen and not moved", () => {
    const { work, effects } = worked(press("before", 302, 119), released);
    expect(effects).toEqual([]);
    expect(work).toMatchObject({ chosen: 1 });
  });

  it("of two within reach is the nearer one", () => {
    const near: Landmark[] = [
      { before: [100, 100], after: [0, 0] },
      { before: [106, 100], after: [9, 9] },
    ];
    expect(landmarkStep(noLandmarkWork, press("before", 105, 100), near).work.held?.index).toBe(1);
    expect(landmarkStep(noLandmarkWork, press("before", 101, 100), near).work.held?.index).toBe(0);
  });
});

describe("taking back", () => {
  it("lets go of what is in the hand first, then of the place that waits, then of the choice", () => {
    const held = worked(press("before", 20, 30), released, press("after", 110, 95), move("after", 130, 95));
    const once = landmarkStep(held.work, { is: "takenBack" }, landmarks).work;
    expect(once).toEqual({ waiting: { side: "before", at: filmPoint(20, 30) }, chosen: 0 });
    const twice = landmarkStep(once, { is: "takenBack" }, landmarks).work;
    expect(twice).toEqual({ chosen: 0 });
    expect(landmarkStep(twice, { is: "takenBack" }, landmarks).work).toEqual({});
  });

  it("of a press leaves what waits", () => {
    const pressed = worked(press("before", 20, 30), released, press("after", 50, 60));
    expect(landmarkStep(pressed.work, { is: "takenBack" }, landmarks).work.waiting).toBeDefined();
    expect(landmarkStep(noLandmarkWork, released, landmarks)).toEqual({ work: noLandmarkWork });
  });
});

it("the held landmark is shown where it is held, the others where they stand", () => {
  const { work } = worked(press("after", 110, 95), move("after", 131, 90));
  expect(shownLandmarks(landmarks, work)).toEqual([{ before: [100, 100], after: [131, 90] }, landmarks[1]]);
  expect(shownLandmarks(landmarks, noLandmarkWork)).toBe(landmarks);
  expect(landmarkStep(work, { is: "chosen", index: undefined }, landmarks).work.chosen).toBeUndefined();
});
