import type { Interval } from "../../basis.ts";
import { mm, type PlanePoint } from "../../units.ts";
import { reach95 } from "../interval-around.ts";
import { areaOf, areaSigma } from "../lesion/outline-area.ts";
import { type Homography, mapped, reversed } from "./homography.ts";
import { placeAt } from "./homography-of-landmarks.ts";

/** An outline in px of its film. Corners are places of a plane whose unit is the pixel. */
export type Outline = readonly PlanePoint[];

/** An outline of one film where it falls on the other. */
export const carried = (map: Homography, outline: Outline): PlanePoint[] =>
  outline.map(({ x, y }) => {
    const { column, row } = mapped(map, placeAt(x, y));
    return { x: mm(column), y: mm(row) };
  });

/** What the interval of an area ratio rests on. */
export interface RatioErrors {
  /** Of one click in each direction, px of its film. */
  readonly sigmaPx: number;
  /** How far pieces lie off near the lesion, px. */
  readonly residualPx: number;
}

/** Pieces that far apart lie off independently of each other, px. */
const apartPx = 64;

/**
 * The area of a lesion on the second film over that on the first, both on the first film.
 * Takes both outlines, each in px of its film, the map from the first to the second, and the errors. The interval is
 * that of the logarithm: clicks err each by itself; what the map leaves over changes an area by sqrt(2) times itself
 * over the width that it is read at.
 * @source first-order propagation of error; docs/methods/compare-films C6
 */
export function areaRatioOf(
  first: Outline,
  second: Outline,
  map: Homography,
  { sigmaPx, residualPx }: RatioErrors,
): { ratio: number; interval: Interval } {
  const back = carried(reversed(map), second);
  const [before, after] = [Math.abs(areaOf(first)), Math.abs(areaOf(back))];
  const width = Math.max(apartPx, 2 * Math.sqrt(before / Math.PI));
  const sigma = Math.hypot(
    areaSigma(first, sigmaPx) / before,
    areaSigma(second, sigmaPx) / Math.abs(areaOf(second)),
    (Math.SQRT2 * residualPx) / width,
  );
  const ratio = after / before;
  const reach = Math.exp(reach95 * sigma);
  return { ratio, interval: { low: ratio / reach, high: ratio * reach, level: 0.95 } };
}
