import type { Detector } from "../exposure/detector.ts";
import type { FilmGeometry } from "../exposure/projection.ts";
import type { JawSegment } from "../jaw-segment.ts";

/** What kind of place is marked on a film of the exercise. */
export type PlaceKind = "apex" | "cusp" | "crest" | "entrance";

/** A place to be marked, before the film is made. */
export interface PlaceToMark {
  readonly kind: PlaceKind;
  /** The root or canal that it belongs to; absent for a cusp and for the crest. */
  readonly of?: string;
  /** Where the cusp stands from mesial to distal, in the tooth's own axes; absent for the others. */
  readonly cuspX?: number;
  /** The place in words, as "Apex of the distal root". */
  readonly says: string;
}

/** One film of the exercise, before it is made. */
export interface CalibrationFilm {
  /** Its name in data/calibration/films, without the ending: film-01 .. film-20. */
  readonly name: string;
  /** The tooth in words, as "lower first molar". */
  readonly tooth: string;
  readonly jaw: JawSegment;
  /** Which tooth of the segment stands in the middle of the film. */
  readonly toothIndex: number;
  readonly geometry: FilmGeometry;
  readonly detector: Detector;
  readonly seed: number;
  readonly places: readonly PlaceToMark[];
}
