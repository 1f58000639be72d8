import { curvatureTopic } from "../../src/core/radiograph/curvature-topic.ts";
import { type KnownStretch, knownCourse, lengthOf } from "./known-canals.ts";

/** One design that looks like what the light box gives: a finely followed course, gently bent. */
export interface LightBoxDesign {
  readonly name: string;
  readonly stretches: readonly KnownStretch[];
  readonly stepMm: number;
  readonly sigmaMm: number;
  readonly sigmaStated: boolean;
  /** Correlation of the noise of neighbours. */
  readonly following: number;
}

/** Straight part, bend to the right, straight part. */
const bent = (l1: number, radius: number, turnDeg: number, l2: number): KnownStretch[] => [
  { lengthMm: l1, curvature: 0 },
  { lengthMm: (radius * turnDeg * Math.PI) / 180, curvature: 1 / radius },
  { lengthMm: l2, curvature: 0 },
];

const courses: readonly (readonly [string, readonly KnownStretch[]])[] = [
  ["10 degrees, R 40 mm", bent(5, 40, 10, 0)],
  ["5 degrees, R 60 mm", bent(4, 60, 5, 0)],
  ["15 degrees, R 15 mm, L2 2 mm", bent(5, 15, 15, 2)],
  ["straight, 11.5 mm", bent(11.5, 10, 0, 0)],
  ["12 degrees, R 20 mm, 8.5 mm long", bent(4, 20, 12, 0.3)],
  [
    "S of 11 and 4 degrees",
    [...bent(4, 20, 11.5, 1), { lengthMm: 1, curvature: -1 / 15 }, { lengthMm: 1, curvature: 0 }],
  ],
];

const kinds = [
  { words: "independent noise, stated", sigmaStated: true, following: 0 },
  // exp(-1/7): noise that forgets itself over seven points, as a least-cost path does.
  { words: "noise over 7 points, stated", sigmaStated: true, following: Math.exp(-1 / 7) },
  { words: "noise over 7 points, estimated", sigmaStated: false, following: Math.exp(-1 / 7) },
] as const;

/** Each course with each kind of noise: a point every 0.07 mm, 0.03 mm of noise in each direction. */
export const lightBoxDesigns: readonly LightBoxDesign[] = kinds.flatMap(({ words, ...kind }) =>
  courses.map(([name, stretches]) => ({ name: `${name}; ${words}`, stretches, stepMm: 0.07, sigmaMm: 0.03, ...kind })),
);

/** What a study of one such design counts. */
export interface LightBoxCounts {
  readonly n: number;
  /** In how many trials the 95 % interval holds the true value. */
  readonly covered: { readonly lengthMm: number; readonly pruettDeg: number; readonly totalTurnDeg: number };
  readonly widestLengthMm: number;
  readonly medianAngleWidthDeg: number;
  readonly widestAngleWidthDeg: number;
  readonly rmsAngleErrorDeg: number;
}

/** What the course of one trial measures. */
export const lightBoxTrial = ({ stretches, stepMm, sigmaMm, following, sigmaStated }: LightBoxDesign, seed: number) => {
  const points = knownCourse(stretches, stepMm, { sigmaMm, seed, following });
  return curvatureTopic.compute(sigmaStated ? { points, sigmaMm } : { points });
};

/** The trials `seed` to `seed + n - 1` of a design. */
export function lightBoxStudy(design: LightBoxDesign, n: number, seed: number): LightBoxCounts {
  const turns = design.stretches.map(({ lengthMm, curvature }) => (Math.abs(curvature) * lengthMm * 180) / Math.PI);
  const truth = {
    lengthMm: lengthOf(design.stretches),
    pruettDeg: Math.max(...turns),
    totalTurnDeg: turns.reduce((sum, turn) => sum + turn, 0),
  };
  const trials = Array.from({ length: n }, (_, index) => lightBoxTrial(design, seed + index));
  const covered = (name: keyof typeof truth): number =>
    trials.filter(({ intervals }) => {
      const { low = Number.NaN, high = Number.NaN } = intervals[name] ?? {};
      return low <= truth[name] + 1e-9 && truth[name] <= high + 1e-9;
    }).length;
  const widths = (name: string) => trials.map(({ intervals }) => widthOf(intervals[name])).sort((a, b) => a - b);
  const squares = trials.map(({ pruettDeg }) => (pruettDeg - truth.pruettDeg) ** 2);
  return {
    n,
    covered: {
      lengthMm: covered("lengthMm"),
      pruettDeg: covered("pruettDeg"),
      totalTurnDeg: covered("totalTurnDeg"),
    },
    widestLengthMm: widths("lengthMm").at(-1) ?? 0,
    medianAngleWidthDeg: widths("pruettDeg")[Math.floor(n / 2)] ?? 0,
    widestAngleWidthDeg: widths("pruettDeg").at(-1) ?? 0,
    rmsAngleErrorDeg: Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / n),
  };
}

/** The width of an interval; of a missing one, endless. */
export const widthOf = (interval: { low: number; high: number } | undefined): number =>
  interval === undefined ? Number.POSITIVE_INFINITY : interval.high - interval.low;
