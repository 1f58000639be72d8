import { relative, sourceOfFact, written } from "./break-facts.ts";
import { type AssumptionName, assumptionNames, middleOf, withOne } from "./fracture-assumed.ts";
import { type ExplanationName, explanationNames, type FractureOutput, type OfEach } from "./fracture-input.ts";
import { type BreakCase, type Look, lookAt, posteriorOf, withValues } from "./weigh-break.ts";

/** Assumptions that enter wherever a break is weighed, and those that enter with its place alone. */
const always: readonly AssumptionName[] = ["flawPrior"];
const withPlace: readonly AssumptionName[] = ["elsewhere", "flawHigh"];
const withBend: readonly AssumptionName[] = ["slope", "clearanceMm", "depthSigmaMm", "lifeScatter"];

/** What each assumption is, in plain words. */
const wordsOf: Readonly<Record<AssumptionName, string>> = {
  flawPrior: "share of all breaks that come from a flaw or a joint",
  elsewhere: "share of breaks by bending or twisting that lie elsewhere than expected",
  flawHigh: "share of breaks by a flaw in the third next to the handle",
  slope: "slope of the strain-life line",
  clearanceMm: "how much wider than the instrument the canal is, mm",
  depthSigmaMm: "standard deviation of a depth of the tip, mm",
  lifeScatter: "scatter of life between like instruments",
  hardlyBent: "how many times likelier fatigue is where the stated canals hardly bend it",
  deformedInTorsion: "share of torsional breaks with deformed flutes",
  deformedInFatigue: "share of fatigue breaks with deformed flutes",
  bound: "how many times likelier a bound tip is before a torsional break",
  notBound: "how many times likelier a free tip is before a torsional break",
  stopped: "how many times likelier a stop at the limit is before a torsional break",
  notStopped: "how many times likelier no stop is before a torsional break",
  striations: "how many times likelier striations are on a fatigue break",
  severalOrigins: "how many times likelier several origins are on a fatigue break",
  dimples: "how many times likelier dimples are on a torsional break",
  circularAbrasion: "how many times likelier circular abrasion is on a torsional break",
  inclusionOrPore: "how many times likelier an inclusion or pore is on a break by a flaw",
};

/**
 * How the answer moves when each assumption that enters is halved or doubled, all others at their middle.
 * Takes the case and what stands at the middle.
 * @source docs/methods/fracture.md C11
 */
export function breakSensitivity(breakCase: BreakCase, middle: Look): FractureOutput["sensitivity"] {
  const { ranges, facts, place, used } = breakCase;
  const entering = [
    ...always,
    ...(place === undefined ? [] : withPlace),
    ...(place === undefined || used.uses.length === 0 ? [] : withBend),
    ...facts.flatMap(({ by }) => by),
  ];
  const values = middleOf(ranges);
  return assumptionNames
    .filter((name) => entering.includes(name))
    .map((name) => {
      const { low, high, source } = ranges(name);
      const at = (by: number): OfEach => {
        const changed = withOne(values, { name, by }, ranges(name));
        return posteriorOf(facts, withBend.includes(name) ? lookAt(breakCase, changed) : withValues(middle, changed));
      };
      const range = low === high ? written(low) : `${written(low)} to ${written(high)}`;
      return {
        assumption: name,
        says: `${wordsOf[name]}: ${range} (${source})`,
        middle: values(name),
        halved: at(0.5),
        doubled: at(2),
      };
    });
}

/** A place that is as likely under one explanation as under another. */
const anyPlace = { bendingFatigue: [1, 1], torsionalOverload: [1, 1], flawOrJoint: [1, 1] } as const;

/** A fact that moves the answer by less than this, in all three chances together, weighs nothing worth telling. */
const movesLittle = 0.02;

/** How a sentence names an explanation. */
const named = {
  bendingFatigue: "bending fatigue",
  torsionalOverload: "torsional overload",
  flawOrJoint: "a flaw or a joint",
};

/**
 * The fact without which the answer would be the most different, with what it is most consistent with.
 * Takes the facts of the case, what stands at the middle, all facts as they are told, the place among them, and whether
 * anything bends the instrument: where nothing does, fatigue expects no place, and none is most consistent with it.
 */
export function weighsMost(
  { facts }: BreakCase,
  middle: Look,
  { told, bent }: { readonly told: FractureOutput["facts"]; readonly bent: boolean },
): string {
  const whole = posteriorOf(facts, middle);
  const without = (name: string): OfEach => {
    const others = facts.filter((one) => one.name !== name);
    return posteriorOf(others, others.length === facts.length ? { ...middle, chances: anyPlace } : middle);
  };
  const moves = told.map(({ name, says, factor }) => {
    const rest = without(name);
    const apart = explanationNames.reduce((sum, one) => sum + Math.abs(whole[one] - rest[one]), 0);
    return { name, says, factor, apart };
  });
  const [most] = moves.toSorted((a, b) => b.apart - a.apart);
  if (most === undefined || most.apart < movesLittle)
    return "Nothing that is known moves the answer from what it was before.";
  const fits = explanationNames.filter((name) => most.factor[name] > 1 - 1e-9);
  if (most.name === "place" && !bent && fits.includes("bendingFatigue"))
    return `${most.says} That is least consistent with ${named[leastOf(most.factor)]}.`;
  const favoured = fits.map((name) => named[name]);
  return `${most.says} That is most consistent with ${favoured.join(" or ")}.`;
}

const leastOf = (factor: OfEach): ExplanationName =>
  explanationNames.reduce((least, name) => (factor[name] < factor[least] ? name : least));

/** Every fact with what it weighs at the middle. */
export function factsOf({ facts, ranges }: BreakCase, middle: Look): FractureOutput["facts"] {
  return facts.map((fact) => {
    return {
      name: fact.name,
      says: fact.says,
      factor: relative(fact.likelihood(middle.values)),
      source: sourceOfFact(fact, ranges),
    };
  });
}
