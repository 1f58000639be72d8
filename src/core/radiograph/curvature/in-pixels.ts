import { type Fault, Refusal } from "../../refusal.ts";
import type { CurvatureInput } from "./curvature-input.ts";

/** A course in px made ready to be measured as if it were in mm. */
export interface PixelCourse {
  readonly points: [number, number][];
  /** What a px of the columns was multiplied by. */
  readonly perPx: number;
  /** How high a pixel is, in its widths. */
  readonly aspect: number;
}

/**
 * The length that a course without a scale is measured at, mm: that of a usual canal. Angles are the same at every length;
 * what is small enough to be neglected (C5, C16) is judged at this one.
 */
const nominalLengthMm = 15;

/** Without a pixel's shape it is taken as square, and a caution says so. */
const square = 1;

/**
 * A course of px as one of a usual length in mm, its pixels made square.
 * @throws Refusal `input.impossible` for points of space, and for values in mm beside points in px.
 * @source plane geometry; docs/methods/curvature C20
 */
export function pixelCourse(input: CurvatureInput): PixelCourse {
  const faults = faultsInPx(input);
  if (faults.length > 0)
    throw new Refusal(
      "input.impossible",
      "Cannot measure the course: its points are in px, other values are not",
      {},
      faults,
    );
  const aspect = input.pixelAspect ?? square;
  const straight = input.points.map(([x, y]): [number, number] => [x, y * aspect]);
  const length = straight.reduce((sum, [x, y], index) => {
    const [fromX, fromY] = straight[index - 1] ?? [x, y];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);
  const perPx = length === 0 ? 1 : nominalLengthMm / length;
  return { points: straight.map(([x, y]) => [x * perPx, y * perPx]), perPx, aspect };
}

function faultsInPx({ points, sigmaMm, weineLengthMm }: CurvatureInput): Fault[] {
  const inMm = { sigmaMm, weineLengthMm };
  return [
    ...points.flatMap((point, index): Fault[] =>
      point.length === 2 ? [] : [{ path: `points[${index}]`, says: "is a point of space; px are of a film" }],
    ),
    ...Object.entries(inMm).flatMap(([path, value]): Fault[] =>
      value === undefined ? [] : [{ path, says: `${value} is in mm where the points are in px` }],
    ),
  ];
}

/** The headline numbers that need a scale. */
export const needScale = [
  "lengthMm",
  "chordMm",
  "weineDeg",
  "pruettRadiusMm",
  "heightMm",
  "heightDistanceMm",
  "heightMaxMm",
  "maxCurvaturePerMm",
  "minRadiusMm",
  "atMm",
] as const;
