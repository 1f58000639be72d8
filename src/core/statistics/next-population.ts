import { expectedRange } from "./expected-range.ts";
import { studentReach } from "./student-quantile.ts";

/** How many of how many had a thing, in one population or added up over several. */
export interface CountedSeries {
  readonly n: number;
  readonly N: number;
  /** Populations that the count adds up; 1 where absent. */
  readonly regions?: number | undefined;
  /** Of those, the lowest and highest share, where published. */
  readonly lowest?: number | undefined;
  readonly highest?: number | undefined;
}

/** What some series say of a population that is none of them: a Student distribution of the logit of its share. */
export interface NextPopulation {
  readonly centreLogit: number;
  readonly standardErrorLogit: number;
  /** Standard deviation between populations. */
  readonly spreadLogit: number;
  readonly spreadFrom: "range" | "series";
  readonly freedom: number;
}

/**
 * What series of counts say of the next population, by random effects on the logit scale.
 * Takes at least two series, or one with its populations' lowest and highest share. The spread between populations comes
 * from that range (of the series with the most populations) where one is given, else from how the series differ, by the
 * estimator of Paule and Mandel; a count over m populations varies by the m-th part of the spread's square.
 * @source Paule RC, Mandel J, Consensus values and weighting factors, J Res Natl Bur Stand, 1982;87:377-385 (memory);
 * Higgins JPT, Thompson SG, Spiegelhalter DJ, A re-evaluation of random-effects meta-analysis, J R Stat Soc A,
 * 2009;172:137-159 for the interval of a new study (memory); Tippett 1925 for the range (memory); docs/methods/missed-canal C4
 */
export function nextPopulation(series: readonly CountedSeries[]): NextPopulation {
  const logits = series.map(logitOf);
  const ranged = series
    .filter((one) => spreadOfRange(one) !== undefined)
    .sort((a, b) => regionsOf(b) - regionsOf(a))[0];
  const ofRange = ranged === undefined ? undefined : spreadOfRange(ranged);
  const square = ofRange === undefined ? spreadOfSeries(logits) : ofRange ** 2;
  const { centre, weight } = centreAt(square, logits);
  return {
    centreLogit: centre,
    standardErrorLogit: Math.sqrt(1 / weight),
    spreadLogit: Math.sqrt(square),
    ...(ranged === undefined
      ? { spreadFrom: "series", freedom: series.length - 1 }
      : { spreadFrom: "range", freedom: regionsOf(ranged) - 1 }),
  };
}

/** The share of the next population below which a stated part of its distribution lies; the part above 0 and below 1. */
export function shareOfNext(next: NextPopulation, part: number): number {
  const reach = studentReach(next.freedom, Math.abs(2 * part - 1)) * Math.sign(part - 0.5);
  return shareOfLogit(next.centreLogit + reach * Math.hypot(next.spreadLogit, next.standardErrorLogit));
}

interface Logit {
  readonly value: number;
  readonly variance: number;
  readonly regions: number;
}

const regionsOf = ({ regions = 1 }: CountedSeries): number => regions;
const shareOfLogit = (logit: number): number => 1 / (1 + Math.exp(-logit));
const logitOfShare = (share: number): number => Math.log(share / (1 - share));

/** Where none or all have it, half a one is added on both sides, so that the logit is a number. */
function logitOf(series: CountedSeries): Logit {
  const added = series.n === 0 || series.n === series.N ? 0.5 : 0;
  const [have, lack] = [series.n + added, series.N - series.n + added];
  return { value: Math.log(have / lack), variance: 1 / have + 1 / lack, regions: regionsOf(series) };
}

function centreAt(square: number, logits: readonly Logit[]) {
  const weights = logits.map(({ variance, regions }) => 1 / (square / regions + variance));
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const centre = logits.reduce((sum, { value }, at) => sum + value * (weights[at] ?? 0), 0) / weight;
  const misfit = logits.reduce((sum, { value }, at) => sum + (value - centre) ** 2 * (weights[at] ?? 0), 0);
  return { centre, weight, misfit };
}

/** The square of the spread at which the weighted misfit is what is expected of so many series; 0 where it is less anyway. */
function spreadOfSeries(logits: readonly Logit[]): number {
  const expected = logits.length - 1;
  if (centreAt(0, logits).misfit <= expected) return 0;
  let [low, high] = [0, 1];
  while (centreAt(high, logits).misfit > expected) high *= 2;
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2;
    if (centreAt(middle, logits).misfit > expected) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The spread that so wide a range needs, less what one population's count varies by itself. */
function spreadOfRange(series: CountedSeries): number | undefined {
  const { lowest, highest, n, N } = series;
  const regions = regionsOf(series);
  if (lowest === undefined || highest === undefined || regions < 2) return undefined;
  const seen = (logitOfShare(highest) - logitOfShare(lowest)) / expectedRange(regions);
  const byCounting = regions / (N * (n / N) * (1 - n / N));
  return Math.sqrt(Math.max(0, seen ** 2 - byCounting));
}
