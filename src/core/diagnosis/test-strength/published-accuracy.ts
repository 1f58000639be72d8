import farid from "../../../../data/farid-2015/source.json" with { type: "json" };
import karlson from "../../../../data/karlson-tengvall-2013/source.json" with { type: "json" };
import mainkar from "../../../../data/mainkar-kim-2018/source.json" with { type: "json" };
import petersson from "../../../../data/petersson-1999/source.json" with { type: "json" };
import pigg from "../../../../data/pigg-2016/source.json" with { type: "json" };
import villaChavez from "../../../../data/villa-chavez-2013/source.json" with { type: "json" };
import weisleder from "../../../../data/weisleder-2009/source.json" with { type: "json" };
import type { Accuracy, Counts } from "./accuracy.ts";

/** What every published source is turned to: sensitivity is of non-vital pulps. */
const pulp = "non-vital pulp";

/** One published accuracy of one test. */
export interface PublishedAccuracy extends Accuracy {
  readonly test: string;
  readonly source: string;
  readonly mark: "seen" | "memory";
  /** What was done, where a source has the test more than once. */
  readonly method: string | undefined;
  /** What the source's reference standard showed; a test of the pulp stands against a non-vital one. */
  readonly condition: string;
}

interface SourceFile {
  readonly id: string;
  readonly verification: string;
  readonly condition: string;
  readonly positiveMeans: string;
  readonly accuracies: readonly {
    readonly test: string;
    readonly method?: string;
    readonly sensitivity: number;
    readonly specificity: number;
    readonly counts?: Counts;
    readonly countsAre?: string;
  }[];
}

/** In the order in which they are shown: pooled first, then by size. */
const files: readonly SourceFile[] = [mainkar, pigg, weisleder, villaChavez, farid, petersson, karlson];

/** Ids of the sources that hold accuracies, in the order in which they are shown. */
export const accuracySources: readonly string[] = files.map(({ id }) => id);

/**
 * The published accuracies of tests, all turned so that positive points to a non-vital pulp.
 * @source Mainkar 2018, Pigg 2016, Weisleder 2009, Villa-Chavez 2013, Farid 2015, Petersson 1999, Karlson 2013 (seen): data/
 */
export const publishedAccuracies: readonly PublishedAccuracy[] = files.flatMap((file) =>
  file.accuracies.map((one): PublishedAccuracy => {
    const turned = file.positiveMeans === "vital";
    const counts = one.counts === undefined || !turned ? one.counts : turnedCounts(one.counts);
    return {
      ...{ test: one.test, source: file.id, mark: file.verification === "seen" ? "seen" : "memory" },
      ...{ method: one.method, condition: file.condition },
      sensitivity: turned ? one.specificity : one.sensitivity,
      specificity: turned ? one.sensitivity : one.specificity,
      counts,
      countsAre: one.countsAre === "printed" || one.countsAre === "derived" ? one.countsAre : undefined,
    };
  }),
);

/** Where positive means a reply, what it calls a true positive is a true negative here. */
function turnedCounts({ truePositive, falsePositive, falseNegative, trueNegative }: Counts): Counts {
  return {
    ...{ truePositive: trueNegative, falsePositive: falseNegative },
    ...{ falseNegative: falsePositive, trueNegative: truePositive },
  };
}

/** The published accuracies of a test in the order in which they are shown; of one source where it is named. */
export const accuraciesOf = (test: string, source?: string): readonly PublishedAccuracy[] =>
  publishedAccuracies.filter((one) => one.test === test && (source === undefined || one.source === source));

/** The accuracy that is taken where none is given: the first that was measured against a non-vital pulp. */
export const usualAccuracy = (test: string): PublishedAccuracy | undefined =>
  accuraciesOf(test).find(({ condition }) => condition === pulp);
