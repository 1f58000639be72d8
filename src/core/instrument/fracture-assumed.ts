import burklein from "../../../data/burklein-2021/source.json" with { type: "json" };
import cheungDarvell from "../../../data/cheung-darvell-2007/source.json" with { type: "json" };
import hulsmann from "../../../data/hulsmann-2019/source.json" with { type: "json" };
import spanaki from "../../../data/spanaki-voreadi-2006/source.json" with { type: "json" };
import type { Fault } from "../refusal.ts";
import type { SeededRandom } from "../statistics/seeded-random.ts";
import type { FractureInput } from "./fracture-input.ts";
import { publishedSlope } from "./life-basis.ts";

/** What is assumed, in the order in which it is told. */
export const assumptionNames = [
  "flawPrior",
  "elsewhere",
  "flawHigh",
  "slope",
  "clearanceMm",
  "depthSigmaMm",
  "lifeScatter",
  "hardlyBent",
  "deformedInTorsion",
  "deformedInFatigue",
  "bound",
  "notBound",
  "stopped",
  "notStopped",
  "striations",
  "severalOrigins",
  "dimples",
  "circularAbrasion",
  "inclusionOrPore",
] as const;
/** One of {@link assumptionNames}. */
export type AssumptionName = (typeof assumptionNames)[number];

/** The range of an assumption, and what its numbers are. */
export interface Assumed {
  readonly low: number;
  readonly high: number;
  /** A share stays below 1; a factor is drawn evenly on its logarithm. */
  readonly kind: "share" | "factor" | "amount";
  readonly source: string;
}

/** The range of every assumption. */
export type Ranges = (name: AssumptionName) => Assumed;
/** Every assumption at one value. */
export type Values = (name: AssumptionName) => number;

const assumption = "assumption";
const share = (low: number, high: number, source = assumption): Assumed => ({ low, high, kind: "share", source });
const factor = (low: number, high: number): Assumed => ({ low, high, kind: "factor", source: assumption });
const amount = (low: number, high: number, source = assumption): Assumed => ({ low, high, kind: "amount", source });

const deformedSeen = spanaki.fracturedWithDeformation / spanaki.fractured;
const widestMm = Math.max(...burklein.clearancesMm);

/** The ranges where a person gives none; docs/methods/fracture.md C10 says why each is what it is. */
const ranges: Readonly<Record<AssumptionName, Assumed>> = {
  flawPrior: share(0.01, 0.15),
  elsewhere: share(0.05, 0.2),
  flawHigh: share(1 / 3, 0.8, "common practice"),
  slope: amount(publishedSlope.strong, publishedSlope.weak, `${cheungDarvell.id}; the first end from memory`),
  clearanceMm: amount(0, widestMm, burklein.id),
  depthSigmaMm: amount(0.5, 0.5),
  lifeScatter: share(hulsmann.standardDeviation, hulsmann.standardDeviation, hulsmann.id),
  hardlyBent: factor(0.02, 0.2),
  deformedInTorsion: share(deformedSeen, 0.95, `${spanaki.id} for its low end; else assumption`),
  deformedInFatigue: share(0.01, 0.15),
  bound: factor(1.5, 6),
  notBound: factor(0.1, 0.5),
  stopped: factor(1.5, 6),
  notStopped: factor(0.4, 1),
  striations: factor(5, 50),
  severalOrigins: factor(1.5, 8),
  dimples: factor(1, 2),
  circularAbrasion: factor(5, 40),
  inclusionOrPore: factor(3, 30),
};

/**
 * The range of each assumption, a person's own in place of the program's.
 * Takes the input of `fracture`.
 * @source docs/methods/fracture.md C10
 */
export function assumedOf({ assumed = {}, flawPrior }: Pick<FractureInput, "assumed" | "flawPrior">): Ranges {
  const { slope, depthSigmaMm, ...rest } = assumed;
  const given: Partial<Record<AssumptionName, { low: number; high: number } | undefined>> = {
    ...rest,
    flawPrior,
    slope: slope === undefined ? undefined : { low: slope.strong, high: slope.weak },
    depthSigmaMm: depthSigmaMm === undefined ? undefined : { low: depthSigmaMm, high: depthSigmaMm },
  };
  return (name) => {
    const own = given[name];
    return own === undefined ? ranges[name] : { ...ranges[name], ...own, source: "as given" };
  };
}

/** Ranges whose ends stand the wrong way round, each with its path. */
export function rangeFaults({ assumed = {}, flawPrior }: FractureInput): Fault[] {
  const { slope, depthSigmaMm: _, ...rest } = assumed;
  const own = Object.entries(rest).map(([name, range]) => ({ path: `assumed.${name}.low`, range }));
  const slopes = slope === undefined ? undefined : { low: slope.strong, high: slope.weak };
  const all = [...own, { path: "flawPrior.low", range: flawPrior }, { path: "assumed.slope.strong", range: slopes }];
  return all.flatMap(({ path, range }) =>
    range !== undefined && range.low > range.high ? [{ path, says: `${range.low} is above ${range.high}` }] : [],
  );
}

/** The value of an assumption at a place of its range, 0 to 1. */
const valueAt = ({ low, high, kind }: Assumed, place: number): number =>
  kind === "factor" ? low ** (1 - place) * high ** place : low + place * (high - low);

/** Every assumption at the middle of its range. */
export const middleOf =
  (ranges: Ranges): Values =>
  (name) =>
    valueAt(ranges(name), 0.5);

/** Every assumption somewhere in its range, each by chance. */
export function drawnOf(ranges: Ranges, random: SeededRandom): Values {
  const drawn = new Map(assumptionNames.map((name) => [name, valueAt(ranges(name), random.uniform())]));
  return (name) => drawn.get(name) ?? valueAt(ranges(name), 0.5);
}

/** The same values but for one that is multiplied; a share stays below 1. */
export const withOne =
  (values: Values, { name, by }: { name: AssumptionName; by: number }, { kind }: Assumed): Values =>
  (asked) =>
    asked === name ? atMost(values(name) * by, kind) : values(asked);

const atMost = (value: number, kind: Assumed["kind"]): number => (kind === "share" ? Math.min(0.99, value) : value);
