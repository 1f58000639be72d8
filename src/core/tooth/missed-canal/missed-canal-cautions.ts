import type { Feature } from "./feature.ts";
import type { MissedCanalInput } from "./missed-canal-input.ts";
import type { MissedCanalOutput } from "./missed-canal-output.ts";
import type { Prior } from "./prior-of-series.ts";
import { type PublishedSeries, publishedBeside } from "./published.ts";

type Steps = readonly MissedCanalOutput["steps"][number][];

/** What a reader must know beside the chance. @source docs/methods/missed-canal */
export function missedCanalCautions(input: MissedCanalInput, prior: Prior, steps: Steps): string[] {
  return [
    ...priorCautions(prior),
    ...besideOf(input).map(({ says }) => says),
    ...lookCautions(input, steps),
    "This is a chance among teeth of this kind. The canal is there once an instrument is in it, and its absence is never shown.",
  ];
}

/** Other published figures that bear on the prior, or on a look that was made. */
export function besideOf({ feature, tooth, evidence }: MissedCanalInput) {
  const made = new Set<string>(evidence.map(({ kind }) => kind));
  return publishedBeside.filter(
    (one) => one.feature === feature && one.teeth.includes(tooth) && (one.kind === undefined || made.has(one.kind)),
  );
}

function priorCautions({ method, series }: Prior): string[] {
  const back = series.filter(({ counted }) => counted === "fromPercent");
  const films = series.filter(({ onFilms }) => onFilms === true);
  return [
    ...(method === "oneSeries" ? [oneSeriesText(series)] : []),
    ...(method === "twoSeries" ? [twoSeriesText] : []),
    ...(back.length === 0 ? [] : [`Counts worked back from printed percentages: ${namesOf(back)}.`]),
    ...(films.length === 0 ? [] : [`Read on films, which hide roots, so rather too low: ${namesOf(films)}.`]),
    ...(differ(series) ? [differText(series)] : []),
  ];
}

const twoSeriesText =
  "Two series show little of how populations differ: the interval spans the intervals of both, and another population may lie outside it.";

function oneSeriesText([only]: readonly PublishedSeries[]): string {
  const over = only?.regions === undefined ? "One series" : `One count over ${only.regions} series or regions`;
  return `${over} shows no spread between populations: the interval is that of the count alone, and another population may lie far outside it.`;
}

/** Surveys of many regions that answer the same question differently by more than a quarter. */
const surveysOf = (series: readonly PublishedSeries[]) => series.filter(({ regions }) => regions !== undefined);
function differ(series: readonly PublishedSeries[]): boolean {
  const shares = surveysOf(series).map(({ n, N }) => n / N);
  return shares.length > 1 && Math.max(...shares) > 1.25 * Math.min(...shares);
}

function differText(series: readonly PublishedSeries[]): string {
  const told = surveysOf(series).map(({ n, N, source }) => `${((100 * n) / N).toFixed(1)} % (${source})`);
  return `Surveys of many regions differ: ${told.join(", ")}.`;
}

const namesOf = (series: readonly PublishedSeries[]): string =>
  series.map(({ region, source }) => `${region} (${source})`).join(", ");

function lookCautions(input: MissedCanalInput, steps: Steps): string[] {
  const { evidence, feature } = input;
  const twice = evidence.flatMap(({ kind }, at) =>
    evidence.findIndex((one) => one.kind === kind) < at
      ? [`evidence[${at}] is a further ${kind}: two looks of one kind are hardly independent.`]
      : [],
  );
  const turned = steps
    .filter(({ sensitivity, specificity }) => sensitivity + specificity < 1)
    .map(({ evidence: at }) => `evidence[${at}]: by these figures seeing it speaks against it; are they mixed up?`);
  const certain = steps
    .filter(({ posterior }) => posterior === 0 || posterior === 1)
    .map(
      ({ evidence: at }) => `evidence[${at}] leaves no doubt only because its figures are without error; no look is.`,
    );
  return [
    ...twice,
    ...turned,
    ...certain,
    ...unmetNeeds(input),
    ...troughingCaution(feature, steps),
    ...scanCaution(steps),
  ];
}

/** What C8 asks for before a scan or a trough, where one was made without it. */
const unmetNeeds = ({ evidence, lessWasNotEnough = "", wallKnownMm }: MissedCanalInput): string[] => [
  ...(evidence.some(({ kind }) => kind === "cbct") && lessWasNotEnough === ""
    ? ["No reason is written why less than a CBCT was not enough."]
    : []),
  ...(evidence.some(({ kind }) => kind === "troughing") && wallKnownMm === undefined
    ? ["There was troughing, and the wall where it cuts is not known."]
    : []),
];

function troughingCaution(feature: Feature, steps: Steps): string[] {
  const bound = steps.some(({ kind, from }) => kind === "troughing" && from.includes("upper bound"));
  return bound && feature === "middleMesial"
    ? [
        "Troughing's published figure counts orifices within its reach: an orifice in reach may still be overlooked, so not seeing it speaks less strongly.",
      ]
    : [];
}

const scanCaution = (steps: Steps): string[] =>
  steps.some(({ kind, from }) => kind === "cbct" && from.includes("aung-2021"))
    ? [
        "The published figures of CBCT are of extracted teeth for the most part; a filling or a post in the root makes it see less (common practice).",
      ]
    : [];
