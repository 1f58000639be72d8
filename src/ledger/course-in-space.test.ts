import { describe, expect, it } from "vitest";
import { twoViewTopic } from "../core/radiograph/two-view-topic.ts";
import { answer } from "../core/topic.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { courseRead, isTooNear, referenceOf, tracesOf, viewsOf } from "./course-in-space.ts";

const entry = (about: string, more: Partial<Pick<LedgerEntry, "output" | "refused">>): LedgerEntry =>
  ({
    ...{ id: "entry", caseId: "case", subject: `twoView of ${about}`, topic: "twoView", topicVersion: 2, input: {} },
    ...{ inputPaths: [], at: "2025-09-02T13:00:00Z", ...more },
  }) as unknown as LedgerEntry;

const course = [
  [0, 0, 0],
  [0, 1, 10],
];

describe("an entry about a course in space", () => {
  it("gives the course with what stands beside it, and is none where it refused or tells a side alone", () => {
    expect(courseRead(entry("DL a b", { output: { course, side: "buccal", anglesDeg: [0, 25] } }))).toMatchObject({
      ...{ course, anglesDeg: [0, 25], levels: [], turn: [], receptorRead: "turnsWithBeam" },
    });
    expect(courseRead(entry("DL a b", { refused: ["views: no"] }))).toBeUndefined();
    expect(courseRead(entry("DL a b", { output: { side: "buccal" } }))).toBeUndefined();
    expect(courseRead(undefined)).toBeUndefined();
  });

  it("names its canal and its films in order", () => {
    expect(viewsOf(entry("MB2 film-1 film-2 film-3", {}))).toEqual({
      canal: "MB2",
      films: ["film-1", "film-2", "film-3"],
    });
  });

  it("names its traces in the order of the views, and not the scales and landmarks beside them", () => {
    const inputPaths = [
      { input: "views[1].points", record: "trace-2/points" },
      { input: "views[0].points", record: "trace-1/points" },
      { input: "views[0].points", record: "ledger/abc/mmPerPx" },
      { input: "views[0].landmarks.cusp", record: "spot-1/at" },
    ];
    expect(tracesOf({ inputPaths })).toEqual(["trace-1", "trace-2"]);
  });

  it("names the landmark that it tells the canal's place by", () => {
    const views = [{ landmarks: { "apex MB": [1, 2], cusp: [3, 4] } }, { landmarks: { cusp: [3, 5], other: [0, 0] } }];
    expect(referenceOf({ input: { views } })).toBe("cusp");
    expect(referenceOf({ input: { views, reference: "apex MB" } })).toBe("apex MB");
    expect(referenceOf({ input: { views: [views[0], {}] } })).toBeUndefined();
    expect(referenceOf({ input: {} })).toBeUndefined();
  });

  it("says that the films stand too near to each other, as the sum itself says it", () => {
    const bent = (a: number) =>
      Array.from({ length: 12 }, (_, at): [number, number] => [at > 6 ? (at - 6) * a : 0, at]);
    const output = (angle: number) =>
      answer(twoViewTopic, {
        views: [
          { horizontalAngleDeg: 0, points: bent(0) },
          { horizontalAngleDeg: angle, points: bent(Math.sin((angle * Math.PI) / 180)) },
        ],
        sigmaMm: 0.05,
      });
    for (const [angle, near] of [
      [6, true],
      [25, false],
    ] as const) {
      const read = courseRead(entry("DL a b", { output: output(angle) }));
      expect(read && isTooNear(read)).toBe(near);
    }
  });
});
