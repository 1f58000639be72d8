import type { FilmPlace } from "./camera.ts";
import type { LevelView } from "./ready-views.ts";

/** The way in which the tube moved from the first film to the second. */
export type TubeMove = "mesial" | "distal";

/** What the movement of an image against another tells. */
export type ClarkSide = "buccal" | "lingual" | "undetermined";

/**
 * On which side a thing lies whose image moved against a fixed one: against the tube's shift moves what lies to buccal
 * (farther from the film), with it what lies to lingual.
 * Takes how far the image moved to distal, in mm, and how much of that noise and foreshortening can explain.
 * @source Clark CA, Proc R Soc Med 1910;3:87-90 (memory); Richards AG, "The buccal object rule" (seen);
 * docs/methods/two-view.md C15
 */
export function clarkSide(movedDistalMm: number, moved: TubeMove, explainedMm: number): ClarkSide {
  if (Math.abs(movedDistalMm) <= explainedMm) return "undetermined";
  return movedDistalMm > 0 === (moved === "mesial") ? "buccal" : "lingual";
}

/** Up to 30 degrees of shift shorten or lengthen a distance across the film by this share. */
const foreshortening = 0.15;
const noiseReach = 3;

/** How far an image moved to distal from the first film to the second, and how much of it can be explained without depth. */
export interface Movement {
  readonly distalMm: number;
  readonly explainedMm: number;
}

/** The movement of the canal's end against its own coronal part, which is drawn on as a line. */
export function bendMovement(first: LevelView, second: LevelView, sigmaMm: number): Movement {
  const [a, b] = [first, second].map(({ points }) => aside(points));
  return movementOf(a ?? 0, b ?? 0, 3 * sigmaMm);
}

/** The movement of the canal's middle against a landmark. */
export function canalMovement(
  first: LevelView,
  second: LevelView,
  landmark: string,
  sigmaMm: number,
): Movement | undefined {
  const [a, b] = [first, second].map(({ points, landmarks }) => {
    const mark = landmarks[landmark];
    return mark && points.reduce((sum, { u }) => sum + u, 0) / points.length - mark.u;
  });
  return a === undefined || b === undefined ? undefined : movementOf(a, b, 2 * sigmaMm);
}

const movementOf = (first: number, second: number, noiseMm: number): Movement => ({
  distalMm: second - first,
  explainedMm: noiseReach * noiseMm + foreshortening * Math.max(Math.abs(first), Math.abs(second)),
});

/** How far the last point lies to distal of the line through the coronal third. */
function aside(points: readonly FilmPlace[]): number {
  const coronal = points.slice(0, Math.max(3, Math.ceil(points.length / 3)));
  const n = coronal.length;
  const u = coronal.reduce((sum, one) => sum + one.u, 0) / n;
  const v = coronal.reduce((sum, one) => sum + one.v, 0) / n;
  const square = coronal.reduce((sum, one) => sum + (one.v - v) ** 2, 0);
  const slope = square === 0 ? 0 : coronal.reduce((sum, one) => sum + (one.u - u) * (one.v - v), 0) / square;
  const last = points.at(-1);
  return last === undefined ? 0 : last.u - u - slope * (last.v - v);
}
