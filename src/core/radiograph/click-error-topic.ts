import bland from "../../../data/bland-altman-1986/source.json" with { type: "json" };
import dahlbergs from "../../../data/dahlberg-1940/source.json" with { type: "json" };
import { type Interval, sourcesOf } from "../basis.ts";
import { faultAt } from "../refusal.ts";
import { quantile } from "../statistics/quantile.ts";
import { defineTopic } from "../topic.ts";
import { clickErrorCautions } from "./click-error/click-error-cautions.ts";
import { type ClickErrorInput, type ClickPair, clickErrorInput } from "./click-error/click-error-input.ts";
import { type ClickErrorOutput, clickErrorOutput } from "./click-error/click-error-output.ts";
import { byName, byTool, fewestPairs } from "./click-error/click-groups.ts";
import { dahlberg, stepOf } from "./click-error/dahlberg.ts";
import { meanWithInterval } from "./click-error/mean-with-interval.ts";
import { knownPairs, missOf, offTruth } from "./click-error/miss-of-truth.ts";
import { type OutlyingPair, outlyingPairs } from "./click-error/outlying-pairs.ts";

const sources = sourcesOf([dahlbergs, bland]);

/**
 * The standard deviation of a person's click from places that they marked twice, with its interval.
 * @throws Refusal `input.notDeterminable` under 5 pairs; `input.impossible` where a film has a name twice.
 * @source data/dahlberg-1940 (memory), data/bland-altman-1986 (seen); docs/methods/click-error.md
 */
export const clickErrorTopic = defineTopic({
  name: "clickError",
  version: 1,
  summary: "The error of a person's own click, from places that were marked twice, with its interval.",
  input: clickErrorInput,
  output: clickErrorOutput,
  sources,
  compute: clickError,
  asked: "byExercise",
});

function clickError(input: ClickErrorInput): ClickErrorOutput {
  const { pairs } = input;
  checkPairs(pairs);
  const [both, across, down] = [dahlberg(pairs), dahlberg(pairs, [0]), dahlberg(pairs, [1])];
  const [drift, bias] = [driftOf(pairs), biasOf(pairs)];
  const [names, tools] = [byName(pairs), byTool(pairs)];
  const outlying = outlyingPairs(pairs);
  const rest = pairs.filter((one) => !outlying.some(({ pair }) => pair === one));
  const found = {
    ...{ n: pairs.length, clicks: 2 * pairs.length },
    ...{ sigmaPx: both.sigmaPx, sigmaColumnPx: across.sigmaPx, sigmaRowPx: down.sigmaPx },
    ...{ ...drift.values, ...bias.values, truths: knownPairs(pairs).length },
    intervals: {
      ...{ sigmaPx: both.interval, sigmaColumnPx: across.interval, sigmaRowPx: down.interval },
      ...{ ...drift.intervals, ...bias.intervals },
    },
    ...{ byName: [...names.groups], byTool: [...tools.groups], ...outliersOf(outlying, rest), ...zoomOf(pairs) },
  };
  const notComputed = [...names.notComputed, ...tools.notComputed, ...bias.notComputed];
  return {
    ...found,
    basis,
    cautions: clickErrorCautions(input, { ...found, inLine: byName(rest).groups }),
    notComputed,
  };
}

const basis = {
  formula: "Dahlberg's error: the root of the summed squared differences over twice the number of pairs",
  assumptions: [
    "The two marks of a place err independently, alike, and alike in both directions.",
    "The first mark was not remembered when the second was made.",
  ],
  sources: sources.map(({ id }) => id),
};

function checkPairs(pairs: readonly ClickPair[]): void {
  if (pairs.length < fewestPairs) {
    const says = `${pairs.length} are too few to tell a click's error; at least ${fewestPairs} are needed`;
    throw faultAt("pairs", says, "input.notDeterminable");
  }
  const seen = new Set<string>();
  for (const [index, { film, name }] of pairs.entries()) {
    const key = JSON.stringify([film, name]);
    if (seen.has(key)) throw faultAt(`pairs[${index}]`, `${name} of ${film} stands here a second time`);
    seen.add(key);
  }
}

function driftOf(pairs: readonly ClickPair[]) {
  const [across, down] = ([0, 1] as const).map((direction) =>
    meanWithInterval(pairs.map((pair) => stepOf(pair)[direction])),
  ) as [Mean, Mean];
  return {
    values: { driftColumnPx: across.mean, driftRowPx: down.mean },
    intervals: { driftColumnPx: across.interval, driftRowPx: down.interval },
  };
}
type Mean = { readonly mean: number; readonly interval: Interval };

const biasNames = ["biasColumnPx", "biasRowPx", "missPx"] as const;

function biasOf(pairs: readonly ClickPair[]) {
  const known = knownPairs(pairs);
  if (known.length < fewestPairs) {
    const why =
      known.length === 0 ? "no true places are given" : `${known.length} true places; ${fewestPairs} are needed`;
    return { values: {}, intervals: {}, notComputed: biasNames.map((name) => ({ name, why })) };
  }
  const [across, down] = [meanWithInterval(offTruth(known, 0)), meanWithInterval(offTruth(known, 1))];
  return {
    values: { biasColumnPx: across.mean, biasRowPx: down.mean, missPx: missOf(known) },
    intervals: { biasColumnPx: across.interval, biasRowPx: down.interval },
    notComputed: [],
  };
}

/** The pairs that are out of line, and the error without them where enough are left. */
function outliersOf(
  outlying: readonly OutlyingPair[],
  rest: readonly ClickPair[],
): Pick<ClickErrorOutput, "outliers" | "without"> {
  const outliers = outlying.map(({ pair: { film, name }, apartPx, expectedPx }) => ({
    film,
    name,
    apartPx,
    expectedPx,
  }));
  return outliers.length === 0 || rest.length < fewestPairs ? { outliers } : { outliers, without: dahlberg(rest) };
}

function zoomOf(pairs: readonly ClickPair[]): Pick<ClickErrorOutput, "zoom"> {
  const zooms = pairs.flatMap(({ firstZoom, secondZoom }) => [firstZoom ?? [], secondZoom ?? []].flat());
  const sorted = zooms.sort((a, b) => a - b);
  const [low, high] = [sorted[0], sorted.at(-1)];
  return low === undefined || high === undefined ? {} : { zoom: { low, middle: quantile(sorted, 0.5), high } };
}
