import balevi from "../../../data/balevi-2019/source.json" with { type: "json" };
import farid from "../../../data/farid-2015/source.json" with { type: "json" };
import karlson from "../../../data/karlson-tengvall-2013/source.json" with { type: "json" };
import mainkar from "../../../data/mainkar-kim-2018/source.json" with { type: "json" };
import petersson from "../../../data/petersson-1999/source.json" with { type: "json" };
import pigg from "../../../data/pigg-2016/source.json" with { type: "json" };
import simel from "../../../data/simel-1991/source.json" with { type: "json" };
import villaChavez from "../../../data/villa-chavez-2013/source.json" with { type: "json" };
import weisleder from "../../../data/weisleder-2009/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { type Fault, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { chancesOf, drawn, meanAt, type Prior } from "./test-strength/chances.ts";
import { findingsOf, strengthSteps, type Weighing } from "./test-strength/strength-steps.ts";
import { cautionsOfStrength } from "./test-strength/test-strength-cautions.ts";
import { type TestStrengthInput, testStrengthInput } from "./test-strength/test-strength-input.ts";
import {
  type StrengthStep,
  type TestStrengthOutput,
  testStrengthOutput,
} from "./test-strength/test-strength-output.ts";
import { type LeftOut, weighedResults } from "./test-strength/weighed-results.ts";

const sources = sourcesOf([mainkar, balevi, pigg, farid, weisleder, petersson, villaChavez, karlson, simel]);

/**
 * The probability of a non-vital pulp before and after each test, by likelihood ratios.
 * @throws Refusal `input.impossible` for no prior or two, more events than n, accuracies that are half given or given twice,
 * a result that the given accuracy rules out; `input.notDeterminable` for results that settle the matter both ways.
 * @source Simel 1991 (memory), Mainkar 2018, Pigg 2016 and other series (seen); docs/methods/test-strength
 */
export const testStrengthTopic = defineTopic({
  name: "testStrength",
  version: 1,
  summary: "From the probability of a non-vital pulp before the tests to the one after, test by test, with intervals.",
  input: testStrengthInput,
  output: testStrengthOutput,
  sources,
  compute: testStrength,
});

function testStrength(input: TestStrengthInput): TestStrengthOutput {
  const { weighed, out, faults } = weighedResults(input.results);
  const all = [...faultsOfPrior(input), ...faults];
  if (all.length > 0)
    throw new Refusal("input.impossible", "Cannot weigh the tests: the input contradicts itself", {}, all);
  const { dependence, draws, seed } = input;
  const weighing: Weighing = {
    weighed,
    draws: drawn(priorOf(input), findingsOf(weighed), { dependence, draws, seed }),
  };
  const chances = chancesOf(weighing.draws);
  if (chances.some(({ mean }) => Number.isNaN(mean))) throw settledBothWays();
  const [prior = { mean: 0 }] = chances;
  const steps = strengthSteps(weighing, chances);
  const bounds = { independent: meanAt(weighing.draws, 0), redundant: meanAt(weighing.draws, 1) };
  const conditions = weighed.map(({ condition }) => condition);
  return {
    prior,
    posterior: chances.at(-1) ?? prior,
    ...{ steps, bounds, dependence },
    basis: basisOf(steps),
    cautions: cautionsOfStrength(input, { steps, conditions, bounds, prior }),
    notComputed: [...out, ...missingOf(steps), ...missingIntervals(chances)],
  };
}

const priorOf = ({ prior, priorCounts }: TestStrengthInput): Prior => priorCounts ?? prior ?? 0;

function faultsOfPrior({ prior, priorCounts }: TestStrengthInput): Fault[] {
  if (prior === undefined && priorCounts === undefined)
    return [{ path: "prior", says: "nothing is given; give a probability 0..1, or priorCounts with events and n" }];
  if (prior !== undefined && priorCounts !== undefined)
    return [{ path: "prior", says: "stands beside priorCounts; give the one or the other" }];
  if (priorCounts === undefined || priorCounts.events <= priorCounts.n) return [];
  return [
    { path: "priorCounts.events", says: `${priorCounts.events} is more than the ${priorCounts.n} it is counted among` },
  ];
}

const settledBothWays = (): Refusal =>
  new Refusal(
    "input.notDeterminable",
    "Cannot weigh the tests: two values of exactly 0 or 1 settle the matter both ways; give shares between, or counts",
  );

/** Ratios without a finite value, and intervals that no counts allow. */
function missingOf(steps: readonly StrengthStep[]): LeftOut[] {
  return steps.flatMap((step, index): LeftOut[] => {
    const at = (field: string, why: string): LeftOut => ({ name: `steps[${index}].${field}`, why });
    const { likelihoodRatioPositive: positive, likelihoodRatioNegative: negative, counts, intervals } = step;
    if (counts === undefined && step.accuracyFrom !== "input")
      return [...infinite(step, at), at("intervals", `${step.accuracyFrom} prints neither an interval nor counts`)];
    if (counts === undefined) return [...infinite(step, at), at("intervals", "no counts are given")];
    const empty = "a cell of the table holds no tooth";
    return [
      ...infinite(step, at),
      ...(positive === undefined || intervals.likelihoodRatioPositive
        ? []
        : [at("intervals.likelihoodRatioPositive", empty)]),
      ...(negative === undefined || intervals.likelihoodRatioNegative
        ? []
        : [at("intervals.likelihoodRatioNegative", empty)]),
    ];
  });
}

function infinite(step: StrengthStep, at: (field: string, why: string) => LeftOut): LeftOut[] {
  const why = (share: string) => `${share} is 1 in this series: the ratio has no finite value`;
  return [
    ...(step.likelihoodRatioPositive === undefined ? [at("likelihoodRatioPositive", why("specificity"))] : []),
    ...(step.likelihoodRatioNegative === undefined
      ? [at("likelihoodRatioNegative", "specificity is 0 in this series: the ratio has no finite value")]
      : []),
  ];
}

function missingIntervals(chances: readonly { interval?: unknown }[]): LeftOut[] {
  if (chances.at(-1)?.interval !== undefined) return [];
  return [{ name: "posterior.interval", why: "neither the probability before nor an accuracy comes with counts" }];
}

const basisOf = (steps: readonly StrengthStep[]) => ({
  formula: "Bayes' rule on odds by likelihood ratios; seeded draws from beta distributions for what comes with counts",
  assumptions: [
    "Results of different groups are independent given the state of the pulp; of one group, as dependence says.",
    "Sensitivity and specificity of the published series hold for this tooth.",
    "A share of events in n has the beta distribution of events + 1/2 and n - events + 1/2.",
  ],
  sources: [
    ...new Set([
      ...steps.flatMap(({ accuracyFrom }) => (accuracyFrom === "input" ? [] : [accuracyFrom])),
      ...steps.flatMap(({ alsoPublished }) => alsoPublished.map(({ source }) => source)),
      simel.id,
    ]),
  ],
});
