import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import { answer } from "../../core/topic.ts";
import { type BodyOf, type Part, partsOf } from "../../record/parts.ts";
import {
  contextOf,
  filmPart,
  mishapPart,
  outputsOf,
  rowOf,
  tracePart,
  visitPart,
} from "../instruments-used/worked-case-for-tests.ts";
import { removalBinding } from "./removal.ts";

type Removal = BodyOf<"removal">;
const removal = (own: Partial<Removal> = {}): Part =>
  part("removal", "removal-1", { mishap: "mishap-1", on: "2024-03-06", attempts: [], ...own });
const film = filmPart("film-d", { purpose: "diagnostic", takenOn: "2024-03-01" });
const traced = [film, tracePart("t", "film-d"), visitPart("visit-1", [rowOf()])];

const ask = (parts: readonly Part[], outputs = outputsOf(parts)) => {
  const [one] = removalBinding.ask(contextOf(parts, outputs));
  return {
    why: one !== undefined && "why" in one ? one.why : undefined,
    input: one !== undefined && "input" in one ? one.input : undefined,
    records: (input: string) =>
      (one?.inputPaths ?? []).filter((path) => path.input === input).map((path) => path.record),
  };
};
const length = { lengthMm: { value: 3, sigma: 0.2 } };

describe("a removal is asked", () => {
  it("by its own part: measures, rules and the time spent", () => {
    const attempt = { tool: "handFile", tip: "", moved: "nothing", note: "", at: "2024-03-06T10:00:00Z" } as const;
    const own = {
      ...{ canalDiameterMm: 0.45, clearanceMm: 0.1, offCentreMm: 0, orificeShiftMm: 0.5 },
      ...{ walls: [{ side: "furcation", mm: 0.7 }] as Removal["walls"], thinnestAlong: [] },
      stopRules: { setAt: "2024-03-06T09:00:00Z", minutes: 20, wallLeftMm: 0.5, attempts: 3 },
      attempts: [3, 5].map((minutes) => ({ ...attempt, minutes })),
    };
    const { input, records } = ask([removal(own), mishapPart("mishap-1")]);
    expect(input).toMatchObject({
      ...{ canalDiameterMm: 0.45, clearanceMm: 0.1, offCentreMm: 0, orificeShiftMm: 0.5 },
      ...{ walls: own.walls, limits: { minutes: 20, wallLeftMm: 0.5 }, minutesSpent: 8 },
    });
    expect(input).not.toHaveProperty("thinnestAlong");
    const begun = ask([
      removal({
        walls: [{ side: "mesial" }, { side: "furcation", mm: 0.7 }],
        thinnestAlong: [{ side: "mesial", mm: 1 }],
      }),
      mishapPart("mishap-1"),
    ]);
    expect(begun.input).toMatchObject({ walls: [{ side: "furcation", mm: 0.7 }] });
    expect(begun.input).not.toHaveProperty("thinnestAlong");
    expect(records("minutesSpent")).toEqual(["removal-1/attempts"]);
    const bare = ask([removal({ stopRules: { setAt: "2024-03-06T09:00:00Z", attempts: 2 } }), mishapPart("mishap-1")]);
    for (const field of ["limits", "minutesSpent", "walls"]) expect(bare.input).not.toHaveProperty(field);
  });

  it("by the mishap: third, bend, what was seen, stage and the instrument's kind", () => {
    const seen = { headSeen: "hidden", stage: "partlyCleaned" } as const;
    const { input } = ask([removal(), mishapPart("mishap-1", { third: "apical", bend: "in" }, seen)]);
    expect(input).toEqual({
      ...{ third: "apical", bend: "in", headSeen: "hidden", stage: "partlyCleaned" },
      ...{ alloy: "nickelTitanium", movement: "continuous", fragment: {} },
    });
    const unsaid = ask([removal(), mishapPart("mishap-1", { separated: undefined })]).input;
    for (const field of ["third", "bend", "headSeen", "stage"]) expect(unsaid).not.toHaveProperty(field);
  });

  it("by the course from the orifice, with the bend that was measured on it", () => {
    const { input, records } = ask([...traced, removal(), mishapPart("mishap-1")]);
    expect(input).toMatchObject({ course: { sigmaMm: expect.closeTo(0.2, 9) }, curvatureDeg: 30 });
    expect(records("curvatureDeg")).toEqual(["ledger/<curvature of t>/pruettDeg"]);
    expect(records("course.points")).toEqual(["t/points", "ledger/<calibrate of film-d>/mmPerPx"]);
    const fromCusp = [filmPart("film-l", { purpose: "workingLength" }), tracePart("t", "film-l")];
    const without = ask([...fromCusp, removal(), mishapPart("mishap-1")]).input;
    expect(without).toHaveProperty("curvatureDeg", 30);
    expect(without).not.toHaveProperty("course");
  });

  it("by the inner side of the bend and the end of the course where they are told, and without them where not", () => {
    const told = ask([...traced, removal({ innerSide: "mesial", courseEnds: "head" }), mishapPart("mishap-1")]);
    expect(told.input).toMatchObject({ innerSide: "mesial", courseEnds: "head" });
    expect(told.records("innerSide")).toEqual(["removal-1/innerSide"]);
    expect(told.records("courseEnds")).toEqual(["removal-1/courseEnds"]);
    const stoodBy = ask([...traced, removal({ wallsConfirmed: true }), mishapPart("mishap-1")]);
    expect(stoodBy.input).toHaveProperty("wallsConfirmed", true);
    expect(stoodBy.records("wallsConfirmed")).toEqual(["removal-1/wallsConfirmed"]);
    const untold = ask([...traced, removal(), mishapPart("mishap-1")]).input;
    for (const field of ["innerSide", "courseEnds", "wallsConfirmed"]) expect(untold).not.toHaveProperty(field);
    // The end of a course that nobody traced says nothing.
    const noCourse = ask([removal({ courseEnds: "head" }), mishapPart("mishap-1")]).input;
    expect(noCourse).not.toHaveProperty("courseEnds");
  });

  it("says so where its mishap is no broken instrument, or is gone", () => {
    const why = /^the mishap that it is about is no separated instrument/;
    expect(ask([removal(), mishapPart("mishap-1", { what: "ledge" })]).why).toMatch(why);
    expect(ask([removal()]).why).toMatch(why);
  });
});

describe("the place of a piece", () => {
  const fragmentIn = (parts: readonly Part[], outputs = outputsOf(parts)) => {
    const { input, records } = ask(parts, outputs);
    return { fragment: (input as { fragment: object } | undefined)?.fragment, from: records("fragment.headDepthMm") };
  };
  const piece = (): Part => {
    const mark = tracePart("piece-1", "film-d");
    return { ...mark, body: { ...mark.body, shape: "fragment", polarity: undefined } } as unknown as Part;
  };
  const seen = {
    "fragmentOnFilm of piece-1": {
      ...{ lengthMm: 3.1, topDepthMm: 7.8, startsAt: "orifice", thirds: { top: { third: "middle" } } },
      intervals: { lengthMm: { low: 2.9, high: 3.3, level: 0.95 } },
    },
  };

  it("is the depth that its own part says, and its own width of the head", () => {
    const width = { brokenEndDiameterMm: { value: 0.42, sigma: 0.04 } };
    const broke = mishapPart("mishap-1", {}, { ...length, ...width });
    const said = fragmentIn([...traced, removal({ headDepthMm: 8.2, headDiameterMm: 0.43 }), broke]);
    expect(said.fragment).toEqual({ lengthMm: 3, headDepthMm: 8.2, headDiameterMm: 0.43 });
    expect(said.from).toEqual(["removal-1/headDepthMm"]);
    expect(fragmentIn([...traced, removal(), broke]).fragment).toMatchObject({ headDiameterMm: 0.42 });
  });

  it("is else the depth of the tip at the break less its length", () => {
    // By hand: the tip lies 10.5 mm deep, as the seat of the instrument says.
    const { fragment, from } = fragmentIn([...traced, removal(), mishapPart("mishap-1", {}, length)]);
    expect(fragment).toEqual({ lengthMm: 3, headDepthMm: 7.5 });
    expect(from).toContain("mishap-1/separated/tipDepthMm");
    expect(from).toContain("mishap-1/separated/lengthMm");
  });

  it("is else that on the film whose course begins at the orifice, with its third where nobody said one", () => {
    const parts = [film, piece(), removal(), mishapPart("mishap-1", {}, { tipDepthMm: undefined })];
    const found = fragmentIn(parts, seen);
    expect(found.fragment).toEqual({ lengthMm: 3.1, headDepthMm: 7.8 });
    expect(found.from).toEqual(["ledger/<fragmentOnFilm of piece-1>/topDepthMm"]);
    expect(ask(parts, seen).input).toHaveProperty("third", "middle");
    const told = [film, piece(), removal(), mishapPart("mishap-1", { third: "apical" })];
    expect(ask(told, seen).input).toHaveProperty("third", "apical");
    const fromCusp = { ...seen["fragmentOnFilm of piece-1"], startsAt: "referencePoint" };
    expect(fragmentIn(parts, { "fragmentOnFilm of piece-1": fromCusp }).fragment).toEqual({ lengthMm: 3.1 });
  });
});

describe("what was known of the tooth before", () => {
  const toothed = (tooth: string) => {
    const about = partsOf(sampleParts(), "case").map(({ body }) => part("case", "about", { ...body, tooth }));
    return ask([...about, removal(), mishapPart("mishap-1")]).input;
  };

  it("is which kind of tooth it is, milk molars among the molars", () => {
    const kinds = ["11", "23", "34", "45", "46", "28", "53", "54", "75"].map(toothed);
    expect(kinds.map((input) => (input as { toothType: string }).toothType)).toEqual([
      ...["anterior", "anterior", "premolar", "premolar", "molar", "molar"],
      ...["anterior", "molar", "molar"],
    ]);
  });

  it("is the lesion of the films and findings up to the first visit, and none that came later", () => {
    const outline = (on: string): Part => {
      const mark = tracePart(`lesion-${on}`, on, {});
      const body = {
        shape: "outline",
        film: on,
        what: "lesion at MB1",
        points: [
          [1, 1],
          [2, 1],
          [2, 2],
        ],
      };
      return { ...mark, body } as unknown as Part;
    };
    const later = filmPart("film-later", { purpose: "diagnostic", takenOn: "2024-06-01" });
    const parts = [...traced, later, outline("film-d"), outline("film-later"), removal(), mishapPart("mishap-1")];
    const sizes = { "lesion of lesion-film-d": { largestDiameterMm: 4 } };
    const measured = ask(parts, { ...outputsOf(parts), ...sizes });
    expect(measured.input).toHaveProperty("lesion", "present");
    expect(measured.records("lesion")).toEqual(["ledger/<lesion of lesion-film-d>/largestDiameterMm"]);
    const after = { "lesion of lesion-film-later": { largestDiameterMm: 4 } };
    expect(ask(parts, { ...outputsOf(parts), ...after }).input).not.toHaveProperty("lesion");
  });
});

it("is answered from a whole record", () => {
  const short = { lengthMm: { value: 1, sigma: 0.2 } };
  const parts = [...traced, removal({ canalDiameterMm: 0.5 }), mishapPart("mishap-1", {}, short)];
  // The trace is 4 mm long.
  const { input } = ask(parts, outputsOf(parts, 4));
  expect(input).toMatchObject({ fragment: { lengthMm: 1, headDepthMm: 1.5 } });
  expect(answer(removalBinding.topic, input)).toHaveProperty("ways");
});
