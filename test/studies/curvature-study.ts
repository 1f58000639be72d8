import { curvatureTopic } from "../../src/core/radiograph/curvature-topic.ts";
import { type KnownShape, knownCanal, knownMeasures } from "./known-canals.ts";

/** The numbers whose error and coverage are counted. */
export const studied = ["lengthMm", "pruettDeg", "pruettRadiusMm", "schneiderDeg", "accessAngleDeg"] as const;
type Studied = (typeof studied)[number];

/** One design: a canal of known shape, sampled and blurred in one way. */
export interface CurvatureDesign {
  readonly name: string;
  readonly shape: KnownShape;
  readonly sigmaStated: boolean;
}

const bent = { l1: 9, radius: 5, turnDeg: 45 };

/** The designs, all with a point every 0.25 mm and 0.05 mm of noise in each direction. */
export const curvatureDesigns: readonly CurvatureDesign[] = [
  { name: "L2 2 mm, noise stated", shape: { ...bent, l2: 2 }, sigmaStated: true },
  { name: "L2 2 mm, noise estimated", shape: { ...bent, l2: 2 }, sigmaStated: false },
  { name: "L2 0 mm, noise stated", shape: { ...bent, l2: 0 }, sigmaStated: true },
  { name: "L2 0 mm, noise estimated", shape: { ...bent, l2: 0 }, sigmaStated: false },
  { name: "L2 1 mm, noise stated", shape: { ...bent, l2: 1 }, sigmaStated: true },
  { name: "R 10 mm, t 30, L2 4 mm, noise stated", shape: { l1: 8, radius: 10, turnDeg: 30, l2: 4 }, sigmaStated: true },
  { name: "R 3 mm, t 60, L2 3 mm, noise stated", shape: { l1: 8, radius: 3, turnDeg: 60, l2: 3 }, sigmaStated: true },
];

/** What a study of one design counts: trials out of n. */
export interface CurvatureCounts {
  readonly n: number;
  readonly radiusWithin12Percent: number;
  readonly angleWithin3Deg: number;
  readonly angleWithin9Deg: number;
  /** In how many trials the 95 % interval holds the true value. */
  readonly covered: Readonly<Record<Studied, number>>;
  /** Root mean square error of each number. */
  readonly rmsError: Readonly<Record<Studied, number>>;
}

/** The trials `seed` to `seed + n - 1` of a design. */
export function curvatureStudy(design: CurvatureDesign, n: number, seed: number): CurvatureCounts {
  const truth = knownMeasures(design.shape);
  const trials = Array.from({ length: n }, (_, index) => {
    const points = knownCanal(design.shape, 0.25, { sigmaMm: 0.05, seed: seed + index });
    return curvatureTopic.compute(design.sigmaStated ? { points, sigmaMm: 0.05 } : { points });
  });
  const count = (holds: (trial: (typeof trials)[number]) => boolean): number => trials.filter(holds).length;
  const angleWithin = (limit: number) => count((trial) => Math.abs(trial.pruettDeg - truth.pruettDeg) <= limit);
  const each = (of: (name: Studied) => number) =>
    Object.fromEntries(studied.map((name) => [name, of(name)])) as Record<Studied, number>;
  return {
    n,
    radiusWithin12Percent: count(
      ({ pruettRadiusMm }) =>
        pruettRadiusMm !== undefined && Math.abs(pruettRadiusMm / truth.pruettRadiusMm - 1) <= 0.12,
    ),
    angleWithin3Deg: angleWithin(3),
    angleWithin9Deg: angleWithin(9),
    covered: each((name) =>
      count(({ intervals }) => {
        const interval = intervals[name];
        return interval !== undefined && interval.low <= truth[name] && truth[name] <= interval.high;
      }),
    ),
    rmsError: each((name) => {
      const squares = trials.map((trial) => ((trial[name] ?? 0) - truth[name]) ** 2);
      return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / n);
    }),
  };
}
