import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { greyPng } from "../../src/imaging/grey-png.ts";
import { type CalibrationEntry, calibrationEntryOf } from "../../src/phantom/calibration/calibration-entry.ts";
import type { CalibrationFilm } from "../../src/phantom/calibration/calibration-film.ts";
import { calibrationFilms } from "../../src/phantom/calibration/calibration-films.ts";
import { eightBits } from "../../src/phantom/calibration/eight-bits.ts";
import { makeCalibrationFilm } from "../../src/phantom/calibration/make-calibration-film.ts";
import { samplesHash } from "../../src/phantom/samples-hash.ts";

const folder = join("data", "calibration");
const list = join(folder, "films.json");

function madeFilm(film: CalibrationFilm): CalibrationEntry {
  const { columns, rows, samples } = makeCalibrationFilm(film);
  const bytes = eightBits(samples);
  const png = greyPng({ columns, rows, depth: 8, bytes });
  writeFileSync(join(folder, "films", `${film.name}.png`), png);
  console.log(`${film.name}: ${film.tooth}, ${Math.round(png.length / 1000)} kB`);
  return calibrationEntryOf(film, {
    sha256: createHash("sha256").update(png).digest("hex"),
    samplesSha256: samplesHash(Uint16Array.from(bytes)),
    coarseSamplesSha256: samplesHash(makeCalibrationFilm(film, 4).samples),
  });
}

const hashesOf = ({ sha256, samplesSha256, coarseSamplesSha256 }: CalibrationEntry) => ({
  sha256,
  samplesSha256,
  coarseSamplesSha256,
});

/** Points in one line each, so that the list can be read. */
const written = (films: readonly CalibrationEntry[]): string =>
  `${JSON.stringify(films, undefined, 1).replace(/\[\s+(-?[\d.]+(?:,\s+-?[\d.]+)+)\s+\]/g, (_, numbers: string) => `[${numbers.replace(/\s+/g, " ")}]`)}\n`;

/** Makes films of the exercise and writes them with their list; without names all, with names only those. */
export function makeFilms(names: readonly string[]): void {
  mkdirSync(join(folder, "films"), { recursive: true });
  const kept: CalibrationEntry[] = existsSync(list) ? JSON.parse(readFileSync(list, "utf8")) : [];
  const films = calibrationFilms.flatMap((film): CalibrationEntry[] => {
    if (names.length === 0 || names.includes(film.name)) return [madeFilm(film)];
    return kept.filter(({ name }) => name === film.name).map((entry) => calibrationEntryOf(film, hashesOf(entry)));
  });
  writeFileSync(list, written(films));
}
