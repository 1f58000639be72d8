import type { PlanePoint } from "../../units.ts";
import type { LesionInput } from "./lesion-input.ts";

/** A share of the area that is worth a word. */
const worthSaying = 0.02;
/** Clicks nearer together than this many standard deviations are hardly clicked each by itself. */
const apartInSigmas = 3;

/**
 * What to keep in mind about an outline: too few corners for a round lesion, or more than were clicked each by itself.
 * @source plane geometry: a polygon of n corners on an ellipse has sin(2 pi / n) / (2 pi / n) of its area
 */
export function lesionCautions(corners: readonly PlanePoint[], { sigmaMm }: LesionInput): string[] {
  const step = (2 * Math.PI) / corners.length;
  const lost = 1 - Math.sin(step) / step;
  const few =
    `An outline of ${corners.length} corners cuts off the round between them: ` +
    `an ellipse would read ${(100 * lost).toFixed(1)} % too small; mark more corners if the lesion is round.`;
  const near =
    "The corners lie nearer together than the click error: neighbours err together, and the intervals are too narrow.";
  return [
    ...(lost > worthSaying ? [few] : []),
    ...(sigmaMm !== undefined && meanStep(corners) < apartInSigmas * sigmaMm ? [near] : []),
  ];
}

const meanStep = (corners: readonly PlanePoint[]): number =>
  corners.reduce((sum, { x, y }, index) => {
    const before = corners.at(index - 1);
    return before === undefined ? sum : sum + Math.hypot(x - before.x, y - before.y);
  }, 0) / corners.length;
