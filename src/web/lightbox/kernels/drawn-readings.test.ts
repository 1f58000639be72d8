import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../../test/sample-case.ts";
import { deriveLedger } from "../../../ledger/derive-ledger.ts";
import { ledgerReader } from "../../../pages/ledger-reader.ts";
import { type Part, partsOf } from "../../../record/parts.ts";
import { firstSettings } from "../../../record/settings.ts";
import { listedValue, readingOf, toldInWords } from "./drawn-readings.ts";
import { isNamedByMeasure, isOverMark, measuredMarks, measureWords } from "./measured-marks.ts";

const onFilm = { film: "film-1" };
const drawn = [
  part("mark", "fragment-1", {
    ...{ ...onFilm, shape: "fragment", canal: "MB1" },
    anchors: [
      [300, 260],
      [300, 290],
    ],
    points: [
      [300, 260],
      [300, 290],
    ],
  }),
  part("mark", "end-1", { ...onFilm, shape: "spot", what: "", is: "fillingEnd", canal: "MB1", at: [300, 280] }),
  part("mark", "level-1", { ...onFilm, shape: "spot", what: "ledge", is: "level", canal: "MB1", at: [300, 200] }),
  part("mark", "wall-1", { ...onFilm, shape: "wall", from: [280, 200], to: [296, 200] }),
  part("mark", "axis-1", {
    ...{ ...onFilm, shape: "crownRoot", crown: [300, 20], level: [310, 180], apex: [300, 420] },
    levelIs: "boneCrest",
  }),
];
const parts: Part[] = [...sampleParts(), ...drawn];
const marks = partsOf(parts, "mark");
const ledger = deriveLedger({
  ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z" },
  ...{ parts, known: () => undefined },
});
const markOf = (id: string) => marks.find((mark) => mark.id === id)?.body;

describe("what is read of a drawn mark", () => {
  it("stands in the ledger under the names that the panel and the list ask for", () => {
    for (const mark of marks) {
      const reading = readingOf(mark.body);
      const listed = listedValue(mark.body);
      const output = ledger.find(({ subject }) => subject === `${listed?.topic} of ${mark.id}`)?.output ?? {};
      expect(Object.keys(output), mark.id).toContain(listed?.name);
      for (const { name } of reading?.values ?? []) expect(Object.keys(output), `${mark.id} ${name}`).toContain(name);
    }
  });

  it("is nothing for a spot of another kind and for a known length", () => {
    expect(readingOf({ ...onFilm, shape: "spot", what: "crest", at: [1, 1] })).toBeUndefined();
    const known = { ...onFilm, shape: "knownLength", object: "gauge", lengthMm: 1, from: [0, 0], to: [1, 1] } as const;
    expect(listedValue({ ...known, from: [0, 0], to: [1, 1] })).toBeUndefined();
  });

  it("is told in words with its source", () => {
    const told = (subject: string) => toldInWords(ledger.find((entry) => entry.subject === subject));
    expect(told("wallOnFilm of wall-1")).toEqual([
      "Above 0.3 mm (Lim Stock 1987, from memory)",
      "Below 1 mm (Caputo Standlee 1976, from memory)",
    ]);
    expect(told("fragmentOnFilm of fragment-1")).toEqual(["Before the largest bend, of 60°"]);
    expect(told("crownRoot of axis-1")).toEqual(["The clinical ratio"]);
    expect(told("fillingEnd of end-1").join()).toContain("after Schaeffer 2005");
    expect(toldInWords(undefined)).toEqual([]);
  });
});

describe("marks as the ledger measured them", () => {
  const measured = measuredMarks(marks, ledgerReader(ledger));

  it("are named by their measure, courses by themselves", () => {
    expect(measured.map(({ markId }) => markId).sort()).toEqual(["axis-1", "end-1", "fragment-1", "level-1", "wall-1"]);
    for (const mark of marks) expect(isNamedByMeasure(mark, measured)).toBe(mark.body.shape !== "trace");
  });

  it("draw over their mark what the mark has not: ways and ticks", () => {
    expect(measured.filter(({ measure }) => isOverMark(measure)).map(({ markId }) => markId)).toEqual([
      "end-1",
      "level-1",
    ]);
    const wall = measured.find(({ markId }) => markId === "wall-1");
    expect(wall && measureWords(wall)).toEqual({ text: "wall 0.8 mm", at: { column: 288, row: 200 } });
    expect(markOf("wall-1")?.shape).toBe("wall");
  });
});
