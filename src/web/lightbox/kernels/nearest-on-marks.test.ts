import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { filmPoint, pixelsBetween, pointBetween } from "./film-point.ts";
import type { Mark } from "./mark-shape.ts";
import { hitAt, nearestOnLine } from "./nearest-on-marks.ts";

const trace: Mark = {
  id: partId("mark-one"),
  kind: "mark",
  revision: 1,
  body: {
    shape: "trace",
    film: "film-one",
    polarity: "dark",
    anchors: [
      [100, 100],
      [100, 200],
    ],
    points: [
      [100, 100],
      [100, 130],
      [100, 160],
      [100, 200],
    ],
  },
};
const spot: Mark = {
  id: partId("mark-two"),
  kind: "mark",
  revision: 1,
  body: { shape: "spot", film: "film-one", what: "apex", at: [110, 150] },
};

describe("what is under the pointer", () => {
  it("is a handle only of the mark whose handles are shown", () => {
    expect(hitAt([trace, spot], filmPoint(102, 101), 6, "mark-one")).toEqual({
      on: "handle",
      markId: "mark-one",
      handle: 0,
    });
    expect(hitAt([trace, spot], filmPoint(102, 101), 6)).toEqual({ on: "line", markId: "mark-one", point: 0 });
  });

  it("is the nearest line, with the point of it that is nearest", () => {
    expect(hitAt([trace, spot], filmPoint(103, 158), 6)).toEqual({ on: "line", markId: "mark-one", point: 2 });
    expect(hitAt([trace, spot], filmPoint(109, 151), 6)).toEqual({ on: "line", markId: "mark-two", point: 0 });
  });

  it("is nothing further away than what counts", () => {
    expect(hitAt([trace, spot], filmPoint(300, 300), 6, "mark-one")).toBeUndefined();
  });
});

describe("the nearest place on a line", () => {
  const place = fc
    .tuple(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 500, noNaN: true }))
    .map(([column, row]) => filmPoint(column, row));

  it("is no farther than any of a thousand places tried along it", () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 6 }), place, (line, at) => {
        const found = nearestOnLine(line, at)?.distancePx ?? Number.POSITIVE_INFINITY;
        for (let index = 0; index < line.length; index += 1)
          for (let part = 0; part <= 1; part += 0.02) {
            const start = line[index] ?? at;
            const tried = pixelsBetween(pointBetween(start, line[index + 1] ?? start, part), at);
            expect(found).toBeLessThanOrEqual(tried + 1e-9);
          }
      }),
      { numRuns: 40 },
    );
  });

  it("is nowhere on a line of no points", () => {
    expect(nearestOnLine([], filmPoint(1, 1))).toBeUndefined();
  });
});
