import { describe, expect, it } from "vitest";
import { entry } from "./case-for-tests.ts";
import { courseRead, numberInSpace, tracesOf, viewsOf } from "./course-reading.ts";

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

  it("gives a number of the curvature with the interval that stands beside the entry's others", () => {
    const output = { curvature: { pruettDeg: 60 }, intervals: { pruettDeg: { low: 51, high: 77, level: 0.95 } } };
    expect(numberInSpace(entry("DL a b", { output }), "pruettDeg", "curvature.pruettDeg")).toEqual({
      value: 60,
      interval: { low: 51, high: 77, level: 0.95 },
    });
    expect(numberInSpace(entry("DL a b", { output: { lengthMm: 11 } }), "lengthMm")).toEqual({ value: 11 });
    expect(numberInSpace(entry("DL a b", { output }), "lengthMm")).toBeUndefined();
  });
});
