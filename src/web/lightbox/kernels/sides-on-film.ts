import type { Film } from "./film-name.ts";
import { type FilmOrientation, seenStep } from "./film-placement.ts";

/** The patient's side on which the tooth stands. */
export type PatientSide = "right" | "left";

/** What the sides of a film are as it is held now. */
export interface SidesOnFilm {
  /** The patient's side as the letter on the film. */
  readonly letter: "R" | "L";
  /** Whether the letter reads as it is written: the film is seen as from outside the mouth, in front of the patient. */
  readonly isReadable: boolean;
  /** What lies toward each edge of the screen; absent where the film does not say. */
  readonly edges: Partial<Record<"left" | "right" | "up" | "down", "mesial" | "distal">>;
  /** What has to be said about it; absent where it is seen as from outside. */
  readonly says?: string;
}

/**
 * What the sides of a film are, from the tooth's side, what the record says of the film, and how it is held. Seen from in
 * front of the patient, a tooth of the right side has its mesial side toward the viewer's right, one of the left side its
 * distal side (plane geometry).
 */
export function sidesOnFilm(
  side: PatientSide,
  uRunsTo: Film["body"]["uRunsTo"],
  orientation: FilmOrientation,
): SidesOnFilm {
  const { mirrored } = orientation;
  const wasReversed = uRunsTo !== "unknown" && (side === "right") !== (uRunsTo === "mesial");
  const says = saysOf(mirrored, wasReversed);
  return {
    letter: side === "right" ? "R" : "L",
    isReadable: mirrored === wasReversed,
    edges: uRunsTo === "unknown" ? {} : edgesOf(uRunsTo, orientation),
    ...(says === undefined ? {} : { says }),
  };
}

/** What lies to the right as the film is held; undefined where the film does not say, or lies on its side. */
export const seenToRight = (
  uRunsTo: Film["body"]["uRunsTo"],
  orientation: FilmOrientation,
): "mesial" | "distal" | undefined => (uRunsTo === "unknown" ? undefined : edgesOf(uRunsTo, orientation).right);

function saysOf(mirrored: boolean, wasReversed: boolean): string | undefined {
  if (mirrored) return wasReversed ? "mirrored, now as from outside" : "mirrored";
  return wasReversed ? "as from inside the mouth" : undefined;
}

function edgesOf(toRight: "mesial" | "distal", orientation: FilmOrientation): SidesOnFilm["edges"] {
  const { x, y } = seenStep(orientation, { column: 1, row: 0 });
  const toLeft = toRight === "mesial" ? "distal" : "mesial";
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? { right: toRight, left: toLeft } : { left: toRight, right: toLeft };
  return y > 0 ? { down: toRight, up: toLeft } : { up: toRight, down: toLeft };
}
