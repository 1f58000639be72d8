import { describe, expect, it } from "vitest";
import { entry } from "./case-for-tests.ts";
import { numberInSpace } from "./course-reading.ts";

describe("a number of a course in space", () => {
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
