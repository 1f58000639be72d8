import { magnificationOf, projectionOf } from "../exposure/projection.ts";
import type { DemoFilm } from "./demo-film.ts";
import { type FilmTruth, truthOf } from "./film-truth.ts";

/** A film's line in data/demo/films/films.json. */
export interface FilmEntry {
  readonly file: string;
  readonly case: DemoFilm["case"];
  readonly dayFromFirstVisit: number;
  readonly kind: DemoFilm["kind"];
  readonly shows: string;
  readonly horizontalAngleDeg: number;
  readonly verticalAngleDeg: number;
  readonly receptor: "turnsWithBeam" | "fixed";
  /** Where the columns of the film run to, and where the roots point. */
  readonly uRunsTo: "distal" | "mesial";
  readonly apexIs: "up" | "down";
  readonly sourceToToothMm: number;
  readonly toothToDetectorMm: number;
  readonly detectorSpacingMm: number;
  readonly magnification: number;
  readonly columns: number;
  readonly rows: number;
  readonly bitsStored: 12;
  /** SHA-256 of the file. */
  readonly sha256: string;
  /** SHA-256 of the samples as little-endian 16-bit numbers, and of the film made four times coarser. */
  readonly samplesSha256: string;
  readonly coarseSamplesSha256: string;
  readonly truth: FilmTruth;
}

/** A film's line, given its hashes. */
export function filmEntryOf(
  film: DemoFilm,
  hashes: Pick<FilmEntry, "sha256" | "samplesSha256" | "coarseSamplesSha256">,
): FilmEntry {
  const { geometry } = film;
  return {
    file: `${film.name}.png`,
    case: film.case,
    dayFromFirstVisit: film.dayFromFirstVisit,
    kind: film.kind,
    shows: film.shows,
    horizontalAngleDeg: geometry.horizontalAngleDeg,
    verticalAngleDeg: geometry.verticalAngleDeg,
    receptor: geometry.receptor,
    uRunsTo: geometry.rightIs,
    apexIs: geometry.apexIs,
    sourceToToothMm: geometry.sourceToToothMm,
    toothToDetectorMm: geometry.toothToDetectorMm,
    detectorSpacingMm: geometry.spacingMm,
    magnification: Number(magnificationOf(geometry).toFixed(6)),
    columns: geometry.columns,
    rows: geometry.rows,
    bitsStored: 12,
    ...hashes,
    truth: truthOf(film, projectionOf(geometry)),
  };
}
