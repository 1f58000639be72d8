import { type Deg, degreesOf, rad } from "../units.ts";
import { disagreementLevel, type ScaleOfKnown } from "./scale-of-known.ts";

/** What known lengths that disagree can mean, with the size that each cause alone would need. */
export interface Foreshortening {
  readonly ratio: number;
  /** Which two known lengths: the one of the largest scale, the one of the smallest. */
  readonly between: [number, number];
  readonly explanations: string[];
  readonly tiltDeg: Deg;
  readonly depthShare: number;
}

/**
 * What it means that known lengths on one film disagree by more than the clicks allow; absent where they don't.
 * Takes the scale with its measured lengths. Gives the ratio of the extreme scales (1 or more), and all three
 * explanations: the film alone does not say which.
 * @source plane geometry; docs/methods/calibrate C3
 */
export function foreshorteningOf(scale: ScaleOfKnown): Foreshortening | undefined {
  if (scale.disagreement === undefined || scale.disagreement.p >= disagreementLevel) return undefined;
  const scales = scale.measured.map((one) => one.lengthMm / one.onFilmPx);
  const largest = Math.max(...scales);
  const smallest = Math.min(...scales);
  const ratio = largest / smallest;
  return {
    ratio,
    between: [scales.indexOf(largest), scales.indexOf(smallest)],
    explanations: [
      "foreshortening or elongation: one object leans against the film more than the other",
      "different depth: one object lies nearer to the detector and is thrown less large",
      "different orientation: the objects run in different directions, which a leaning film shortens unequally",
    ],
    tiltDeg: degreesOf(rad(Math.acos(1 / ratio))),
    depthShare: 1 - 1 / ratio,
  };
}
