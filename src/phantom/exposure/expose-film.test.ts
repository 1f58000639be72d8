import { describe, expect, it } from "vitest";
import { filmsOfCaseA } from "../cases/case-a.ts";
import { upperMolarSegment } from "../cases/upper-left-segment.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { usualDetector } from "./detector.ts";
import { type ExposedFilm, exposeFilm } from "./expose-film.ts";
import { filmPixelsOf } from "./film-pixels-of.ts";

const [straight] = filmsOfCaseA;
if (straight === undefined) throw new Error("case A has no film");
const geometry = { ...straight.geometry, columns: 160, rows: 120, spacingMm: 0.25 };
const expose = (jaw: JawSegment, seed = 1, progress?: (part: number) => void): ExposedFilm =>
  exposeFilm(jaw, {
    geometry,
    detector: { ...usualDetector, quantaPerPixel: 1e6, readoutQuanta: 0 },
    voxelMm: { x: 0.3, y: 0.5, z: 0.3 },
    seed,
    ...(progress === undefined ? {} : { progress }),
  });
// Only the middle of the segment, because every test makes a film of its own.
const segment: JawSegment = {
  ...upperMolarSegment(26),
  box: { from: { x: -9, y: -10, z: -9 }, to: { x: 9, y: 10, z: 20 } },
};
const bare = expose(segment);
const sampleAt = (film: ExposedFilm, place: { x: number; y: number; z: number }): number => {
  const { column, row } = film.projection.toFilm(place);
  return film.samples[Math.round(row) * film.columns + Math.round(column)] ?? -1;
};

describe("exposeFilm", () => {
  it("is the same for the same seed, and has other grain for another", () => {
    expect(expose(segment).samples).toEqual(bare.samples);
    expect(expose(segment, 2).samples).not.toEqual(bare.samples);
  });
  it("shows air black, bone brighter, and the trunk of a tooth brighter still", () => {
    const air = sampleAt(bare, { x: 0, y: 0, z: -9 });
    const bone = sampleAt(bare, { x: -5.4, y: 0, z: 7 });
    const trunk = sampleAt(bare, { x: 3.3, y: 0, z: 0 });
    expect(air).toBeLessThan(150);
    expect(bone).toBeGreaterThan(air + 500);
    expect(trunk).toBeGreaterThan(bone + 100);
  });
  it("is darker where a lesion took the bone, and nowhere else", () => {
    const place = { x: -7, y: 0, z: 14 };
    const ill = expose({ ...segment, lesions: [{ middle: place, radiusMm: 2.5, softnessMm: 0.6, seed: 1 }] });
    expect(sampleAt(ill, place)).toBeLessThan(sampleAt(bare, place) - 200);
    expect(Math.abs(sampleAt(ill, { x: 6, y: 0, z: 0 }) - sampleAt(bare, { x: 6, y: 0, z: 0 }))).toBeLessThan(40);
  });
  it("is white where metal stands, cut out of the tooth", () => {
    const box = { from: { x: -2, y: -2, z: -6 }, to: { x: 2, y: 2, z: -3 } };
    const solid = (x: number, y: number, z: number): number =>
      Math.max(Math.abs(x), Math.abs(y), Math.abs(z + 4.5)) - 1.3;
    const filled = expose({ ...segment, insets: [{ solid, box, material: "amalgam" }] });
    expect(sampleAt(filled, { x: 0, y: 0, z: -4.5 })).toBeGreaterThan(3800);
    const hollow = expose({ ...segment, insets: [{ solid, box, material: "air" }] });
    expect(sampleAt(hollow, { x: 0, y: 0, z: -4.5 })).toBeLessThan(sampleAt(bare, { x: 0, y: 0, z: -4.5 }));
  });
  it("lets a later inset cut an earlier one", () => {
    const box = { from: { x: -2, y: -2, z: -6 }, to: { x: 2, y: 2, z: -3 } };
    const solid = (x: number, y: number, z: number): number =>
      Math.max(Math.abs(x), Math.abs(y), Math.abs(z + 4.5)) - 1.3;
    const metal = { solid, box, material: "amalgam" } as const;
    const both = expose({ ...segment, insets: [metal, { solid, box, material: "air" }] });
    const cutOnly = expose({ ...segment, insets: [{ solid, box, material: "air" }] });
    expect(Math.abs(sampleAt(both, { x: 0, y: 0, z: -4.5 }) - sampleAt(cutOnly, { x: 0, y: 0, z: -4.5 }))).toBeLessThan(
      40,
    );
  });
  it("tells how far it is, rising to 1", () => {
    const heard: number[] = [];
    expose(segment, 1, (part) => heard.push(part));
    expect(heard.at(-1)).toBe(1);
    expect(heard).toEqual([...heard].sort((a, b) => a - b));
    expect(heard.length).toBeGreaterThan(10);
  });
});

describe("filmPixelsOf", () => {
  it("keeps 12 bits, the spacing at the receptor and the magnification (300 + 13) / 300", () => {
    const film = filmPixelsOf(bare);
    expect([film.columns, film.rows, film.bitsStored, film.photometric]).toEqual([160, 120, 12, "MONOCHROME2"]);
    expect(film.technical.detectorSpacingMm).toEqual([0.25, 0.25]);
    expect(film.technical.magnification).toBeCloseTo(313 / 300, 9);
    expect(film.samples.every((sample) => sample < 4096)).toBe(true);
  });
});
