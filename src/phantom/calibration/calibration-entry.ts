import type { OnFilm } from "../cases/film-truth.ts";
import { magnificationOf, projectionOf } from "../exposure/projection.ts";
import type { CalibrationFilm, PlaceKind } from "./calibration-film.ts";
import { truePlace } from "./true-place.ts";

/** A film's line in data/calibration/films.json. */
export interface CalibrationEntry {
  readonly name: string;
  readonly tooth: string;
  readonly columns: number;
  readonly rows: number;
  readonly bitsStored: 8;
  readonly detectorSpacingMm: number;
  readonly magnification: number;
  readonly uRunsTo: "distal" | "mesial";
  /** What is marked, in order, and where it truly is: absent where no single place is the true one. */
  readonly places: readonly { readonly kind: PlaceKind; readonly says: string; readonly truth?: OnFilm }[];
  /** SHA-256 of the file, of its samples as little-endian 16-bit numbers, and of those of the film made four times coarser. */
  readonly sha256: string;
  readonly samplesSha256: string;
  readonly coarseSamplesSha256: string;
}

/** A film's line, given its hashes. */
export function calibrationEntryOf(
  film: CalibrationFilm,
  hashes: Pick<CalibrationEntry, "sha256" | "samplesSha256" | "coarseSamplesSha256">,
): CalibrationEntry {
  const { name, tooth, geometry } = film;
  return {
    ...{ name, tooth, columns: geometry.columns, rows: geometry.rows, bitsStored: 8 },
    detectorSpacingMm: geometry.spacingMm,
    magnification: Number(magnificationOf(geometry).toFixed(6)),
    uRunsTo: geometry.rightIs,
    places: placesOf(film),
    ...hashes,
  };
}

function placesOf({ jaw, toothIndex, geometry, places }: CalibrationFilm): CalibrationEntry["places"] {
  const placed = jaw.teeth[toothIndex];
  if (placed === undefined) throw new Error("a film without its tooth");
  const projection = projectionOf(geometry);
  return places.map((place) => {
    const truth = truePlace(placed, place, projection);
    const { kind, says } = place;
    return truth === undefined ? { kind, says } : { kind, says, truth: [hundredths(truth[0]), hundredths(truth[1])] };
  });
}

const hundredths = (value: number): number => Number(value.toFixed(2));
