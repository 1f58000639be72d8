import type { Interval } from "../../basis.ts";
import type { ToothFacts } from "../teeth.ts";
import { canHave, type Feature, featureFacts, features } from "./feature.ts";
import { priorOfSeries } from "./prior-of-series.ts";
import { missedCanalSources, type PublishedSeries, publishedSeries } from "./published.ts";
import { shareOfSeries } from "./share-of-series.ts";

/** A published count with its share and interval, and where it was published. */
export interface SeriesOfFeature extends Pick<PublishedSeries, "region" | "n" | "N"> {
  readonly mean: number;
  readonly interval: Interval;
  readonly reference: string;
  readonly verification: "seen" | "memory";
  /** Its teeth are counted in a wider series of the same list. */
  readonly within: boolean;
}

/** What may hide in a tooth, with how often it was found in which people. */
export interface FeatureOfTooth {
  readonly feature: Feature;
  readonly is: string;
  /** Of the next population, over all series. */
  readonly prior: { readonly mean: number; readonly interval: Interval };
  readonly series: readonly SeriesOfFeature[];
}

/**
 * The canals and roots that may hide in a tooth and that somebody counted.
 * Takes the tooth. Gives an empty list where none was counted in such teeth.
 * @source docs/methods/missed-canal, C1-C4
 */
export const featuresOfTooth = (tooth: ToothFacts): FeatureOfTooth[] =>
  features
    .filter((feature) => canHave(tooth, feature))
    .flatMap((feature) => {
      const counted = publishedSeries.filter((one) => one.feature === feature && one.teeth.includes(tooth.twoDigit));
      if (counted.length === 0) return [];
      const { mean, interval } = priorOfSeries(tooth, feature, undefined);
      return [{ feature, is: featureFacts[feature].is, prior: { mean, interval }, series: counted.map(seriesShown) }];
    });

function seriesShown({ region, n, N, source, within }: PublishedSeries): SeriesOfFeature {
  const { reference = source, verification = "memory" } = missedCanalSources.find(({ id }) => id === source) ?? {};
  return { region, n, N, ...shareOfSeries({ n, N }), reference, verification, within: within ?? false };
}
