import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { calibrateBinding } from "./calibrate.ts";
import { lesionBinding } from "./lesion.ts";

/** A round outline of 36 corners and radius 40 px about (300, 460); the sample's film has 0.05 mm a pixel: 2 mm. */
const outline = (what: string, sigmaPx?: number): Part => {
  const points = Array.from({ length: 36 }, (_, index): [number, number] => {
    const turn = (index * Math.PI) / 18;
    return [300 + 40 * Math.cos(turn), 460 + 40 * Math.sin(turn)];
  });
  return part("mark", "outline-1", { shape: "outline", film: "film-1", what, points, ...(sigmaPx ? { sigmaPx } : {}) });
};
const spot = (id: string, what: string, at: [number, number]): Part =>
  part("mark", id, { shape: "spot", film: "film-1", what, at });

function lesionsOf(...parts: Part[]): LedgerEntry[] {
  const source = { caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined };
  const entries = deriveLedger({ ...source, parts }, [calibrateBinding, lesionBinding]);
  return entries.filter(({ topic }) => topic === "lesion");
}

describe("the lesion of a film in the ledger", () => {
  // Radius 2 mm: 12.566 mm2 less the 0.51 % that 36 corners cut off.
  it("has the size of its outline in the film's scale, and the apex that its note names beside it", () => {
    const [entry] = lesionsOf(
      ...sampleParts(),
      outline("Lesion at MB1", 2),
      spot("far", "apex P", [500, 100]),
      spot("near", "Apex MB1", [300, 400]),
      spot("other", "nutrient canal", [300, 410]),
    );
    expect(entry?.subject).toBe("lesion of outline-1");
    expect(entry?.output).toMatchObject({ areaMm2: expect.closeTo(12.503, 2), apexDistanceMm: expect.closeTo(1, 9) });
    expect(entry?.input).toMatchObject({ sigmaMm: expect.closeTo(0.1, 12), apex: [15, 20] });
    expect(entry?.inputPaths).toEqual(
      expect.arrayContaining([
        { input: "points", record: "outline-1/points" },
        { input: "sigmaMm", record: "outline-1/sigmaPx" },
        { input: "apex", record: "near/at" },
      ]),
    );
  });

  it("takes the apex nearest to its middle where its note names none, and never one of another root", () => {
    const apices = [spot("inside", "apex", [310, 450]), spot("beside", "apex DB", [345, 460])];
    const apexFor = (what: string, ...spots: Part[]) =>
      lesionsOf(...sampleParts(), outline(what), ...spots)[0]?.inputPaths.find(({ input }) => input === "apex")?.record;
    expect(apexFor("lesion", ...apices)).toBe("inside/at");
    expect(apexFor("lesion of the DB root", ...apices.slice(1))).toBe("beside/at");
    expect(apexFor("lesion at MB1", ...apices)).toBe("inside/at");
    expect(apexFor("lesion at MB1", ...apices.slice(1))).toBeUndefined();
  });

  it("takes the person's own click error where the mark has none, and no apex where none is marked", () => {
    const [entry] = lesionsOf(...sampleParts(), outline("lesion"));
    expect(entry?.input).toMatchObject({ sigmaMm: firstSettings.clickSigmaPx * 0.05 });
    expect(entry?.input).not.toHaveProperty("apex");
  });

  it("is not asked of an outline that is called something else", () => {
    expect(lesionsOf(...sampleParts(), outline("sinus floor"))).toEqual([]);
    expect(lesionsOf(...sampleParts(), outline("no lesion"))).toEqual([]);
  });

  it("says what is missing where the film has no scale", () => {
    const bare = sampleParts().map((one) => {
      if (one.kind !== "film") return one;
      const { pixelSpacingMm: _spacing, calibrationType: _type, ...technical } = one.body.technical;
      return { ...one, body: { ...one.body, technical } };
    });
    const [entry] = lesionsOf(...bare, outline("lesion"));
    expect(entry).toMatchObject({ refused: ["the film has no scale; mark a known length on it"] });
  });
});
