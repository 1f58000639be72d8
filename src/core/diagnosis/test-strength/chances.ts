import { betaDraw } from "../../statistics/beta-draw.ts";
import { quantile } from "../../statistics/quantile.ts";
import { type SeededRandom, seededRandom } from "../../statistics/seeded-random.ts";
import { type Accuracy, half, level } from "./accuracy.ts";
import { logOddsAfter, logOddsOf, placesByGroup, probabilityOf } from "./evidence-ladder.ts";
import type { Chance } from "./test-strength-output.ts";

/** What is known before: a share taken as exact, or counts. */
export type Prior = number | { readonly events: number; readonly n: number };

/** One result and the accuracy it is weighed by. */
export interface Finding {
  readonly result: "positive" | "negative";
  readonly accuracy: Accuracy;
  readonly group: string;
}

/** How the draws are made. */
export interface DrawPlan {
  readonly dependence: number;
  readonly draws: number;
  readonly seed: number;
}

/** Drawn values, or the one value of what is exact. */
type Column = readonly number[];

/** The prior's log odds and each result's log ratio, drawn. */
export interface Drawn {
  readonly findings: readonly Finding[];
  readonly plan: DrawPlan;
  readonly before: Column;
  readonly columns: readonly Column[];
  /** Of each result: which stream its draws come from. */
  readonly streams: readonly number[];
}

/**
 * Draws what comes with counts from its beta distribution; what comes without is exact.
 * Takes the prior, the results in their order, and the plan. Each result has a stream of its own by what it says, so that
 * another order gives the same draws.
 * @source docs/methods/test-strength C4
 */
export function drawn(prior: Prior, findings: readonly Finding[], plan: DrawPlan): Drawn {
  const told = findings.map((finding, index) => ({ index, text: JSON.stringify(finding) }));
  const ranked = [...told].sort((a, b) => (a.text === b.text ? a.index - b.index : a.text < b.text ? -1 : 1));
  const streams = told.map((one) => 1 + ranked.indexOf(one));
  return {
    ...{ findings, plan, streams },
    before: priorColumn(prior, plan),
    columns: findings.map((finding, index) => ratioColumn(finding, plan, streams[index] ?? 0)),
  };
}

/** The chance before the results and after each of them: one more than results; no interval where all so far is exact. */
export function chancesOf(draws: Drawn): Chance[] {
  return [undefined, ...draws.findings].map((_, rung) => {
    const values = endsAfter(draws, rung);
    return values.length === 1 ? { mean: values[0] ?? Number.NaN } : chanceFrom(values);
  });
}

/** The mean after all results, under another dependence. */
export const meanAt = (draws: Drawn, dependence: number): number =>
  meanOf(endsAfter({ ...draws, plan: { ...draws.plan, dependence } }, draws.findings.length));

/** The mean after all results, had one of them been weighed by another accuracy. */
export function meanWith(draws: Drawn, place: number, accuracy: Accuracy): number {
  const columns = draws.columns.map((column, index) => {
    const finding = draws.findings[index];
    if (index !== place || finding === undefined) return column;
    return ratioColumn({ ...finding, accuracy }, draws.plan, draws.streams[index] ?? 0);
  });
  return meanOf(endsAfter({ ...draws, columns }, columns.length));
}

/** The probabilities after the first results, one a draw; one alone where nothing is drawn. */
function endsAfter({ findings, plan, before, columns }: Drawn, results: number): number[] {
  const used = columns.slice(0, results);
  const groups = placesByGroup(findings.slice(0, results).map(({ group }) => group));
  const count = Math.max(before.length, ...used.map((column) => column.length));
  return Array.from({ length: count }, (_, draw) => {
    const logRatios = used.map((column) => valueAt(column, draw));
    return probabilityOf(logOddsAfter(valueAt(before, draw), logRatios, groups, plan.dependence));
  });
}

const valueAt = (column: Column, draw: number): number => column[column.length === 1 ? 0 : draw] ?? Number.NaN;

const streamOf = (seed: number, rank: number): SeededRandom => seededRandom(seed + 1_000_003 * rank);

const drawnShare = (random: SeededRandom, met: number, not: number): number => betaDraw(random, met + half, not + half);

function priorColumn(prior: Prior, { draws, seed }: DrawPlan): Column {
  if (typeof prior === "number") return [logOddsOf(prior)];
  const random = streamOf(seed, 0);
  return Array.from({ length: draws }, () => logOddsOf(drawnShare(random, prior.events, prior.n - prior.events)));
}

function ratioColumn({ result, accuracy }: Finding, { draws, seed }: DrawPlan, rank: number): Column {
  const isPositive = result === "positive";
  const { sensitivity, specificity, counts } = accuracy;
  if (counts === undefined)
    return [
      isPositive
        ? Math.log(sensitivity) - Math.log(1 - specificity)
        : Math.log(1 - sensitivity) - Math.log(specificity),
    ];
  const { truePositive, falsePositive, falseNegative, trueNegative } = counts;
  const ofNonVital = isPositive ? ([truePositive, falseNegative] as const) : ([falseNegative, truePositive] as const);
  const ofVital = isPositive ? ([falsePositive, trueNegative] as const) : ([trueNegative, falsePositive] as const);
  const random = streamOf(seed, rank);
  return Array.from(
    { length: draws },
    () => Math.log(drawnShare(random, ...ofNonVital)) - Math.log(drawnShare(random, ...ofVital)),
  );
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function chanceFrom(values: readonly number[]): Chance {
  const sorted = [...values].sort((a, b) => a - b);
  const mean = meanOf(values);
  const [low, high] = [quantile(sorted, (1 - level) / 2), quantile(sorted, (1 + level) / 2)];
  return { mean, interval: { low: Math.min(low, mean), high: Math.max(high, mean), level } };
}
