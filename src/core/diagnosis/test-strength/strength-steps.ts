import { type Accuracy, likelihoodRatios, shareInterval } from "./accuracy.ts";
import { type Drawn, meanWith } from "./chances.ts";
import { accuraciesOf } from "./published-accuracy.ts";
import type { Chance, StrengthStep } from "./test-strength-output.ts";
import type { Weighed } from "./weighed-results.ts";

/** The weighed results with their draws, in the same order. */
export interface Weighing {
  readonly weighed: readonly Weighed[];
  readonly draws: Drawn;
}

/** A rung for each weighed result. Takes the chance before the first and after each. */
export function strengthSteps(weighing: Weighing, chances: readonly Chance[]): StrengthStep[] {
  return weighing.weighed.map((one, rung) => {
    const { test, name, result } = one.result;
    const [before, posterior] = [chances[rung], chances[rung + 1]];
    if (before === undefined || posterior === undefined) throw new Error("a rung without its chances");
    return {
      ...{ test, result, group: one.group, accuracyFrom: one.from },
      ...(name === undefined ? {} : { name }),
      ...(one.mark === undefined ? {} : { mark: one.mark }),
      ...(one.method === undefined ? {} : { method: one.method }),
      ...describedAccuracy(one.accuracy),
      ...{ before, posterior },
      alsoPublished: othersOf(weighing, rung),
    };
  });
}

/** An accuracy as it is shown: shares, both ratios, and what intervals the counts allow. */
function describedAccuracy(accuracy: Accuracy) {
  const { sensitivity, specificity, counts, countsAre } = accuracy;
  const { positive, negative } = likelihoodRatios(accuracy);
  const shares =
    counts === undefined
      ? {}
      : {
          sensitivity: shareInterval(counts.truePositive, counts.falseNegative),
          specificity: shareInterval(counts.trueNegative, counts.falsePositive),
        };
  return {
    ...{ sensitivity, specificity },
    ...(positive.value === undefined ? {} : { likelihoodRatioPositive: positive.value }),
    ...(negative.value === undefined ? {} : { likelihoodRatioNegative: negative.value }),
    intervals: {
      ...shares,
      ...(positive.interval === undefined ? {} : { likelihoodRatioPositive: positive.interval }),
      ...(negative.interval === undefined ? {} : { likelihoodRatioNegative: negative.interval }),
    },
    ...(counts === undefined ? {} : { counts }),
    ...(countsAre === undefined ? {} : { countsAre }),
  };
}

function othersOf(weighing: Weighing, rung: number): StrengthStep["alsoPublished"] {
  const taken = weighing.weighed[rung];
  if (taken === undefined) return [];
  const others = accuraciesOf(taken.result.test).filter((one) => one !== taken.accuracy);
  return others.map((other) => {
    const { source, mark, method, condition } = other;
    const posterior = meanWith(weighing.draws, rung, other);
    return {
      ...{ source, mark, condition },
      ...(method === undefined ? {} : { method }),
      ...describedAccuracy(other),
      ...(Number.isNaN(posterior) ? {} : { posterior }),
    };
  });
}

/** The results as the draws take them. */
export const findingsOf = (weighed: readonly Weighed[]) =>
  weighed.map(({ result: { result }, accuracy, group }) => ({ result, accuracy, group }));
