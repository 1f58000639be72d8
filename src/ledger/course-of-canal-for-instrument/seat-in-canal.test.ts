import { describe, expect, it } from "vitest";
import { part } from "../../../test/sample-case.ts";
import type { Part } from "../../record/parts.ts";
import { contextOf, filmPart, outputsOf, tracePart, visitPart } from "../instruments-used/worked-case-for-tests.ts";
import { coursesOfCanal } from "./courses-of-canal.ts";
import { seatInCanal } from "./seat-in-canal.ts";
import type { TipDepth } from "./tip-in-course.ts";

const on = "2024-03-05";
const fromReference: TipDepth = { depthMm: 18, depthFrom: "referencePoint", record: "row/depthMm" };
const fromOrifice: TipDepth = { ...fromReference, depthFrom: "orifice", depthMm: 9 };
const diagnostic = filmPart("film-d", { purpose: "diagnostic", takenOn: "2024-03-01" });
const length = filmPart("film-l", { purpose: "workingLength", takenOn: on });
const worked = visitPart("visit-1", []);

const seat = (tip: TipDepth | undefined, parts: readonly Part[], outputs = outputsOf(parts)) =>
  seatInCanal({ canal: "MB1", on, tip }, contextOf(parts, outputs));
const whyOf = (found: ReturnType<typeof seat>): string => ("why" in found ? found.why : "it was seated");
const depthIn = (found: ReturnType<typeof seat>): number => ("why" in found ? Number.NaN : found.tipDepthMm);

describe("an instrument in the course of its canal", () => {
  it("is tied at the apical end where the course begins at the orifice and the depth at the cusp", () => {
    // By hand: 12 mm of canal, the length of 19 stops 0.5 short of its end, the tip 1 mm short of that.
    const found = seat(fromReference, [diagnostic, tracePart("t", "film-d"), worked]);
    expect(depthIn(found)).toBeCloseTo(12 - 0.5 - (19 - 18), 9);
    expect("paths" in found && found.paths.filter(({ input }) => input === "tipDepthMm")).toEqual([
      { input: "tipDepthMm", record: "row/depthMm" },
      { input: "tipDepthMm", record: "ledger/<curvature of t>/lengthMm" },
      { input: "tipDepthMm", record: "visit-1/canals/0/workingLengthMm" },
      { input: "tipDepthMm", record: "settings/stopShortMm" },
    ]);
  });

  it("is as deep as the record says where both begin at one place", () => {
    const fromCusp = seat(fromReference, [length, tracePart("t", "film-l", { kind: "instrument" })]);
    expect([depthIn(fromCusp), "course" in fromCusp && fromCusp.course.startsAt]).toEqual([18, "referencePoint"]);
    const fromTheOrifice = seat(fromOrifice, [diagnostic, tracePart("t", "film-d")]);
    expect([depthIn(fromTheOrifice), "course" in fromTheOrifice && fromTheOrifice.course.startsAt]).toEqual([
      9,
      "orifice",
    ]);
  });

  it("takes the working length of the nearest visit, else of a film that is read from the reference point", () => {
    const traced = [diagnostic, tracePart("t", "film-d")];
    const canals = [{ canal: "MB1", state: "shaped", patency: "patent", reference: "", workingLengthMm: 20 }] as const;
    const later = visitPart("visit-2", [], { on: "2024-04-05", canals: [...canals] });
    expect(depthIn(seat(fromReference, [...traced, later, worked]))).toBeCloseTo(10.5, 9);
    expect(depthIn(seat(fromReference, [...traced, later]))).toBeCloseTo(9.5, 9);
    const another = [...traced, length, tracePart("t-l", "film-l", { kind: "other" })];
    const says = { recommendedMm: 18.6, stopShortMm: 1 };
    const found = seat(fromReference, another, { ...outputsOf(another), "workingLength of t-l": says });
    expect(depthIn(found)).toBeCloseTo(12 - 1 - (18.6 - 18), 9);
    expect("paths" in found && found.paths.map(({ record }) => record)).toEqual(
      expect.arrayContaining([
        "ledger/<workingLength of t-l>/recommendedMm",
        "ledger/<workingLength of t-l>/stopShortMm",
      ]),
    );
  });

  it("says what is missing", () => {
    const traced = [diagnostic, tracePart("t", "film-d")];
    const about = (canal: string | undefined, tip?: TipDepth) =>
      whyOf(seatInCanal({ canal, on, tip }, contextOf([], {})));
    expect(about(undefined)).toBe("it is not said in which canal; say it");
    expect(about("MB1")).toBe("its depth in MB1 is not recorded; say how deep its tip went");
    expect(about("MB1", fromReference)).toMatch(/^MB1 has no course in mm; trace it/);
    expect(whyOf(seat(fromReference, traced))).toMatch(/its working length ties the two: say it/);
    expect(whyOf(seat(fromOrifice, [length, tracePart("t", "film-l")]))).toMatch(
      /say the depth from there, or trace MB1/,
    );
    const shallow = { ...fromReference, depthMm: 7 };
    expect(whyOf(seat(shallow, [...traced, worked]))).toMatch(/the tip lies 0\.5 mm above the orifice of MB1/);
    const filled = [diagnostic, tracePart("t", "film-d", { kind: "filledCanal" }), worked];
    expect(whyOf(seat(fromReference, filled))).toMatch(/traced along its filling alone; trace the canal itself/);
  });

  it("goes into the first course in which its depth can be told", () => {
    const both = [diagnostic, tracePart("t-d", "film-d"), length, tracePart("t-l", "film-l", { kind: "instrument" })];
    const found = seat(fromReference, both);
    expect("course" in found && found.course.film).toBe("film-l");
    const tied = seat(fromReference, [...both, worked]);
    expect("course" in tied && tied.course.film).toBe("film-d");
  });
});

describe("the courses of a canal", () => {
  const films = (parts: readonly Part[], outputs = outputsOf(parts)) =>
    coursesOfCanal("MB1", on, contextOf(parts, outputs)).map(({ film }) => film ?? "space");

  it("are those before its filling first, the canal before an instrument in it, the nearest day before others", () => {
    const final = filmPart("film-f", { purpose: "final", takenOn: "2024-03-20" });
    const early = filmPart("film-e", { purpose: "angled", takenOn: "2024-01-01" });
    const parts = [final, early, diagnostic, length];
    const traces = [
      tracePart("t-f", "film-f"),
      tracePart("t-e", "film-e"),
      tracePart("t-filled", "film-d", { kind: "filledCanal" }),
      tracePart("t-d", "film-d"),
      tracePart("t-l", "film-l", { kind: "instrument" }),
      tracePart("t-other", "film-l", { kind: "other" }),
      tracePart("t-db", "film-l", { canal: "DB" }),
    ];
    const found = coursesOfCanal("MB1", on, contextOf([...parts, ...traces], outputsOf([...parts, ...traces])));
    expect(found.map(({ paths }) => paths[0]?.record)).toEqual(
      ["t-d", "t-e", "t-l", "t-f", "t-filled"].map((id) => `${id}/points`),
    );
  });

  it("have their places and their error in mm, and say whether the long axis lies along the film", () => {
    const along = filmPart("film-a", { purpose: "diagnostic", takenOn: on, verticalAngleDeg: -5 });
    const across = filmPart("film-x", { purpose: "diagnostic", takenOn: "2024-01-01", verticalAngleDeg: 6 });
    const parts = [along, across, tracePart("t-a", "film-a"), tracePart("t-x", "film-x")];
    const [a, x] = coursesOfCanal("MB1", on, contextOf(parts, outputsOf(parts)));
    expect(a?.points.slice(0, 2)).toEqual([
      [1, 2],
      [1, 3],
    ]);
    expect([a?.sigmaMm, a?.view, x?.view]).toEqual([
      expect.closeTo(0.2, 9),
      { films: "one", longAxis: "parallel" },
      { films: "one" },
    ]);
  });

  it("leave out films without a scale and courses that refused", () => {
    const parts = [diagnostic, tracePart("t", "film-d")];
    expect(films(parts, { ...outputsOf(parts), "calibrate of film-d": undefined })).toEqual([]);
    expect(films(parts, { ...outputsOf(parts), "curvature of t": undefined })).toEqual([]);
  });

  const angled = filmPart("film-g", { purpose: "angled", takenOn: "2024-03-01", horizontalAngleDeg: 20 });
  const straight = filmPart("film-s", { purpose: "diagnostic", takenOn: "2024-03-01", horizontalAngleDeg: 0 });
  const pairing = part("pairing", "pairing-1", { canal: "MB1", films: ["film-s", "film-g"] });
  const subject = "twoView of MB1 film-s film-g";
  const inSpace = {
    course: [0, 1, 2, 3].map((z) => [0, 0, z * 4]),
    sigma: [
      [0.01, 0.08, 0.02],
      [0.01, 0.08, 0.02],
    ],
    ...{ lengthMm: 12.7, curvature: { pruettDeg: 59 }, turn: [{ highDeg: 20 }, { highDeg: 71 }] },
  };

  it("in space come before any film, as sure as their least sure axis", () => {
    const parts = [straight, angled, pairing, tracePart("t-s", "film-s"), tracePart("t-g", "film-g")];
    const outputs = { ...outputsOf(parts), [subject]: inSpace };
    const [first] = coursesOfCanal("MB1", on, contextOf(parts, outputs));
    expect(first).toMatchObject({
      ...{ points: inSpace.course, lengthMm: 12.7, startsAt: "orifice", view: { films: "space" } },
      ...{ sigmaMm: expect.closeTo(0.08, 9), bend: { deg: 59, record: `ledger/<${subject}>/curvature.pruettDeg` } },
      paths: [
        { input: "course.points", record: `ledger/<${subject}>/course` },
        { input: "course.sigmaMm", record: `ledger/<${subject}>/sigma` },
      ],
    });
    expect(films(parts, outputs)).toEqual(["space", "film-s", "film-g"]);
    // Beside them one film's turn has a bound from above, where it does not contradict it.
    const bounded = coursesOfCanal("MB1", on, contextOf(parts, outputs))[1]?.view;
    expect(bounded).toEqual({ films: "one", turnAtMostDeg: 71 });
    const less = { ...outputs, [subject]: { ...inSpace, turn: [{ highDeg: 20 }] } };
    expect(coursesOfCanal("MB1", on, contextOf(parts, less))[1]?.view).toEqual({ films: "one" });
  });

  it("in space are left out where their traces begin at different places", () => {
    const mixed = tracePart("t-g", "film-g", { from: "referencePoint" });
    const parts = [straight, angled, pairing, tracePart("t-s", "film-s"), mixed];
    expect(films(parts, { ...outputsOf(parts), [subject]: inSpace })).toEqual(["film-s", "film-g"]);
  });
});
