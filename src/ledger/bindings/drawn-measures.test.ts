import { describe, expect, it } from "vitest";
import { part, sampleParts, samplePoints } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { calibrateBinding } from "./calibrate.ts";
import { crownRootBinding } from "./crown-root.ts";
import { curvatureBinding } from "./curvature.ts";
import { fillingEndBinding } from "./filling-end.ts";
import { fragmentOnFilmBinding } from "./fragment-on-film.ts";
import { levelOnCanalBinding } from "./level-on-canal.ts";
import { wallOnFilmBinding } from "./wall-on-film.ts";

// The sample's film has 0.05 mm a pixel; its MB1 goes 10 mm straight down from (300, 100), then 60 degrees round 5 mm.
const drawn = [fillingEndBinding, fragmentOnFilmBinding, levelOnCanalBinding, wallOnFilmBinding, crownRootBinding];
const onFilm = { film: "film-1" };
const spot = (id: string, body: object): Part =>
  part("mark", id, { ...onFilm, shape: "spot", what: "", at: [300, 260], ...body });
const fragment = (body: object = {}): Part =>
  part("mark", "fragment-1", {
    ...onFilm,
    shape: "fragment",
    canal: "MB1",
    anchors: samplePoints().slice(45, 56),
    points: samplePoints().slice(45, 56),
    ...body,
  });
const crownRoot = part("mark", "crown-1", {
  ...onFilm,
  ...{ shape: "crownRoot", crown: [300, 20], level: [310, 180], apex: [300, 420], levelIs: "boneCrest" },
});
const wall = part("mark", "wall-1", { ...onFilm, shape: "wall", from: [280, 200], to: [296, 200], side: "distal" });

const entries = (parts: Part[]): LedgerEntry[] =>
  deriveLedger(
    { caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined, parts },
    [calibrateBinding, curvatureBinding, ...drawn],
  );
function entryOf(subject: string, ...marks: Part[]): LedgerEntry {
  const found = entries([...sampleParts(), ...marks]).find((entry) => entry.subject === subject);
  if (found === undefined) throw new Error(`${subject} is not asked`);
  return found;
}
const withoutScale = (): Part[] =>
  sampleParts().map((one) => {
    if (one.kind !== "film") return one;
    const { pixelSpacingMm: _spacing, calibrationType: _type, ...technical } = one.body.technical;
    return { ...one, body: { ...one.body, technical } };
  });
/** The sample's course under another kind. */
const withKind = (kind: "filledCanal" | "instrument"): Part[] =>
  sampleParts().map((one) =>
    one.kind === "mark" && one.body.shape === "trace" ? { ...one, body: { ...one.body, kind } } : one,
  );

describe("a level of a canal in the ledger", () => {
  it("is read along the course of its canal, from where that begins", () => {
    const { output, inputPaths, input } = entryOf(
      "levelOnCanal of level-1",
      spot("level-1", { is: "level", canal: "MB1", what: "start of bend" }),
    );
    expect(output).toMatchObject({ fromStartMm: expect.closeTo(8, 9), startsAt: "referencePoint" });
    expect(input).toMatchObject({ what: "start of bend", sigmaMm: firstSettings.clickSigmaPx * 0.05 });
    for (const record of ["level-1/at", "trace-1/points", "settings/clickSigmaPx"])
      expect(inputPaths.map((path) => path.record)).toContain(record);
  });

  it.each([
    [{ is: "level" }, "name the canal"],
    [{ is: "level", canal: "P" }, "trace P on this film"],
  ])("%j says what is missing", (body, why) => {
    expect(entryOf("levelOnCanal of level-1", spot("level-1", body)).refused?.join()).toContain(why);
  });

  it("has no depth on a film without a scale", () => {
    const level = spot("level-1", { is: "level", canal: "MB1" });
    const found = entries([...withoutScale(), level]).find(({ topic }) => topic === "levelOnCanal");
    expect(found?.refused).toEqual(["the film has no scale; mark a known length on it"]);
  });
});

describe("a filling's end in the ledger", () => {
  const end = spot("end-1", { is: "fillingEnd", canal: "MB1" });

  it("is counted to the end of the canal's course, or to the apex that is marked for canal or root", () => {
    // From 8 mm to the end of the course: 2 mm and the arc of 5.236 mm.
    expect(entryOf("fillingEnd of end-1", end).output).toMatchObject({ shortMm: expect.closeTo(7.236, 2) });
    const apexAt = { is: "apex", at: [300, 300] };
    for (const owner of [{ canal: "MB1" }, { root: "MB" }])
      expect(entryOf("fillingEnd of end-1", end, spot("apex-1", { ...apexAt, ...owner })).output).toMatchObject({
        shortMm: expect.closeTo(2, 6),
      });
    const named = { what: "apex MB1", at: [300, 280] };
    expect(entryOf("fillingEnd of end-1", end, spot("apex-1", named)).output).toMatchObject({
      shortMm: expect.closeTo(1, 6),
    });
    const other = spot("apex-1", { ...apexAt, canal: "P" });
    expect(entryOf("fillingEnd of end-1", end, other).output).toMatchObject({ shortMm: expect.closeTo(7.236, 2) });
  });

  it("takes the end of a traced filling where none is marked and the apex is, and never as an apex", () => {
    const apex = spot("apex-1", { is: "apex", canal: "MB1", at: samplePoints().at(-1) });
    const ask = (...marks: Part[]) =>
      entries([...withKind("filledCanal"), ...marks]).filter(({ topic }) => topic === "fillingEnd");
    expect(ask(apex)).toMatchObject([{ subject: "fillingEnd of trace-1", output: { distanceMm: 0 } }]);
    expect(ask(apex, end).map(({ subject }) => subject)).toEqual(["fillingEnd of end-1"]);
    expect(ask()).toEqual([]);
    expect(ask(end)[0]?.refused?.join()).toContain("mark the apex of MB1");
  });

  it("says which canal is missing, and keeps the side that was said", () => {
    expect(entryOf("fillingEnd of end-1", spot("end-1", { is: "fillingEnd" })).refused?.join()).toContain(
      "name the canal",
    );
    const apex = spot("apex-1", { is: "apex", canal: "P", at: [300, 240] });
    const beyond = spot("end-1", { is: "fillingEnd", canal: "P", lies: "beyond" });
    const { output, inputPaths } = entryOf("fillingEnd of end-1", beyond, apex);
    expect(output).toMatchObject({ shortMm: expect.closeTo(-1, 9), readAlong: "straight" });
    expect(inputPaths).toContainEqual({ input: "lies", record: "end-1/lies" });
  });
});

describe("a fragment in the ledger", () => {
  it("lies in its canal's course, to the bend that the curvature of that course found", () => {
    const { output, input, inputPaths } = entryOf("fragmentOnFilm of fragment-1", fragment());
    // Ten steps of 3 degrees on 5 mm, from the fifth of them on.
    const step = (Math.PI / 60) * 5;
    expect(output).toMatchObject({ lengthMm: expect.closeTo(10 * step, 2), tipToApexMm: expect.closeTo(5 * step, 2) });
    expect(output).toMatchObject({ topDepthMm: expect.closeTo(10 + 5 * step, 2), bend: { lies: "in" } });
    expect(input).toMatchObject({ bend: { angleDeg: expect.closeTo(60, 0), fromMm: expect.closeTo(10, 0) } });
    expect(inputPaths.some(({ input: at, record }) => at === "bend" && /^ledger\/.*\/bends$/.test(record))).toBe(true);
  });

  it("without a traced canal has its length alone, and on a film without a scale nothing", () => {
    const { output } = entryOf("fragmentOnFilm of fragment-1", fragment({ canal: "P" }));
    expect(output).not.toHaveProperty("topDepthMm");
    expect(entries([...withoutScale(), fragment()]).find(({ topic }) => topic === "fragmentOnFilm")?.refused).toEqual([
      "the film has no scale; mark a known length on it",
    ]);
  });
});

describe("walls, crown and root in the ledger", () => {
  it("have their thickness and ratio in the film's scale", () => {
    expect(entryOf("wallOnFilm of wall-1", wall).output).toMatchObject({ thicknessMm: expect.closeTo(0.8, 12) });
    expect(entryOf("wallOnFilm of wall-1", wall).input).toMatchObject({ side: "distal" });
    expect(entryOf("crownRoot of crown-1", crownRoot).output).toMatchObject({
      crownMm: expect.closeTo(8, 9),
      crownToRoot: expect.closeTo(8 / 12, 9),
    });
  });

  it("on a film without a scale leave the ratio", () => {
    const bare = entries([...withoutScale(), wall, crownRoot]);
    expect(bare.find(({ topic }) => topic === "wallOnFilm")?.refused).toHaveLength(1);
    const ratio = bare.find(({ topic }) => topic === "crownRoot");
    expect(ratio?.output).toMatchObject({ crownToRoot: expect.closeTo(8 / 12, 9) });
    expect(ratio?.input).toMatchObject({ unit: "px", sigmaPx: firstSettings.clickSigmaPx });
  });

  it("take the click error that a mark states", () => {
    const { input, inputPaths } = entryOf("wallOnFilm of wall-1", {
      ...wall,
      body: { ...wall.body, sigmaPx: 3 },
    } as Part);
    expect(input).toMatchObject({ sigmaMm: expect.closeTo(0.15, 12) });
    expect(inputPaths).toContainEqual({ input: "sigmaMm", record: "wall-1/sigmaPx" });
  });
});

describe("a working length", () => {
  it("is not counted along a filling, but along an instrument", () => {
    const asked = (parts: Part[]) =>
      deriveLedger({
        caseId: "c",
        settings: firstSettings,
        at: "2024-10-01T10:00:00Z",
        known: () => undefined,
        parts,
      }).some(({ topic }) => topic === "workingLength");
    expect([asked(withKind("instrument")), asked(withKind("filledCanal"))]).toEqual([true, false]);
  });
});
