import { describe, expect, it } from "vitest";
import { answer } from "../../core/topic.ts";
import type { Part } from "../../record/parts.ts";
import type { Gap, Question } from "../binding.ts";
import {
  contextOf,
  filmPart,
  mishapPart,
  outputsOf,
  rowOf,
  tracePart,
  visitPart,
} from "../instruments-used/worked-case-for-tests.ts";
import { bendBinding } from "./bend.ts";
import { fitBinding } from "./fit.ts";
import { instrumentBinding } from "./instrument.ts";
import { lifeUsedBinding } from "./life-used.ts";

const film = filmPart("film-d", { purpose: "diagnostic", takenOn: "2024-03-01" });
const traced = [film, tracePart("t", "film-d")];
const file = (id: string) => ({ file: { id, label: id } });
const hand = { alloy: "stainlessSteel", movement: "hand", rpm: undefined } as const;

const asked = (binding: typeof bendBinding, parts: readonly Part[], outputs = outputsOf(parts)) =>
  binding.ask(contextOf(parts, outputs));
const subjects = (found: readonly (Question | Gap)[]) => found.map(({ subject }) => subject);
const whyOf = (one: Question | Gap | undefined) => (one !== undefined && "why" in one ? one.why : "it was asked");
const inputOf = (one: Question | Gap | undefined) => (one !== undefined && "input" in one ? one.input : undefined);
/** 10.5 mm of tip depth: 12 mm of canal, the tip 1 mm short of a length that stops 0.5 short. */
const seated = { tipDepthMm: 10.5, course: { sigmaMm: expect.closeTo(0.2, 9) } };

describe("the instruments of a case", () => {
  it("are asked once for each geometry of a visit and for the one that broke", () => {
    const profile = [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 16, diameterMm: 1 },
    ];
    const rows = [rowOf(), rowOf({ canal: "DB" }), rowOf({ profile }), rowOf({ lengthMm: 21 })];
    const found = asked(instrumentBinding, [visitPart("visit-1", rows), mishapPart("mishap-1")]);
    expect(subjects(found)).toEqual([
      ...["25/.06", "25/v", "25/.06 (2)"].map((name) => `instrument of visit-1 ${name}`),
      "instrument of mishap-1",
    ]);
    const plain = { size: 25, alloy: "nickelTitanium", movement: "continuous" };
    expect(found.map(inputOf)).toEqual([
      { ...plain, taper: 0.06 },
      { ...plain, profile },
      { ...plain, taper: 0.06, lengthMm: 21 },
      { ...plain, taper: 0.06 },
    ]);
    expect(found[2]?.inputPaths).toContainEqual({ input: "lengthMm", record: "visit-1/instruments/3/lengthMm" });
    for (const one of found) expect(answer(instrumentBinding.topic, inputOf(one))).toBeDefined();
  });

  it("are nothing where none is recorded, and none of a mishap of another kind", () => {
    const other = mishapPart("mishap-1", { what: "ledge" });
    const unsaid = mishapPart("mishap-2", { instrument: undefined });
    for (const binding of [instrumentBinding, bendBinding, lifeUsedBinding, fitBinding])
      expect(asked(binding, [...traced, visitPart("visit-1", []), other, unsaid])).toEqual([]);
  });
});

describe("an instrument that broke and is told in part", () => {
  const told = (instrument: object) => [...traced, mishapPart("mishap-1", { instrument })];
  const bindings = [instrumentBinding, bendBinding, lifeUsedBinding, fitBinding];

  it.each([
    [{}, "the size and the taper of the instrument that broke are not told"],
    [{ taper: 0.06, alloy: "nickelTitanium" }, "the size of the instrument that broke is not told"],
    [{ size: 25, movement: "hand" }, "the taper of the instrument that broke is not told"],
  ])("is asked nothing of while its measures lack: %j", (instrument, why) => {
    for (const binding of bindings) {
      const [one, ...others] = asked(binding, told(instrument));
      expect(others).toEqual([]);
      expect(one?.subject).toMatch(/ of mishap-1$/);
      expect(whyOf(one)).toBe(`${why}; say in the mishap which instrument it was`);
      expect(one?.inputPaths).toEqual([{ input: "instrument", record: "mishap-1/instrument" }]);
    }
  });

  it("is not taken for the one of any row, and its fit is asked of those of the visit", () => {
    const parts = [...told({}), visitPart("visit-1", [rowOf()])];
    expect(whyOf(asked(lifeUsedBinding, parts).at(-1))).toMatch(/^the size and the taper/);
    expect(asked(fitBinding, parts).map(whyOf)).not.toContainEqual(expect.stringMatching(/not told/));
  });

  it("is asked with size and taper alone, and nothing stands in for the rest", () => {
    const [shape] = asked(instrumentBinding, told({ size: 25, taper: 0.06 }));
    expect(inputOf(shape)).toEqual({ size: 25, taper: 0.06 });
    expect(shape?.inputPaths.map(({ input }) => input)).toEqual(["size", "taper"]);
    expect(answer(instrumentBinding.topic, inputOf(shape))).toBeDefined();
    // A row says more than the mishap does; they can be of one instrument.
    const parts = [...told({ size: 25, taper: 0.06 }), visitPart("visit-1", [rowOf()])];
    expect(inputOf(asked(lifeUsedBinding, parts).at(-1))).toMatchObject({ uses: [{ seconds: 20 }] });
  });
});

describe("the bend of instruments", () => {
  it("is asked where each went deepest in each canal of a visit", () => {
    const rows = [
      rowOf({ depthMm: 15 }),
      rowOf(),
      rowOf({ depthMm: 17 }),
      rowOf({ canal: "DB" }),
      rowOf({ canal: undefined }),
    ];
    const found = asked(bendBinding, [...traced, visitPart("visit-1", rows)]);
    expect(subjects(found)).toEqual(["bend of visit-1 MB1 25/.06", "bend of visit-1 DB 25/.06"]);
    expect(inputOf(found[0])).toMatchObject({
      ...seated,
      instrument: { size: 25, taper: 0.06 },
      view: { films: "one" },
    });
    expect(inputOf(found[0])).not.toHaveProperty("courseStarts");
    expect(found[0]?.inputPaths).toContainEqual({ input: "tipDepthMm", record: "visit-1/instruments/1/depthMm" });
    expect(whyOf(found[1])).toMatch(/^DB has no course in mm/);
  });

  it("says that a course begins at the reference point", () => {
    const length = filmPart("film-l", { purpose: "workingLength", takenOn: "2024-03-05" });
    const parts = [length, tracePart("t", "film-l", { kind: "instrument" }), visitPart("visit-1", [rowOf()])];
    expect(inputOf(asked(bendBinding, parts)[0])).toMatchObject({ courseStarts: "referencePoint", tipDepthMm: 18 });
  });

  it("of the one that broke is asked at the depth of the break", () => {
    const parts = [...traced, visitPart("visit-1", [rowOf({ depthMm: 19 })]), mishapPart("mishap-1")];
    expect(inputOf(asked(bendBinding, parts)[1])).toMatchObject(seated);
    const gone = asked(bendBinding, [...traced, mishapPart("mishap-1", {}, { tipDepthMm: undefined })]);
    expect(subjects(gone)).toEqual(["bend of mishap-1"]);
    expect(whyOf(gone[0])).toMatch(/^its depth in MB1 is not recorded/);
  });
});

describe("the life used", () => {
  const lives = (rows: Parameters<typeof visitPart>[1], ...others: readonly Part[]) =>
    asked(lifeUsedBinding, [...traced, visitPart("visit-1", rows), ...others]);

  it("takes the uses of one geometry in a visit as one instrument, hand files aside", () => {
    const found = lives([rowOf(), rowOf({ seconds: 40, engagedFraction: 0.5 }), rowOf(hand), rowOf({ taper: 0.04 })]);
    expect(subjects(found)).toEqual(["lifeUsed of visit-1 25/.06", "lifeUsed of visit-1 25/.04"]);
    expect(inputOf(found[0])).toMatchObject({
      uses: [
        { rpm: 300, seconds: 20, tipDepthMm: 10.5 },
        { rpm: 300, seconds: 40, tipDepthMm: 10.5, engagedFraction: 0.5 },
      ],
    });
    expect(found[0]?.inputPaths).toContainEqual({ input: "uses[1].seconds", record: "visit-1/instruments/1/seconds" });
  });

  it("counts turning to and fro by its angles, whatever speed stands beside them", () => {
    const reciprocation = { forwardDeg: 150, backDeg: 30, frequencyHz: 5 };
    const [one] = lives([rowOf({ movement: "reciprocating", reciprocation })]);
    expect(inputOf(one)).toMatchObject({ uses: [{ reciprocation, seconds: 20 }] });
    expect(inputOf(one)).not.toHaveProperty("uses.0.rpm");
  });

  it("follows a counted file through the visits in the order of their days, apart from like instruments", () => {
    const later = visitPart("visit-0", [rowOf({ ...file("file-7"), seconds: 33 })], { on: "2024-03-19" });
    const found = asked(lifeUsedBinding, [
      ...traced,
      later,
      visitPart("visit-1", [rowOf(file("file-7")), rowOf({ seconds: 9 })]),
    ]);
    expect(subjects(found)).toEqual(["lifeUsed of visit-1 25/.06", "lifeUsed of file file-7"]);
    expect(inputOf(found[0])).toMatchObject({ uses: [{ seconds: 9 }] });
    expect(inputOf(found[1])).toMatchObject({ uses: [{ seconds: 20 }, { seconds: 33 }] });
    expect(found[1]?.inputPaths).toContainEqual({ input: "uses[0]", record: "visit-1/instruments/0/file" });
  });

  it("says each thing that is missing once, and asks nothing of a part of a life", () => {
    const [one] = lives([
      rowOf(),
      rowOf({ rpm: undefined }),
      rowOf({ seconds: undefined }),
      rowOf({ seconds: 0 }),
      rowOf({ canal: undefined }),
      rowOf({ canal: "P" }),
    ]);
    expect(whyOf(one)).toBe(
      "its speed in MB1 is not recorded; say it. Its time in MB1 is not recorded; say the seconds. It is not said in which " +
        "canal; say it. P has no course in mm; trace it from its orifice to its end on a film with a mark of known length",
    );
  });

  it("ends for the one that broke with the use in which it did", () => {
    const rows = [rowOf({ canal: "MB1", seconds: 1 }), rowOf({ seconds: 2 }), rowOf({ canal: "P", seconds: 3 })];
    const found = lives(rows, mishapPart("mishap-1"));
    expect(inputOf(found[1])).toMatchObject({ uses: [{ seconds: 1 }, { seconds: 2 }] });
    const byDay = lives(rows, mishapPart("mishap-1", { visit: undefined }));
    expect(inputOf(byDay[1])).toEqual(inputOf(found[1]));
    const elsewhere = lives([rowOf({ size: 30 })], mishapPart("mishap-1"));
    expect(whyOf(elsewhere[1])).toMatch(/no use of the instrument that broke is recorded/);
  });

  it("of the one that broke is that of its counted file, whatever the geometry says", () => {
    const early = visitPart("visit-0", [rowOf({ ...file("file-7"), seconds: 5 })], { on: "2024-03-01" });
    const late = visitPart("visit-2", [rowOf({ ...file("file-7"), seconds: 7 })], { on: "2024-03-19" });
    const at = visitPart("visit-1", [rowOf({ seconds: 9 }), rowOf({ ...file("file-7"), seconds: 6 })]);
    const broke = mishapPart("mishap-1", {}, file("file-7"));
    const found = asked(lifeUsedBinding, [...traced, late, at, early, broke]);
    expect(inputOf(found.find(({ subject }) => subject === "lifeUsed of mishap-1"))).toMatchObject({
      uses: [{ seconds: 5 }, { seconds: 6 }],
    });
  });
});

describe("the fit of a piece", () => {
  const width = { brokenEndDiameterMm: { value: 0.42, sigma: 0.04 } };
  const fitOf = (more: Parameters<typeof mishapPart>[2], ...others: readonly Part[]) => {
    const rows = [rowOf({ canal: "P", size: 40, taper: 0.04 }), rowOf(), rowOf({ size: 20, taper: 0.04 })];
    return asked(fitBinding, [visitPart("visit-1", rows), mishapPart("mishap-1", {}, more), ...others])[0];
  };

  it("is asked among the instruments of the visit, those of its canal first", () => {
    const one = fitOf({ ...width, lengthMm: { value: 3, sigma: 0.2 } });
    expect(inputOf(one)).toMatchObject({
      fragment: { ...width, lengthMm: { value: 3, sigma: 0.2 } },
      candidates: ["25/.06", "20/.04", "40/.04"].map((name) => ({ name })),
    });
    expect(one?.inputPaths).toContainEqual({ input: "fragment.lengthMm", record: "mishap-1/separated/lengthMm" });
    expect(answer(fitBinding.topic, inputOf(one))).toBeDefined();
  });

  it("takes the length off the film where the record has none, as sure as its interval", () => {
    const piece = { shape: "fragment", polarity: undefined, kind: undefined } as const;
    const mark = tracePart("piece-1", "film-d");
    const drawn = { ...mark, body: { ...mark.body, ...piece } } as Part;
    const seen = { lengthMm: 3.1, intervals: { lengthMm: { low: 2.9, high: 3.3, level: 0.95 } } };
    const parts = [film, drawn, visitPart("visit-1", [rowOf()]), mishapPart("mishap-1", {}, width)];
    const [one] = asked(fitBinding, parts, { "fragmentOnFilm of piece-1": seen });
    // By hand: 95 % of a normal error lie within 1.96 standard deviations.
    expect(inputOf(one)).toMatchObject({
      fragment: { lengthMm: { value: 3.1, sigma: expect.closeTo(0.4 / 3.92, 3) } },
    });
    expect(one?.inputPaths).toContainEqual({
      input: "fragment.lengthMm",
      record: "ledger/<fragmentOnFilm of piece-1>/lengthMm",
    });
  });

  it("wants a diameter, and takes the one that is named where no row stands", () => {
    expect(whyOf(fitOf({ lengthMm: { value: 3, sigma: 0.2 } }))).toBe(
      "no diameter of the piece is measured; measure its broken end or its tip",
    );
    const [alone] = asked(fitBinding, [mishapPart("mishap-1", { visit: undefined }, width)]);
    expect(inputOf(alone)).toMatchObject({ candidates: [{ name: "25/.06" }] });
  });
});
