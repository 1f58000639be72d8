import { describe, expect, it } from "vitest";
import { caseId, ledgerEntryId } from "../../../core/ids.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import {
  besideNumbers,
  entryOf,
  measuredCourse,
  numberOf,
  sampleAt,
  whyAbsent,
  withoutSide,
} from "./ledger-reading.ts";

const interval = { low: 18.6, high: 19.8, level: 0.95 };
const entry: LedgerEntry = {
  ...{
    id: ledgerEntryId("e1"),
    caseId: caseId("c1"),
    subject: "curvature of mark-one",
    topic: "curvature",
    topicVersion: 1,
  },
  ...{ input: {}, inputPaths: [], at: "2026-01-01T00:00:00Z" },
  output: {
    ...{ lengthMm: 19.2, maxCurvaturePerMm: 0.2, intervals: { lengthMm: interval } },
    profile: [
      { sMm: 0, curvaturePerMm: 0 },
      { sMm: 10, curvaturePerMm: -0.2 },
    ],
    notComputed: [{ name: "weineDeg", why: "too short" }],
    cautions: ["one scale only"],
  },
};
const refused: LedgerEntry = { ...entry, output: undefined, refused: ["the film has no scale"] } as LedgerEntry;

describe("reading the ledger", () => {
  it("finds the entry about a subject", () => {
    expect(entryOf([entry], "curvature", "mark-one")).toBe(entry);
    expect(entryOf([entry], "curvature", "mark-two")).toBeUndefined();
    expect(entryOf([entry], "calibrate", "mark-one")).toBeUndefined();
  });

  it("gives a number with its own interval and never with another's", () => {
    expect(numberOf(entry, "lengthMm")).toEqual({ value: 19.2, interval });
    expect(numberOf(entry, "maxCurvaturePerMm")).toEqual({ value: 0.2 });
    expect(numberOf(entry, "weineDeg")).toBeUndefined();
    expect(numberOf(undefined, "lengthMm")).toBeUndefined();
    const scale = { ...entry, output: { mmPerPx: { column: 0.04, row: 0.04 }, sigmaMmPerPx: 0.001, interval } };
    expect(numberOf(scale, "mmPerPx.column")).toEqual({ value: 0.04, interval });
    expect(numberOf(scale, "sigmaMmPerPx")).toEqual({ value: 0.001 });
    const stop = {
      ...entry,
      output: { recommendedMm: 18.7, interval: { low: 1, high: 2, level: 0.95 }, recommendedInterval: interval },
    };
    expect(numberOf(stop, "recommendedMm")).toEqual({ value: 18.7, interval });
  });

  it("says why a number is absent: one value, or all of them", () => {
    expect(whyAbsent(entry, "weineDeg")).toBe("too short");
    expect(whyAbsent(refused, "lengthMm")).toBe("the film has no scale");
    const faulty = { ...refused, refused: ["known[0].to: it coincides with from", "no scale: mark one"] };
    expect(whyAbsent(faulty, "lengthMm")).toBe("it coincides with from; no scale: mark one");
    expect(whyAbsent(entry, "lengthMm")).toBeUndefined();
  });

  it("gives what stands beside the numbers", () => {
    expect(besideNumbers(entry).cautions).toEqual(["one scale only"]);
    expect(besideNumbers(refused)).toEqual({ cautions: [], notComputed: [] });
  });

  it("reads a course, and none where the topic refused", () => {
    expect(measuredCourse(entry)?.profile).toHaveLength(2);
    expect(measuredCourse(refused)).toBeUndefined();
  });

  it("reads a course on a film without a scale: its bends, and no profile", () => {
    const bends = [{ angleDeg: 31, side: "left", fromShare: 0.4, toShare: 1 }];
    expect(measuredCourse({ ...entry, output: { pruettDeg: 31, bends } })).toMatchObject({ profile: [], bends });
  });

  it("shows a turn to either side as tightness", () => {
    expect(withoutSide([{ sMm: 3, curvaturePerMm: -0.2 }])).toEqual([{ sMm: 3, curvaturePerMm: 0.2 }]);
  });

  it("finds the sample at a share of the way, its ends included", () => {
    expect([0, 0.5, 1, -1, 2].map((share) => sampleAt(["a", "b", "c"], share))).toEqual(["a", "b", "c", "a", "c"]);
    expect(sampleAt([], 0.5)).toBeUndefined();
  });
});
