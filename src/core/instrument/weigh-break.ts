import type { Interval } from "../basis.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import { type BreakFact, ofEach } from "./break-facts.ts";
import { chancesOf, expectedPlaces, likelihoodOfPlace, type Parts } from "./expected-places.ts";
import { spreadOfFatigue, type UsedInstrument } from "./fatigue-places.ts";
import { drawnOf, type Ranges, type Values } from "./fracture-assumed.ts";
import { type ExplanationName, explanationNames, type OfEach } from "./fracture-input.ts";
import type { Measured } from "./measured.ts";
import { mixed, type PlaceDensity } from "./place-density.ts";
import { drawnTorsionalShare, meanTorsionalShare, priorOf } from "./split-series.ts";

/** What a break is weighed from. */
export interface BreakCase {
  readonly used: UsedInstrument;
  readonly ranges: Ranges;
  readonly facts: readonly BreakFact[];
  /** Where it broke; undefined where nothing was measured. */
  readonly place: Measured | undefined;
}

/** Expected fatigue at some values of the assumptions; undefined where nothing bends the instrument. */
type Fatigue = PlaceDensity | undefined;

/** How many values of slope and clearance fatigue is looked at with, and how many draws weigh a break with each. */
const counts = { fatigue: 12, draws: 70 };
const seed = 20_071_997;

/** The weighing of a break. */
export interface Weighing {
  readonly posterior: OfEach;
  readonly intervals: Readonly<Record<ExplanationName, Interval>>;
  /** Where bending fatigue is expected, over all that is open; undefined where nothing bends the instrument. */
  readonly fatigue: PlaceDensity | undefined;
  /** Where each explanation expects the break. */
  readonly parts: Parts<PlaceDensity>;
}

/**
 * The chance of each explanation after all that was seen, with what priors, slopes and assumptions leave open.
 * Takes the case; always the same for the same case. Gives the mean over seeded draws, each weighed by how well it explains
 * what was seen, and the middle 95 % of them.
 * @source Bayes' rule; docs/methods/fracture.md C2, C11
 */
export function weighBreak({ ranges, used, facts, place }: BreakCase): Weighing {
  const random = seededRandom(seed);
  const partsWith = expectedPlaces(used);
  const looks = Array.from({ length: counts.fatigue }, () => spreadOfFatigue(used, drawnOf(ranges, random), random));
  const chances = looks.map((fatigue) => chancesOf(partsWith(fatigue), place));
  const draws = chances.flatMap((seen) =>
    Array.from({ length: counts.draws }, () => {
      const values = drawnOf(ranges, random);
      const prior = priorOf(values("flawPrior"), drawnTorsionalShare(random));
      return jointOf(facts, { values, prior, chances: seen });
    }),
  );
  const fatigue = together(looks);
  return {
    posterior: normalised(ofEach((name) => draws.reduce((sum, draw) => sum + draw[name], 0))),
    intervals: {
      bendingFatigue: intervalOf(draws, "bendingFatigue"),
      torsionalOverload: intervalOf(draws, "torsionalOverload"),
      flawOrJoint: intervalOf(draws, "flawOrJoint"),
    },
    fatigue,
    parts: partsWith(fatigue),
  };
}

/** All looks in one, or undefined where most of them see no bend. */
function together(looks: readonly Fatigue[]): Fatigue {
  const bent = looks.flatMap((one) => (one === undefined ? [] : [one]));
  return bent.length <= looks.length / 2 ? undefined : mixed(bent.map((of) => ({ of, share: 1 / bent.length })));
}

/** What one set of values says: its prior, and how likely the place is under each part of what is expected. */
export interface Look {
  readonly values: Values;
  readonly prior: OfEach;
  readonly chances: Parts<number>;
}

/** The joint chance of each explanation and all that was seen. */
function jointOf(facts: readonly BreakFact[], { values, prior, chances }: Look): OfEach {
  const likelihoods = [likelihoodOfPlace(chances, values), ...facts.map(({ likelihood }) => likelihood(values))];
  return ofEach((name) => likelihoods.reduce((product, one) => product * one[name], prior[name]));
}

/** The chance of each explanation by one set of values. */
export const posteriorOf = (facts: readonly BreakFact[], look: Look): OfEach => normalised(jointOf(facts, look));

/** What stands at some values of the assumptions, the series weighed alike; the same draws each time. */
export function lookAt({ used, place }: BreakCase, values: Values): Look {
  const fatigue = spreadOfFatigue(used, values, seededRandom(seed));
  const chances = chancesOf(expectedPlaces(used)(fatigue), place);
  return withValues({ chances }, values);
}

/** The same expected places at other values of what does not bend the instrument. */
export const withValues = ({ chances }: Pick<Look, "chances">, values: Values): Look => ({
  values,
  prior: priorOf(values("flawPrior"), meanTorsionalShare()),
  chances,
});

function normalised(joint: OfEach): OfEach {
  const total = explanationNames.reduce((sum, name) => sum + joint[name], 0);
  return ofEach((name) => joint[name] / total);
}

/** The middle 95 % of the draws, each weighed by how likely it makes what was seen. */
function intervalOf(draws: readonly OfEach[], name: ExplanationName): Interval {
  const weighed = draws.map((draw) => {
    const weight = explanationNames.reduce((sum, one) => sum + draw[one], 0);
    return { chance: draw[name] / weight, weight };
  });
  const sorted = weighed.toSorted((a, b) => a.chance - b.chance);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  return { low: reached(sorted, 0.025 * total), high: reached(sorted, 0.975 * total), level: 0.95 };
}

/** The chance at which the weights, added up in rising order, reach a sum. */
function reached(sorted: readonly { readonly chance: number; readonly weight: number }[], sum: number): number {
  let below = 0;
  for (const { chance, weight } of sorted) {
    below += weight;
    if (below >= sum) return chance;
  }
  return sorted.at(-1)?.chance ?? 1;
}
