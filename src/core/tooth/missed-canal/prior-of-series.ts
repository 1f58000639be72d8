import type { Interval } from "../../basis.ts";
import { faultAt } from "../../refusal.ts";
import { nextPopulation, shareOfNext } from "../../statistics/next-population.ts";
import type { ToothFacts } from "../teeth.ts";
import { canHave, type Feature, featureFacts } from "./feature.ts";
import { type PublishedSeries, publishedSeries } from "./published.ts";
import { shareOfSeries } from "./share-of-series.ts";

/** How a prior comes about: random effects of at least three series or of a survey's range, two series as they are, or one. */
export const priorMethods = ["nextPopulation", "twoSeries", "oneSeries"] as const;
/** One of {@link priorMethods}. */
export type PriorMethod = (typeof priorMethods)[number];

/** The share of a population, with the series it comes from. */
export interface Prior {
  readonly mean: number;
  readonly interval: Interval;
  readonly method: PriorMethod;
  readonly series: readonly PublishedSeries[];
  /** How far populations differ, on the logit scale; of several series. */
  readonly spread?: { readonly logit: number; readonly from: "range" | "series" };
}

const level = 0.95;

/**
 * How often teeth of a kind have a feature, from the published series.
 * Takes the tooth, the feature and a region's name, if one is asked for.
 * @throws Refusal `input.impossible` for a tooth that can't have it, or a region without a series;
 * `input.notDeterminable` where no series counted such a tooth
 * @source docs/methods/missed-canal, C1-C4
 */
export function priorOfSeries(tooth: ToothFacts, feature: Feature, population: string | undefined): Prior {
  const series = seriesFor(seriesOfTooth(tooth, feature), population);
  const ranged = series.some(({ lowest }) => lowest !== undefined);
  if (ranged || series.length > 2) return fromSeveral(series);
  return { ...spanOf(series), method: series.length === 2 ? "twoSeries" : "oneSeries", series };
}

function seriesOfTooth(tooth: ToothFacts, feature: Feature): readonly PublishedSeries[] {
  const { is, of } = featureFacts[feature];
  if (!canHave(tooth, feature)) throw faultAt("feature", `the ${tooth.name} can't have ${is}; ${of} can`);
  const ofFeature = publishedSeries.filter((one) => one.feature === feature);
  const found = ofFeature.filter(({ teeth }) => teeth.includes(tooth.twoDigit));
  if (found.length > 0) return found;
  const counted = [...new Set(ofFeature.flatMap(({ teeth }) => teeth))].sort().join(", ");
  const says = `no published series counts ${is} in the ${tooth.name}; there are series of ${counted}`;
  throw faultAt("feature", says, "input.notDeterminable");
}

function seriesFor(all: readonly PublishedSeries[], population = "world"): readonly PublishedSeries[] {
  const asked = population.toLowerCase();
  if (asked === "world") return all.filter(({ within }) => within !== true);
  const found = all.filter(({ region }) => region.toLowerCase() === asked);
  if (found.length > 0) return found;
  const regions = [...new Set(["world", ...all.map(({ region }) => region).sort()])].join(", ");
  throw faultAt("population", `${JSON.stringify(population)} has no series of this tooth; there are ${regions}`);
}

/** Two series show no spread that could be estimated: the interval spans both of theirs, the mean is half way. */
function spanOf(series: readonly PublishedSeries[]): Pick<Prior, "mean" | "interval"> {
  const shares = series.map(shareOfSeries);
  return {
    mean: shares.reduce((sum, { mean }) => sum + mean, 0) / shares.length,
    interval: {
      low: Math.min(...shares.map(({ interval }) => interval.low)),
      high: Math.max(...shares.map(({ interval }) => interval.high)),
      level,
    },
  };
}

/** The mean is that of 2000 equal parts of the distribution, each at its middle. */
function fromSeveral(series: readonly PublishedSeries[]): Prior {
  const next = nextPopulation(series);
  const parts = 2_000;
  const shares = Array.from({ length: parts }, (_, at) => shareOfNext(next, (at + 0.5) / parts));
  return {
    mean: shares.reduce((sum, one) => sum + one, 0) / parts,
    interval: { low: shareOfNext(next, (1 - level) / 2), high: shareOfNext(next, (1 + level) / 2), level },
    method: "nextPopulation",
    series,
    spread: { logit: next.spreadLogit, from: next.spreadFrom },
  };
}
