import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { encodePng16 } from "../../src/imaging/encode-png16.ts";
import type { DemoFilm } from "../../src/phantom/cases/demo-film.ts";
import { demoFilms } from "../../src/phantom/cases/demo-films.ts";
import { type FilmEntry, filmEntryOf } from "../../src/phantom/cases/film-entry.ts";
import { makeDemoFilm } from "../../src/phantom/cases/make-demo-film.ts";
import { filmPixelsOf } from "../../src/phantom/exposure/film-pixels-of.ts";
import { filmToDicom } from "../../src/phantom/film-to-dicom.ts";
import { samplesHash } from "../../src/phantom/samples-hash.ts";

const folder = join("data", "demo", "films");
const list = join(folder, "films.json");

const sides = {
  A: { laterality: "L", arch: "upper" },
  B: { laterality: "R", arch: "lower" },
  C: { laterality: "L", arch: "lower" },
} as const;

function madeFilm(film: DemoFilm, number: number, dicomFolder: string | undefined): FilmEntry {
  const started = Date.now();
  const made = makeDemoFilm(film);
  const pixels = filmPixelsOf(made);
  const png = encodePng16(pixels);
  writeFileSync(join(folder, `${film.name}.png`), png);
  if (dicomFolder !== undefined) {
    const day = new Date(Date.UTC(2024, 0, 15 + film.dayFromFirstVisit)).toISOString().slice(0, 10).replaceAll("-", "");
    const bytes = filmToDicom(pixels, { name: film.case, date: day, number, ...sides[film.case] });
    writeFileSync(join(dicomFolder, `${film.name}.dcm`), bytes);
  }
  console.log(`${film.name}: ${Math.round((Date.now() - started) / 100) / 10} s, ${Math.round(png.length / 1000)} kB`);
  return filmEntryOf(film, {
    sha256: createHash("sha256").update(png).digest("hex"),
    samplesSha256: samplesHash(made.samples),
    coarseSamplesSha256: samplesHash(makeDemoFilm(film, 4).samples),
  });
}

const hashesOf = ({ sha256, samplesSha256, coarseSamplesSha256 }: FilmEntry): Parameters<typeof filmEntryOf>[1] => ({
  sha256,
  samplesSha256,
  coarseSamplesSha256,
});

/** Points in one line each, so that the list can be read. */
const written = (films: readonly FilmEntry[]): string =>
  `${JSON.stringify(films, undefined, 1).replace(/\[\s+(-?[\d.]+(?:,\s+-?[\d.]+)+)\s+\]/g, (_, numbers: string) => `[${numbers.replace(/\s+/g, " ")}]`)}\n`;

/** Makes films of the demo and writes them with their list. */
export function makeFilms(wanted: { readonly names: readonly string[]; readonly dicomFolder?: string }): void {
  mkdirSync(folder, { recursive: true });
  if (wanted.dicomFolder !== undefined) mkdirSync(wanted.dicomFolder, { recursive: true });
  const kept: FilmEntry[] = existsSync(list) ? JSON.parse(readFileSync(list, "utf8")) : [];
  const films = demoFilms.flatMap((film, i): FilmEntry[] => {
    const isWanted = wanted.names.length === 0 || wanted.names.includes(film.name);
    if (isWanted) return [madeFilm(film, i + 1, wanted.dicomFolder)];
    return kept.filter((entry) => entry.file === `${film.name}.png`).map((entry) => filmEntryOf(film, hashesOf(entry)));
  });
  writeFileSync(list, written(films));
}
