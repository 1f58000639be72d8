import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../../imaging/decode-film.ts";
import { placeAt } from "../course.ts";
import { projectionOf } from "../exposure/projection.ts";
import { samplesHash } from "../samples-hash.ts";
import { type CalibrationEntry, calibrationEntryOf } from "./calibration-entry.ts";
import type { CalibrationFilm } from "./calibration-film.ts";
import { calibrationFilms } from "./calibration-films.ts";
import { eightBits } from "./eight-bits.ts";
import { makeCalibrationFilm } from "./make-calibration-film.ts";

const folder = join(import.meta.dirname, "../../../data/calibration");
const list: readonly CalibrationEntry[] = JSON.parse(readFileSync(join(folder, "films.json"), "utf8"));
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, "films", `${name}.png`)));
const filmAt = (index: number): CalibrationFilm => {
  const film = calibrationFilms[index];
  if (film === undefined) throw new Error(`no film ${index}`);
  return film;
};

describe("the films of the exercise on disk", () => {
  it("are twenty, 5 MB in all at most, in the order of their list", () => {
    expect(list.map(({ name }) => name)).toEqual(calibrationFilms.map(({ name }) => name));
    expect(list).toHaveLength(20);
    const bytes = list.reduce((sum, { name }) => sum + statSync(join(folder, "films", `${name}.png`)).size, 0);
    expect(bytes).toBeLessThan(5e6);
  });

  it("are the files that the list was written for, in its sizes and 8 bits", async () => {
    for (const entry of list) {
      const bytes = bytesOf(entry.name);
      expect(createHash("sha256").update(bytes).digest("hex"), entry.name).toBe(entry.sha256);
      const film = await decodeFilm(bytes, entry.name);
      expect([film.columns, film.rows, film.bitsStored]).toEqual([entry.columns, entry.rows, 8]);
      expect(samplesHash(film.samples)).toBe(entry.samplesSha256);
    }
  });

  it("differ in teeth, angles, sides, grain and sharpness", () => {
    const kinds = (of: (film: CalibrationFilm) => unknown) => new Set(calibrationFilms.map(of)).size;
    expect(kinds(({ tooth }) => tooth)).toBeGreaterThanOrEqual(7);
    expect(kinds(({ geometry }) => geometry.horizontalAngleDeg)).toBeGreaterThanOrEqual(10);
    expect(kinds(({ geometry }) => geometry.rightIs)).toBe(2);
    expect(kinds(({ geometry }) => geometry.apexIs)).toBe(2);
    expect(kinds(({ detector }) => detector.quantaPerPixel)).toBe(20);
    expect(kinds(({ detector }) => detector.blurMm)).toBe(20);
  });
});

describe("the places on them", () => {
  it("carry the truth that their description gives today, on the film", () => {
    const [first, last] = [filmAt(0), filmAt(19)];
    for (const film of [first, last]) {
      const entry = list.find(({ name }) => name === film.name);
      expect(entry?.places).toEqual(JSON.parse(JSON.stringify(calibrationEntryOf(film, noHashes).places)));
    }
    for (const { places, columns, rows } of list)
      for (const { truth } of places) {
        if (truth === undefined) continue;
        expect(truth[0] > 20 && truth[0] < columns - 20 && truth[1] > 20 && truth[1] < rows - 20).toBe(true);
      }
  });

  it("are three a film: apex and cusp on all, the entrance of a canal or the crest of the bone", () => {
    for (const { places } of list) {
      expect(places.slice(0, 2).map(({ kind }) => kind)).toEqual(["apex", "cusp"]);
      expect(["entrance", "crest"]).toContain(places[2]?.kind);
      expect(places.filter(({ truth }) => truth === undefined).map(({ kind }) => kind)).toEqual(
        places[2]?.kind === "crest" ? ["crest"] : [],
      );
    }
  });

  it("have the apex at the tip of the root's axis, within the tip's own roundness", () => {
    for (const film of calibrationFilms) {
      const placed = film.jaw.teeth[film.toothIndex];
      const root = placed?.tooth.roots.find(({ shape }) => shape.name === film.places[0]?.of);
      if (placed === undefined || root === undefined) throw new Error(`${film.name} has no root`);
      const tip = projectionOf(film.geometry).toFilm(placed.fromOwn(placeAt(root.axis, root.axis.lengthMm)));
      const truth = list.find(({ name }) => name === film.name)?.places[0]?.truth ?? [0, 0];
      // A tip is 0.5 to 0.8 mm wide to either side, 12 to 20 px; seen at an angle its farthest place moves by a part of that.
      expect(Math.hypot(truth[0] - tip.column, truth[1] - tip.row), film.name).toBeLessThan(8);
    }
  });

  it("have every cusp where the film turns from black to tooth, within 12 px along its column", async () => {
    for (const entry of list) {
      const { samples, columns } = await decodeFilm(bytesOf(entry.name), entry.name);
      const [u = 0, v = 0] = entry.places[1]?.truth ?? [];
      const upper = v > entry.rows / 2;
      const at = (row: number): number => {
        const column = Math.round(u);
        const around = [-2, -1, 0, 1, 2].map((off) => samples[Math.round(row) * columns + column + off] ?? 0);
        return around.reduce((sum, one) => sum + one, 0) / around.length;
      };
      const into = upper ? -1 : 1;
      // Thin enamel lets the beam through: some pixels within the true tip the film is still black.
      expect(at(v - into * 10), `${entry.name} outside`).toBeLessThan(20);
      expect(at(v + into * 25), `${entry.name} inside`).toBeGreaterThan(40);
    }
  });
});

const noHashes = { sha256: "", samplesSha256: "", coarseSamplesSha256: "" };

describe("making them again", () => {
  it.each([0, 11])("gives film %d four times coarser with the same samples", (index) => {
    const film = filmAt(index);
    const made = samplesHash(makeCalibrationFilm(film, 4).samples);
    expect(made).toBe(list.find(({ name }) => name === film.name)?.coarseSamplesSha256);
  });

  it("gives one film at its full size with the same samples", { timeout: 240_000 }, () => {
    const film = filmAt(7);
    const made = eightBits(makeCalibrationFilm(film).samples);
    expect(samplesHash(Uint16Array.from(made))).toBe(list.find(({ name }) => name === film.name)?.samplesSha256);
  });
});
