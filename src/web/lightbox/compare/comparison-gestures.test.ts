import { describe, expect, it } from "vitest";
import { part } from "../../../../test/sample-case.ts";
import { gestureSchema } from "../../../record/change.ts";
import { partTypes } from "../../../record/parts.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { Comparison, Landmark } from "./comparison.ts";
import {
  comparisonBegun,
  comparisonTakenAway,
  hardPartOutlined,
  hardPartTakenOff,
  landmarkAdded,
  landmarkMoved,
  landmarkNamed,
  landmarkTakenOff,
} from "./comparison-gestures.ts";

const landmarks: Landmark[] = [
  { before: [1, 2], after: [3, 4], name: "cusp" },
  { before: [5, 6], after: [7, 8] },
];
const comparison = part("comparison", "pair-1", {
  before: "film-1",
  after: "film-2",
  landmarks,
  note: "kept",
}) as Comparison;

/** The body that a gesture writes, as the record takes it in. */
function written(gesture: ReturnType<typeof landmarkAdded>) {
  const { operations, words } = gestureSchema.parse(gesture);
  const [operation] = operations;
  if (operation?.op !== "put") throw new Error("writes nothing");
  expect(operation.baseRevision).toBe(1);
  return { words, ...partTypes.comparison.body.parse(operation.body) };
}

describe("gestures of a comparison", () => {
  it("begin it with two films and no landmark, and take it away", () => {
    const begun = comparisonBegun("pair-2", { before: "film-1", after: "film-2" }, "day 0 and day 210");
    expect(begun.words).toBe("Comparison of day 0 and day 210 begun");
    expect(begun.operations).toEqual([
      expect.objectContaining({
        op: "put",
        id: "pair-2",
        baseRevision: 0,
        body: { before: "film-1", after: "film-2", landmarks: [] },
      }),
    ]);
    expect(comparisonTakenAway(comparison, "day 0 and day 210").operations).toEqual([
      { op: "remove", id: "pair-1", kind: "comparison", baseRevision: 1 },
    ]);
  });

  it("outline parts to go by and take them off, and leave no empty list behind", () => {
    const corners = [filmPoint(0, 0), filmPoint(10.004, 0), filmPoint(10, 8)];
    const { words, ...body } = written(hardPartOutlined(comparison, corners));
    const outlined = [
      [0, 0],
      [10, 0],
      [10, 8],
    ];
    expect(words).toBe("Part 1 to go by outlined");
    expect(body).toEqual({ ...comparison.body, hardParts: [outlined] });
    const one: Comparison = { ...comparison, body };
    const two = written(hardPartOutlined(one, [filmPoint(20, 20), ...corners.slice(1)]));
    expect(two.words).toBe("Part 2 to go by outlined");
    expect(two.hardParts?.map((part) => part[0])).toEqual([
      [0, 0],
      [20, 20],
    ]);
    const both: Comparison = { ...comparison, body: { ...comparison.body, hardParts: two.hardParts } };
    const left = written(hardPartTakenOff(both, 0));
    expect(left.words).toBe("Part 1 to go by taken off");
    expect(left.hardParts).toEqual([two.hardParts?.[1]]);
    const { words: _said, ...bare } = written(hardPartTakenOff(one, 0));
    expect(bare).toEqual(comparison.body);
  });

  it("add, move, name and take off landmarks, and leave everything else as it was", () => {
    const added = written(landmarkAdded(comparison, { before: filmPoint(9.004, 10), after: filmPoint(11, 12) }));
    expect(added).toEqual({
      ...comparison.body,
      words: "Landmark 3 marked on both films",
      landmarks: [...landmarks, { before: [9, 10], after: [11, 12] }],
    });
    const moved = written(
      landmarkMoved(comparison, { index: 0, side: "after", at: filmPoint(30, 40) }, "the film of day 210"),
    );
    expect(moved.words).toBe("Landmark 1 moved on the film of day 210");
    expect(moved.landmarks).toEqual([{ before: [1, 2], after: [30, 40], name: "cusp" }, landmarks[1]]);
    expect(written(landmarkNamed(comparison, 1, "crest")).landmarks[1]).toEqual({ ...landmarks[1], name: "crest" });
    expect(written(landmarkNamed(comparison, 0, "")).landmarks[0]).toEqual({ before: [1, 2], after: [3, 4] });
    expect(written(landmarkTakenOff(comparison, 0)).landmarks).toEqual([landmarks[1]]);
  });

  it("stay within what the record takes as words", () => {
    expect(written(landmarkNamed(comparison, 0, "x".repeat(300))).words.length).toBeLessThanOrEqual(200);
  });
});
