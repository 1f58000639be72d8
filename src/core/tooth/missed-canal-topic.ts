import molarSeparation from "../../../data/molar-separation/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { type Fault, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { knownTooth } from "./known-tooth.ts";
import { evidenceSteps } from "./missed-canal/evidence-steps.ts";
import { lookFacts } from "./missed-canal/look.ts";
import { besideOf, missedCanalCautions } from "./missed-canal/missed-canal-cautions.ts";
import { type MissedCanalInput, missedCanalInput } from "./missed-canal/missed-canal-input.ts";
import { type MissedCanalOutput, missedCanalOutput } from "./missed-canal/missed-canal-output.ts";
import { nextLooks, sourcesOfLooks } from "./missed-canal/next-looks.ts";
import { type Prior, priorOfSeries } from "./missed-canal/prior-of-series.ts";
import { missedCanalSources } from "./missed-canal/published.ts";

const sources = [...missedCanalSources, ...sourcesOf([molarSeparation])];

/**
 * How likely a canal or root is that nobody has seen, from published series and the looks so far, and what to look at next.
 * @throws Refusal `tooth.unknown`; `input.impossible` for a feature that the tooth can't have, a region without a series, a
 * result that its kind of look can't have and looks that contradict each other; `input.notDeterminable` without any series
 * @source the folders that docs/methods/missed-canal lists, each with its mark
 */
export const missedCanalTopic = defineTopic({
  name: "missedCanal",
  version: 1,
  summary: "How likely a canal is that nobody has seen, from series and looks, and what to look at next.",
  input: missedCanalInput,
  output: missedCanalOutput,
  sources,
  compute: missedCanal,
});

function missedCanal(input: MissedCanalInput): MissedCanalOutput {
  const tooth = knownTooth(input.tooth, "weigh what may hide");
  const prior = withFaults(resultFaults(input), () => priorOfSeries(tooth, input.feature, input.population));
  const { steps, standing, notComputed, sources: counted } = evidenceSteps(input, prior);
  const nextBestLook = nextLooks(input, standing.mean);
  return {
    prior: priorText(prior),
    posterior: { mean: standing.mean, interval: standing.interval },
    ...{ steps, nextBestLook },
    basis: {
      formula: "Random effects of published series on the logit scale, then Bayes' rule by likelihood ratios",
      assumptions: assumptionsOf(prior),
      sources: [
        ...new Set([
          ...prior.series.map(({ source }) => source),
          ...counted,
          ...besideOf(input).map(({ source }) => source),
          ...sourcesOfLooks(nextBestLook, input),
        ]),
      ],
    },
    cautions: missedCanalCautions(input, prior, steps),
    notComputed,
  };
}

/** A sign that is seen or not seen, a look that is yes or no, a depth of no trough. */
const resultFaults = ({ evidence }: MissedCanalInput): Fault[] =>
  evidence.flatMap(({ kind, result, depthMm }, at): Fault[] => {
    const accepted = lookFacts[kind].sign ? ["yes", "no"] : ["seen", "notSeen"];
    return [
      ...(accepted.includes(result)
        ? []
        : [{ path: `evidence[${at}].result`, says: `${result} is no result of ${kind}; ${accepted.join(" or ")} is` }]),
      ...(depthMm === undefined || kind === "troughing"
        ? []
        : [{ path: `evidence[${at}].depthMm`, says: `a depth is of troughing, not of ${kind}` }]),
    ];
  });

/** The prior, unless a result is at fault; where the prior is refused too, all faults stand together. */
function withFaults(faults: readonly Fault[], prior: () => Prior): Prior {
  try {
    const found = prior();
    if (faults.length === 0) return found;
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    throw new Refusal(thrown.code, thrown.message, thrown.facts, [...thrown.faults, ...faults]);
  }
  throw new Refusal("input.impossible", "Cannot weigh the looks: a result does not fit its kind", {}, faults);
}

function priorText({ mean, interval, method, series }: Prior): MissedCanalOutput["prior"] {
  return {
    ...{ mean, interval, method },
    n: series.reduce((sum, { n }) => sum + n, 0),
    N: series.reduce((sum, { N }) => sum + N, 0),
    source: series.map(({ source, region }) => `${source} (${region})`).join("; "),
    series: series.map(({ region, n, N, source }) => ({ region, n, N, source })),
  };
}

const spreadText = (spread: NonNullable<Prior["spread"]>): string =>
  `Populations differ by ${spread.logit.toFixed(2)} on the logit scale (standard deviation), ${
    spread.from === "range"
      ? "from the lowest and highest region of the widest survey"
      : "from how the series differ (Paule and Mandel)"
  }; the interval is that of the next population.`;

const assumptionsOf = ({ spread }: Prior): string[] => [
  spread === undefined
    ? "Jeffreys' prior: half a tooth with and half a tooth without it are added to a count."
    : spreadText(spread),
  "The looks are independent of each other in teeth with it and in teeth without it; where they share a film or an eye, they say less than is counted.",
  "The interval holds the unsureness of the population's share alone, not that of sensitivities and specificities.",
  "Age and sex of the patient are not counted.",
];
