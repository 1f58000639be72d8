import { curvatureTopic } from "../../src/core/radiograph/curvature-topic.ts";
import {
  type KnownShape,
  type KnownStretch,
  knownCanal,
  knownCanalInSpace,
  knownCourse,
  knownMeasures,
} from "./known-canals.ts";

/** The numbers whose error and coverage are counted. */
export const studied = ["lengthMm", "pruettDeg", "pruettRadiusMm", "schneiderDeg", "accessAngleDeg"] as const;
type Studied = (typeof studied)[number];

/** One design: a canal of known shape, sampled and blurred in one way. */
export interface CurvatureDesign {
  readonly name: string;
  readonly shape: KnownShape;
  readonly sigmaStated: boolean;
  /** Traced in space, in a tilted plane that the fit does not know. */
  readonly inSpace?: boolean;
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
  { name: "in space, L2 2 mm, noise stated", shape: { ...bent, l2: 2 }, sigmaStated: true, inSpace: true },
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
    const noise = { sigmaMm: 0.05, seed: seed + index };
    const trace = design.inSpace === true ? knownCanalInSpace : knownCanal;
    const points = trace(design.shape, 0.25, noise);
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

/** An S of two bends: 4 mm straight, 4 mm at R 5 to the right, 2 mm straight, 3 mm at R 4 to the left, 2 mm straight. */
const sCourse: readonly KnownStretch[] = [
  { lengthMm: 4, curvature: 0 },
  { lengthMm: 4, curvature: 0.2 },
  { lengthMm: 2, curvature: 0 },
  { lengthMm: 3, curvature: -0.25 },
  { lengthMm: 2, curvature: 0 },
];

/** What a study of the S counts: trials out of n. */
export interface TwoBendCounts {
  readonly n: number;
  readonly bothFoundOnTheirSides: number;
  readonly eachWithin10Deg: number;
  readonly covered: { readonly lengthMm: number; readonly totalTurnDeg: number };
}

/** The trials `seed` to `seed + n - 1` of the S, with a point every 0.25 mm and 0.05 mm of stated noise. */
export function twoBendStudy(n: number, seed: number): TwoBendCounts {
  const [first, second] = [degreesOf(0.8), degreesOf(0.75)];
  const trials = Array.from({ length: n }, (_, index) =>
    curvatureTopic.compute({
      points: knownCourse(sCourse, 0.25, { sigmaMm: 0.05, seed: seed + index }),
      sigmaMm: 0.05,
    }),
  );
  const count = (holds: (trial: (typeof trials)[number]) => boolean): number => trials.filter(holds).length;
  const holding = (name: "lengthMm" | "totalTurnDeg", truth: number) =>
    count(({ intervals }) => {
      const interval = intervals[name];
      return interval !== undefined && interval.low <= truth && truth <= interval.high;
    });
  return {
    n,
    bothFoundOnTheirSides: count(({ bends }) => bends.map(({ side }) => side).join() === "right,left"),
    eachWithin10Deg: count(
      ({ bends: [a, b] }) =>
        a !== undefined && b !== undefined && Math.abs(a.angleDeg - first) <= 10 && Math.abs(b.angleDeg - second) <= 10,
    ),
    covered: { lengthMm: holding("lengthMm", 15), totalTurnDeg: holding("totalTurnDeg", first + second) },
  };
}

const degreesOf = (angle: number): number => (angle * 180) / Math.PI;
