import type { Interval } from "../../basis.ts";
import { type Fault, Refusal } from "../../refusal.ts";
import { type Accuracy, accuracyOfLook, whyNotCounted } from "./accuracy-of-look.ts";
import { afterLook, type Chances, chancesOf, likelihoodRatio } from "./after-look.ts";
import type { Evidence, MissedCanalInput } from "./missed-canal-input.ts";
import type { MissedCanalOutput } from "./missed-canal-output.ts";

/** A chance with the interval of the population's share taken along. */
export interface Standing {
  readonly mean: number;
  readonly interval: Interval;
}

/** What the looks come to, one after the other. */
export interface CountedEvidence {
  readonly steps: MissedCanalOutput["steps"];
  readonly notComputed: MissedCanalOutput["notComputed"];
  /** Where the chance stands after the last look that could be counted. */
  readonly standing: Standing;
  /** Ids of the published sources. */
  readonly sources: readonly string[];
}

/**
 * The looks of the input, each as far as it can be counted.
 * Takes the input and the chance before the first look.
 * @throws Refusal `input.impossible` with the path of each look that can't have come out so, alone or after those before it
 * @source docs/methods/missed-canal, C5-C6 and C9
 */
export function evidenceSteps({ evidence, tooth, feature }: MissedCanalInput, before: Standing): CountedEvidence {
  const weighed = evidence.map((look, at) => weigh(look, at, accuracyOfLook(look, tooth, feature)));
  const faults: Fault[] = [];
  const steps: MissedCanalOutput["steps"] = [];
  let standing = before;
  for (const { look, at, accuracy, chances } of weighed) {
    if (chances === undefined) continue;
    const after = standingAfter(standing, chances);
    if (after === undefined)
      faults.push({ path: `evidence[${at}].result`, says: impossibleText(look, chances, accuracy) });
    else steps.push(stepOf({ look, at, accuracy, chances }, after));
    standing = after ?? standing;
  }
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot weigh the looks: they contradict themselves", {}, faults);
  return {
    ...{ steps, standing },
    notComputed: weighed.flatMap(({ look, at, accuracy, chances }) =>
      chances === undefined ? [{ name: `evidence[${at}]`, why: whyNotCounted(look, `evidence[${at}]`, accuracy) }] : [],
    ),
    sources: weighed.flatMap(({ accuracy, chances }) => (chances === undefined ? [] : accuracy.sources)),
  };
}

interface Weighed {
  readonly look: Evidence;
  readonly at: number;
  readonly accuracy: Accuracy;
  /** Absent where sensitivity or specificity is not known. */
  readonly chances: Chances | undefined;
}

function weigh(look: Evidence, at: number, accuracy: Accuracy): Weighed {
  const { sensitivity, specificity } = accuracy;
  const known = sensitivity !== undefined && specificity !== undefined;
  return { look, at, accuracy, chances: known ? chancesOf(look.result, sensitivity, specificity) : undefined };
}

/** The ends go where the mean can go: they are neither 0 nor 1 before a look has made the mean so. */
function standingAfter({ mean, interval }: Standing, chances: Chances): Standing | undefined {
  const after = afterLook(mean, chances);
  if (after === undefined) return undefined;
  const through = (end: number): number => afterLook(end, chances) ?? end;
  return {
    mean: after,
    interval: { low: through(interval.low), high: through(interval.high), level: interval.level },
  };
}

function stepOf(
  { look: { kind, result }, at, accuracy, chances }: Weighed & { readonly chances: Chances },
  { mean, interval }: Standing,
): MissedCanalOutput["steps"][number] {
  const { sensitivity = 0, specificity = 0, from } = accuracy;
  return {
    ...{ evidence: at, kind, result, sensitivity, specificity, from },
    ...{ likelihoodRatio: likelihoodRatio(chances) ?? "unbounded", posterior: mean, interval },
  };
}

function impossibleText({ result }: Evidence, { present, absent }: Chances, { sensitivity, specificity }: Accuracy) {
  if (present === 0 && absent === 0)
    return `${result} can't be had with a sensitivity of ${sensitivity} and a specificity of ${specificity}`;
  return `${result} contradicts a look before it: each leaves the other no chance; no look is without error`;
}
