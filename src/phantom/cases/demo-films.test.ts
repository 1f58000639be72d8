import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { decodeFilm } from "../../imaging/decode-film.ts";
import { projectionOf } from "../exposure/projection.ts";
import { samplesHash } from "../samples-hash.ts";
import { canalNamed, type DemoFilm } from "./demo-film.ts";
import { demoFilms } from "./demo-films.ts";
import type { FilmEntry } from "./film-entry.ts";
import { truthOf } from "./film-truth.ts";
import { makeDemoFilm } from "./make-demo-film.ts";

const folder = join(import.meta.dirname, "../../../data/demo/films");
const list: readonly FilmEntry[] = JSON.parse(readFileSync(join(folder, "films.json"), "utf8"));
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, `${name}.png`)));
const entryOf = (name: string): FilmEntry => {
  const found = list.find((entry) => entry.file === `${name}.png`);
  if (found === undefined) throw new Error(`${name} is not on the list`);
  return found;
};
const filmNamed = (name: string): DemoFilm => {
  const found = demoFilms.find((film) => film.name === name);
  if (found === undefined) throw new Error(`no film ${name}`);
  return found;
};

describe("the demo's films on disk", () => {
  it("are on the list in its order, 25 MB in all at most", () => {
    expect(list.map((entry) => entry.file)).toEqual(demoFilms.map((film) => `${film.name}.png`));
    const bytes = list.reduce((sum, entry) => sum + statSync(join(folder, entry.file)).size, 0);
    expect(bytes).toBeLessThan(25e6);
  });
  it("are the files that the list was written for", () => {
    for (const entry of list) {
      const bytes = readFileSync(join(folder, entry.file));
      expect(createHash("sha256").update(bytes).digest("hex"), entry.file).toBe(entry.sha256);
    }
  });
  it("hold 12-bit samples with the listed hash", async () => {
    for (const name of ["a-day-0-straight", "b-day-0-mesial-25", "c-recall-6-months"]) {
      const film = await decodeFilm(bytesOf(name), `${name}.png`);
      expect([film.bitsStored, film.columns, film.rows]).toEqual([12, entryOf(name).columns, entryOf(name).rows]);
      expect(samplesHash(film.samples)).toBe(entryOf(name).samplesSha256);
    }
  });
  it("carry the truth that their description gives today", () => {
    for (const film of demoFilms)
      expect(entryOf(film.name).truth).toEqual(JSON.parse(JSON.stringify(truthOf(film, projectionOf(film.geometry)))));
  });
});

describe("making them again", () => {
  it.each(["a-day-0-straight", "a-visit-2-final", "b-visit-1-length", "c-visit-2-barrier"])(
    "gives %s four times coarser with the same samples",
    (name) => expect(samplesHash(makeDemoFilm(filmNamed(name), 4).samples)).toBe(entryOf(name).coarseSamplesSha256),
  );
  it("gives one film at its full size with the same samples", { timeout: 240_000 }, () => {
    const made = makeDemoFilm(filmNamed("c-day-0-straight"));
    expect(samplesHash(made.samples)).toBe(entryOf("c-day-0-straight").samplesSha256);
  });
});

/** Where the film is brightest across a line, within 8 px to either side: pixels off the line. */
function brightestOff(
  film: { columns: number; samples: Uint16Array },
  at: readonly [number, number],
  along: readonly [number, number],
): number {
  const length = Math.hypot(...along);
  const across = [-along[1] / length, along[0] / length] as const;
  const sum = (off: number): number => {
    let total = 0;
    for (let step = -4; step <= 4; step++) {
      const column = Math.round(at[0] + across[0] * off + (along[0] / length) * step);
      const row = Math.round(at[1] + across[1] * off + (along[1] / length) * step);
      total += film.samples[row * film.columns + column] ?? 0;
    }
    return total;
  };
  const offsets = Array.from({ length: 33 }, (_, i) => i / 2 - 8);
  return offsets.reduce((best, off) => (sum(off) > sum(best) ? off : best), 0);
}

describe("the truth falls on what the film shows", () => {
  it.each([
    ["a-visit-2-final", "MB1", 2, 12],
    ["a-visit-2-final", "P", 3, 18],
    ["b-visit-2-final", "D", 3, 18],
    ["b-visit-2-final", "DL", 3, 14],
    ["b-visit-1-length", "D", 6, 16],
  ] as const)("%s: the line in %s is bright within 2 px of the canal's true course", async (name, canal, from, to) => {
    const film = await decodeFilm(bytesOf(name), `${name}.png`);
    const course = entryOf(name).truth.canals[canal] ?? [];
    const offs = course.slice(from, to).flatMap((at, i) => {
      const next = course[from + i + 1];
      return next === undefined ? [] : [Math.abs(brightestOff(film, at, [next[0] - at[0], next[1] - at[1]]))];
    });
    // A filling is 8 to 20 px wide and may lie against other bright things; half its width would be 4 px.
    expect(offs.sort((a, b) => a - b)[Math.floor(offs.length / 2)]).toBeLessThanOrEqual(2);
  });
  it("states instruments' lengths that their ends on the film bear out within 10 % (they are curved and lean)", () => {
    for (const name of ["a-visit-1-length", "b-visit-1-length"]) {
      const entry = entryOf(name);
      const known = Object.values(entry.truth.knownLengths ?? {});
      expect(known).toHaveLength(4);
      expect(known).toContainEqual(entry.truth.knownLength);
      for (const { lengthMm, from, to } of known) {
        const onFilmMm = (Math.hypot(from[0] - to[0], from[1] - to[1]) * entry.detectorSpacingMm) / entry.magnification;
        expect(onFilmMm / lengthMm).toBeGreaterThan(0.9);
        expect(onFilmMm / lengthMm).toBeLessThan(1.1);
      }
    }
  });
  it("keeps every canal and stop on the film", () => {
    for (const entry of list) {
      const ends = Object.values(entry.truth.knownLengths ?? {}).flatMap(({ from, to }) => [from, to]);
      for (const [column, row] of [...Object.values(entry.truth.canals).flat(), ...ends]) {
        expect(column).toBeGreaterThan(0);
        expect(column).toBeLessThan(entry.columns);
        expect(row).toBeGreaterThan(0);
        expect(row).toBeLessThan(entry.rows);
      }
    }
  });
  it("lets the lesion of case A shrink: 2.2, 1.6, 0.9, 0.2 mm", () => {
    const radii = ["a-visit-2-final", "a-recall-6-months", "a-recall-12-months", "a-recall-24-months"];
    expect(radii.map((name) => entryOf(name).truth.lesionRadiusMm)).toEqual([2.2, 1.6, 0.9, 0.2]);
  });
  it("names a canal that is not there", () => {
    expect(() => canalNamed(filmNamed("c-day-0-straight").jaw, "MB2")).toThrow(/no canal MB2/);
  });
});
