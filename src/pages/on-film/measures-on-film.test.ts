import { describe, expect, it } from "vitest";
import { part, sampleParts, samplePoints } from "../../../test/sample-case.ts";
import type { FilmMeasure, FilmPoint } from "../../figures/film-measure.ts";
import { deriveLedger } from "../../ledger/derive-ledger.ts";
import { type Part, partsOf } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import type { Line } from "../page-model.ts";
import { drawnTable } from "./drawn-table.ts";
import { measuresOfMark } from "./measures-on-film.ts";

// The sample's film has 0.05 mm a pixel; its MB1 goes 200 px down from (300, 100), then 60 degrees round (400, 300).
const onFilm = { film: "film-1" };
const mark = (id: string, body: object): Part => part("mark", id, { ...onFilm, ...body } as never);
const drawnTrace = (parts: Part[], drawn: string[]): Part[] =>
  parts.map((one) =>
    one.kind === "mark" && one.body.shape === "trace" ? part("mark", one.id, { ...one.body, drawn } as never) : one,
  );
/** The sample's film with pixels of another shape, or with no scale. */
const filmWith = (parts: Part[], pixelSpacingMm?: [number, number]): Part[] =>
  parts.map((one) => {
    if (one.kind !== "film") return one;
    const { pixelSpacingMm: _spacing, calibrationType: _type, ...technical } = one.body.technical;
    const spaced = pixelSpacingMm === undefined ? {} : { pixelSpacingMm, calibrationType: "geometry" as const };
    return { ...one, body: { ...one.body, technical: { ...technical, ...spaced } } };
  });
const readerOf = (parts: Part[]): LedgerReader =>
  ledgerReader(
    deriveLedger({
      ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z" },
      ...{ parts, known: () => undefined },
    }),
  );
function drawnOn(parts: Part[]): FilmMeasure[] {
  const read = readerOf(parts);
  return partsOf(parts, "mark").flatMap((one) => measuresOfMark(one, read));
}
type Kind = FilmMeasure["kind"];
const only = <K extends Kind>(measures: FilmMeasure[], kind: K) => {
  const found = measures.filter((one): one is Extract<FilmMeasure, { kind: K }> => one.kind === kind);
  if (found[0] === undefined) throw new Error(`no ${kind} is drawn`);
  return found[0];
};
const away = ([u, v]: FilmPoint, [x, y]: FilmPoint): number => Math.hypot(u - x, v - y);

describe("constructions on a film", () => {
  it("are drawn where the canal lies: the circle about its centre, the tangents through the departure", () => {
    const circle = only(drawnOn(drawnTrace(sampleParts(), ["pruett"])), "construction");
    for (const at of circle.read[0] ?? []) expect(away(at, [400, 300])).toBeCloseTo(100, 0);
    expect(circle.lines[0]?.[0]?.[0]).toBeCloseTo(300, 0);
    expect(circle.label).toMatch(/^60°, radius 5\.0 mm$/);
  });

  it("bend circles into ellipses where pixels are not square", () => {
    // Rows of 0.05, columns of 0.025 mm: the same course in mm is twice as wide in columns.
    const wide = filmWith(drawnTrace(sampleParts(), ["tightest"]), [0.05, 0.025]);
    const read = only(drawnOn(wide), "construction").read[0] ?? [];
    const spread = (axis: 0 | 1) => Math.max(...read.map((at) => at[axis])) - Math.min(...read.map((at) => at[axis]));
    expect(spread(0) / spread(1)).toBeCloseTo(2, 1);
  });

  it.each([
    ["schneider", /^Schneider 30°$/],
    ["access", /^access 10°$/],
    ["weine", /^Weine 4[89]°$/],
    ["height", /^height 1\.7 mm$/],
  ])("of %s says its value", (name, words) => {
    expect(only(drawnOn(drawnTrace(sampleParts(), [name])), "construction").label).toMatch(words);
  });

  it("have an arc that begins on one line and ends on the other", () => {
    const { read, lines } = only(drawnOn(drawnTrace(sampleParts(), ["schneider"])), "construction");
    const arc = read[0] ?? [];
    const onLine = (at: FilmPoint, [from, to]: readonly FilmPoint[]): number => {
      const [a, b] = [from ?? at, to ?? at];
      return Math.abs((b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])) / away(a, b);
    };
    expect(onLine(arc[0] ?? [0, 0], lines[0] ?? [])).toBeLessThan(0.01);
    expect(onLine(arc.at(-1) ?? [0, 0], lines[1] ?? [])).toBeLessThan(0.01);
  });

  it("stand on a film without a scale in its own pixels, and those that need mm do not", () => {
    const measures = drawnOn(filmWith(drawnTrace(sampleParts(), ["schneider", "weine", "pruett"])));
    const constructions = measures.filter(({ kind }) => kind === "construction");
    expect(constructions.map(({ label }) => label)).toEqual(["Schneider 30°", "60°"]);
    const [, circle] = constructions;
    for (const at of (circle?.kind === "construction" ? circle.read[0] : []) ?? [])
      expect(away(at, [400, 300])).toBeCloseTo(100, 0);
  });
});

const fragment = mark("fragment-1", {
  ...{ shape: "fragment", canal: "MB1", anchors: samplePoints().slice(45, 56), points: samplePoints().slice(45, 56) },
});
const end = mark("end-1", { shape: "spot", what: "", is: "fillingEnd", canal: "MB1", at: [300, 260] });
const level = mark("level-1", { shape: "spot", what: "start of bend", is: "level", canal: "MB1", at: [302, 300] });
const wall = mark("wall-1", { shape: "wall", from: [280, 200], to: [296, 200], side: "distal", canal: "MB1" });
const axis = mark("axis-1", {
  ...{ shape: "crownRoot", root: "MB", crown: [300, 20], level: [310, 180], apex: [300, 420], levelIs: "boneCrest" },
});

describe("what is drawn of marks", () => {
  const parts = [...sampleParts(), fragment, end, level, wall, axis];

  it("has its shape and its value", () => {
    const measures = drawnOn(parts);
    expect(only(measures, "fragment").label).toBe("fragment 2.6 mm");
    // 2 mm and the arc of 5.236 mm.
    expect(only(measures, "gap")).toMatchObject({
      label: "MB1 7.2 mm short",
      points: expect.arrayContaining([[300, 260]]),
    });
    expect(only(measures, "wall").label).toBe("wall 0.8 mm");
    expect(only(measures, "crownRoot")).toMatchObject({ label: "crown to root 0.67" });
    expect(away(only(measures, "crownRoot").foot, [300, 180])).toBeLessThan(1e-6);
  });

  it("has a level as a tick on the course, along the canal", () => {
    const tick = only(drawnOn(parts), "level");
    expect(tick.label).toBe("start of bend 10.0 mm");
    expect(away(tick.at, [300, 300])).toBeLessThan(0.5);
    expect(Math.abs(tick.along[0] / tick.along[1])).toBeLessThan(0.1);
  });

  it("without a scale is the mark alone", () => {
    const bare = drawnOn(filmWith(parts));
    expect(only(bare, "fragment").label).toBe("fragment");
    expect(bare.filter(({ kind }) => kind === "spot").map(({ label }) => label)).toEqual([
      "MB1 filling's end",
      "start of bend",
    ]);
    expect(only(bare, "crownRoot").foot).toEqual([300, 180]);
  });
});

describe("the table of what was drawn", () => {
  const parts = [...sampleParts(), fragment, end, level, wall, axis];
  const textOf = (line: Line): string => line.map(({ text }) => text).join("");

  it("has a row for each value with its interval, each number from the ledger", () => {
    const [table] = drawnTable([{ marks: partsOf(parts, "mark") }], readerOf(parts));
    const rows = table?.rows.map((row) => row.map(textOf)) ?? [];
    expect(rows.map(([drawn = "", head = ""]) => `${drawn}|${head}`)).toEqual([
      "Fragment in MB1|Length",
      "|Depth of its top",
      "|Its tip to the apex",
      "|Lies",
      "Filling's end in MB1|Short of the apex",
      "Start of bend in MB1|From the start of the course",
      "|To the foramen",
      "Distal wall of MB1|Thickness",
      "Crown and root, MB|Ratio at the bone crest",
      "|Crown",
      "|Root",
    ]);
    expect(rows[0]?.[2]).toMatch(/^2\.6 mm \(\d\.\d–\d\.\d\)$/);
    expect(rows[3]?.[2]).toBe("in the largest bend");
    const numbers = table?.rows.flat(2).filter(({ text }) => /^[\d.−]+$/.test(text)) ?? [];
    expect(numbers.length).toBeGreaterThan(20);
    for (const { number } of numbers) expect(number?.ledgerEntry).toBeDefined();
  });

  it("in brief has one row for each drawing", () => {
    const [table] = drawnTable([{ marks: partsOf(parts, "mark") }], readerOf(parts), "brief");
    expect(table?.rows.map((row) => row.map(textOf)[0])).toEqual([
      "Fragment in MB1",
      "Filling's end in MB1",
      "Start of bend in MB1",
      "Distal wall of MB1",
      "Crown and root, MB",
    ]);
  });

  it("names the film where several stand in it, and is not there where nothing was drawn", () => {
    const [table] = drawnTable([{ film: "2", marks: partsOf(parts, "mark") }], readerOf(parts));
    expect(table?.columns[0]?.head).toBe("Film");
    expect(table?.rows[0]?.map(textOf)[0]).toBe("2");
    expect(drawnTable([{ marks: partsOf(sampleParts(), "mark") }], readerOf(sampleParts()))).toEqual([]);
  });
});
