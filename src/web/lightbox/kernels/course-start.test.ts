import { describe, expect, it } from "vitest";
import { partId } from "../../../core/ids.ts";
import { courseBegins, startOfCourse, usualStart } from "./course-start.ts";
import type { Film } from "./film-name.ts";
import type { Mark } from "./mark-shape.ts";

const film = (purpose: Film["body"]["purpose"]): Film => ({
  ...{ id: partId("film-1"), kind: "film", revision: 1 },
  body: {
    ...{ hash: "0".repeat(64), columns: 10, rows: 10, bitsStored: 8, takenOn: "2026-01-14", purpose, caption: "" },
    ...{ receptor: "unknown", uRunsTo: "unknown" },
    technical: { sourceFormat: "png", sourceSha256: "0".repeat(64), wasColour: false, lossy: false, inverted: false },
  },
});
const body = {
  ...{ shape: "trace" as const, film: partId("film-1"), canal: "MB1", polarity: "dark" as const },
  anchors: [[0, 0] as [number, number], [0, 9] as [number, number]],
  points: [0, 3, 6, 9].map((row): [number, number] => [0, row]),
};
const mark: Mark = { id: partId("mark-1"), kind: "mark", revision: 4, body };

describe("where a course begins", () => {
  it.each([
    ["diagnostic", "orifice"],
    ["angled", "orifice"],
    ["workingLength", "referencePoint"],
    ["masterCone", "referencePoint"],
    ["final", "orifice"],
    ["recall", "orifice"],
    ["other", "orifice"],
  ] as const)("on a %s film is usually the %s", (purpose, start) => {
    expect(usualStart(film(purpose))).toBe(start);
    expect(startOfCourse(body, film(purpose))).toBe(start);
  });

  it("is what the course itself says", () => {
    expect(startOfCourse({ ...body, from: "orifice" }, film("workingLength"))).toBe("orifice");
    expect(startOfCourse({ ...body, from: "referencePoint" }, film("diagnostic"))).toBe("referencePoint");
  });

  it("is changed by one gesture that leaves the points alone", () => {
    const gesture = courseBegins(mark, body, "referencePoint", { film: film("diagnostic"), presentedOn: "2026-01-01" });
    expect(gesture).toEqual({
      words: "MB1 begins at the reference point on the film of day 13",
      operations: [
        { op: "put", id: "mark-1", kind: "mark", baseRevision: 4, body: { ...body, from: "referencePoint" } },
      ],
    });
  });
});
