import { describe, expect, it } from "vitest";
import { bendAtBreakSubject, bendSubject, bendTold } from "./bend-told.ts";
import { fractureTold } from "./fracture-told.ts";
import { lifeOfFileSubject, lifeSubject, lifeTold, lifeUntilBreakSubject } from "./life-told.ts";

const told = { basis: { formula: "", assumptions: [], sources: [] }, cautions: [], notComputed: [] };
const band = { low: 1, high: 2 };
const use = { turns: { net: 5, swept: 5 }, peakStrain: 0.03, share: band };
const life = {
  ...{ turns: { net: 10, swept: 10 }, equivalentTurns: band, referenceStrain: 0.07, ratioToReference: band },
  ...{ uses: [use, use], profile: [], over: [], discard: false, ...told },
};
const at = (input: string, record: string) => ({ input, record });
const rows = [
  at("uses[0].seconds", "visit-1/instruments/2/seconds"),
  at("uses[1].seconds", "visit-1/instruments/4/seconds"),
];

describe("the life of an instrument as it is told", () => {
  it("says which row each use stands in, and that uses nothing holds together are taken as one", () => {
    const read = lifeTold({ subject: lifeSubject("visit-1", "25/.06"), inputPaths: rows, output: life });
    expect(read?.uses.map(({ row }) => row)).toEqual(["visit-1/instruments/2", "visit-1/instruments/4"]);
    expect(read?.takenAsOne).toMatch(/no file is counted/);
  });

  it("takes nothing as one where a file is counted, or where there is one use alone", () => {
    const counted = [...rows, at("uses[0]", "visit-1/instruments/2/file")];
    const subject = lifeUntilBreakSubject("mishap-1");
    expect(lifeTold({ subject, inputPaths: counted, output: life })?.takenAsOne).toBeUndefined();
    expect(lifeTold({ subject, inputPaths: rows, output: life })?.takenAsOne).toBeDefined();
    expect(
      lifeTold({ subject: lifeOfFileSubject("file-7"), inputPaths: rows, output: life })?.takenAsOne,
    ).toBeUndefined();
    expect(lifeTold({ subject, inputPaths: rows, output: { ...life, uses: [use] } })?.takenAsOne).toBeUndefined();
  });

  it("is nothing where it was refused or stands in an older form", () => {
    for (const output of [undefined, { turns: 3 }])
      expect(lifeTold({ subject: "", inputPaths: [], output })).toBeUndefined();
    expect(lifeTold(undefined)).toBeUndefined();
  });
});

describe("the bend of an instrument as it is told", () => {
  const output = {
    ...{ peakStrain: 0.04, fromTipMm: 6, fromOrificeMm: 4.5, radiusMm: 6, turnDeg: 40, profile: [] },
    ...{ overTenPercent: false, intervals: {}, bounds: [], ...told },
  };
  const points = [0, 1, 2, 3].map((y) => [0, y]);
  const input = { course: { points, sigmaMm: 0.1 }, tipDepthMm: 10.5 };
  const onFilm = [at("course.points", "t-1/points"), at("course.points", "ledger/scale-1/mmPerPx")];

  it("has its course, where that begins and the trace that it comes from", () => {
    const read = bendTold({ input, inputPaths: onFilm, output });
    expect(read).toMatchObject({
      course: points,
      tipDepthMm: 10.5,
      startsAt: "orifice",
      fromStartMm: 4.5,
      trace: "t-1",
    });
    expect(read).not.toHaveProperty("courseEntry");
  });

  it("counts from the reference point where the course begins there, and knows a course in space by its entry", () => {
    const { fromOrificeMm: _other, ...others } = output;
    const read = bendTold({
      input: { ...input, courseStarts: "referencePoint" },
      inputPaths: [at("course.points", "ledger/entry-1/course")],
      output: { ...others, fromReferenceMm: 12 },
    });
    expect(read).toMatchObject({ startsAt: "referencePoint", fromStartMm: 12, courseEntry: "entry-1" });
    expect(read).not.toHaveProperty("trace");
  });

  it("has no places for an arc, and is nothing where it was refused", () => {
    const arc = { radiusMm: 5, turnDeg: 30, startMm: 4, lengthMm: 14 };
    expect(bendTold({ input: { ...input, course: arc }, inputPaths: [], output })?.course).toEqual([]);
    expect(bendTold({ input, inputPaths: [], output: undefined })).toBeUndefined();
    expect(bendTold(undefined)).toBeUndefined();
    expect([bendSubject("visit-1", "MB1", "25/.06 (2)"), bendAtBreakSubject("mishap-1")]).toEqual([
      "bend of visit-1 MB1 25/.06 (2)",
      "bend of mishap-1",
    ]);
  });
});

describe("a break as it is told", () => {
  const explanation = (name: string) => ({
    ...{ name, predictedFromTipMm: null, places: [], fromOrificeMm: 14, likelihood: 1 },
    ...{ prior: { mean: 0.3, source: "" }, posterior: { mean: 0.3, interval: { low: 0.1, high: 0.6, level: 0.95 } } },
  });
  const ofEach = { bendingFatigue: 0.4, torsionalOverload: 0.4, flawOrJoint: 0.2 };
  const output = {
    explanations: ["bendingFatigue", "torsionalOverload", "flawOrJoint"].map(explanation),
    ...{ weighsMost: "", wouldDecide: [], breakFromOrificeMm: 15, facts: [], priors: [], sensitivity: [] },
    ...{ atMiddle: ofEach, shifts: [], ...told },
  };

  it("is told with its places in the canal as they stand, from either beginning of the course", () => {
    expect(fractureTold({ output })?.breakFromOrificeMm).toBe(15);
    const { breakFromOrificeMm: _orifice, ...others } = output;
    const fromReference = fractureTold({ output: { ...others, breakFromReferenceMm: 22 } });
    expect(fromReference?.breakFromReferenceMm).toBe(22);
    expect(fromReference).not.toHaveProperty("breakFromOrificeMm");
    expect(fractureTold({ output: { ...output, explanations: [] } })).toBeUndefined();
    expect(fractureTold(undefined)).toBeUndefined();
  });
});
