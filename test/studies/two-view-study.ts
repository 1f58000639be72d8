import { twoViewTopic } from "../../src/core/radiograph/two-view-topic.ts";
import { answer } from "../../src/core/topic.ts";
import { type CanalKind, type Filming, filmed, randomCanal, seededRandom, truthOf } from "./two-view-canals.ts";

/** The numbers whose coverage is counted. */
export const covered = ["lengthMm", "pruettDeg", "hiddenDeg", "outOfFilmDeg", "angleToFilmDeg"] as const;
type Covered = (typeof covered)[number];

/** One design: a kind of canal, filmed straight on and under 25 degrees in one way. */
export interface TwoViewDesign {
  readonly name: string;
  readonly kind: CanalKind;
  readonly receptor: Filming["receptor"];
  readonly sigmaMm: number;
}

const kinds = { bend: "one bend", hook: "apical hook", s: "S", across: "bend to buccal or lingual" } as const;
const held = { turnsWithBeam: "turned", fixed: "fixed" } as const;
const design = (kind: CanalKind, receptor: Filming["receptor"], sigmaMm: number): TwoViewDesign => ({
  name: `${kinds[kind]}, receptor ${held[receptor]}, ${sigmaMm} mm`,
  ...{ kind, receptor, sigmaMm },
});

/** The designs: those of one bend are bound to limits, of the others intervals and sides are counted alone. */
export const twoViewDesigns: readonly TwoViewDesign[] = [
  design("bend", "turnsWithBeam", 0.05),
  design("bend", "fixed", 0.05),
  design("bend", "turnsWithBeam", 0.1),
  design("bend", "fixed", 0.1),
  design("hook", "turnsWithBeam", 0.05),
  design("hook", "fixed", 0.05),
  design("s", "turnsWithBeam", 0.05),
  design("s", "fixed", 0.05),
  design("across", "turnsWithBeam", 0.05),
  design("across", "fixed", 0.05),
];

/** The limits of a noise: of the length in mm and of the largest bend in degrees. */
export const limitsOf = (sigmaMm: number) =>
  sigmaMm <= 0.05 ? { lengthMm: 0.5, bendDeg: 5 } : { lengthMm: 0.6, bendDeg: 8 };

/** What a study of one design counts: canals out of n. */
export interface TwoViewCounts {
  readonly n: number;
  readonly lengthWithin: number;
  readonly bendWithin: number;
  /** Bends that turn at least 10 degrees out of the film's plane: how many, how many sides right, how many wrong. */
  readonly out: { readonly n: number; readonly right: number; readonly wrong: number };
  /** Bends whose plane is turned at least 10 degrees from the film's. */
  readonly turned: { readonly n: number; readonly right: number; readonly wrong: number };
  /** Bends whose plane is turned less than 8 degrees from the film's: how many, and of how many the side is withheld. */
  readonly along: { readonly n: number; readonly withheld: number };
  readonly covered: Readonly<Record<Covered, number>>;
  readonly medianBendErrorDeg: number;
}

/** The canals `seed` to `seed + n - 1` of a design, a point every 0.5 mm, angles known to 1 degree. */
export function twoViewStudy({ kind, receptor, sigmaMm }: TwoViewDesign, n: number, seed: number): TwoViewCounts {
  const limits = limitsOf(sigmaMm);
  const trials = Array.from({ length: n }, (_, index) => {
    const random = seededRandom(seed + index);
    const canal = randomCanal(kind, random);
    const views = filmed(canal, { receptor, anglesDeg: [0, 25], sigmaMm, angleSigmaDeg: 1 }, random);
    const found = answer(twoViewTopic, { views, receptor, sigmaMm });
    return { found, truth: truthOf(canal) };
  });
  type Trial = (typeof trials)[number];
  const count = (among: readonly Trial[], holds: (trial: Trial) => boolean): number => among.filter(holds).length;
  const bendError = ({ found, truth }: Trial): number => Math.abs((found.curvature?.pruettDeg ?? 0) - truth.pruettDeg);
  const sided = (among: readonly Trial[]) => ({
    n: among.length,
    right: count(among, ({ found, truth }) =>
      [truth.outOfFilmDeg > 0 ? "buccal" : "lingual", ...(kind === "s" ? ["mixed"] : [])].includes(found.side),
    ),
    wrong: count(among, ({ found, truth }) => found.side === (truth.outOfFilmDeg > 0 ? "lingual" : "buccal")),
  });
  const isAlong = ({ truth }: Trial): boolean => truth.angleToFilmDeg < 8;
  const holding = (name: Covered): number =>
    count(trials, ({ found, truth }) => {
      const interval = found.intervals[name];
      return interval !== undefined && interval.low <= truth[name] && truth[name] <= interval.high;
    });
  return {
    n,
    lengthWithin: count(
      trials,
      ({ found, truth }) => Math.abs((found.lengthMm ?? 0) - truth.lengthMm) <= limits.lengthMm,
    ),
    bendWithin: count(trials, (trial) => bendError(trial) <= limits.bendDeg),
    out: sided(trials.filter(({ truth }) => Math.abs(truth.outOfFilmDeg) >= 10)),
    turned: sided(trials.filter(({ truth }) => truth.angleToFilmDeg >= 10)),
    along: {
      n: count(trials, isAlong),
      withheld: count(trials, (trial) => isAlong(trial) && trial.found.side === "undetermined"),
    },
    covered: Object.fromEntries(covered.map((name) => [name, holding(name)])) as Record<Covered, number>,
    medianBendErrorDeg: trials.map(bendError).sort((a, b) => a - b)[Math.floor(n / 2)] ?? 0,
  };
}
