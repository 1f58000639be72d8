import { Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { breakFacts, ofEach, relative, written } from "./break-facts.ts";
import { breakSensitivity, factsOf, weighsMost } from "./break-sensitivity.ts";
import { type BrokenPlace, brokenPlace } from "./broken-place.ts";
import { densityWith, likelihoodOfPlace } from "./expected-places.ts";
import { assumedOf, middleOf, rangeFaults } from "./fracture-assumed.ts";
import {
  type ExplanationName,
  explanationNames,
  type FractureInput,
  type FractureOutput,
  fractureInput,
  fractureOutput,
} from "./fracture-input.ts";
import { fractureSources } from "./fracture-sources.ts";
import { type Explained, fractureBasis, fractureCautions, fractureNotComputed, wouldDecide } from "./fracture-words.ts";
import { fragmentShifts } from "./fragment-shifts.ts";
import { fragmentStanding } from "./fragment-standing.ts";
import { hardlyBent } from "./hardly-bent.ts";
import { instrumentShape } from "./instrument-shape.ts";
import { torsionPlaces } from "./other-places.ts";
import { middleMm, momentsOf } from "./place-density.ts";
import { priorOf, splitSeries, torsionalShare } from "./split-series.ts";
import { twistAtBreak } from "./twist-at-break.ts";
import { usedInstrument } from "./used-instrument.ts";
import { type BreakCase, type Look, lookAt, posteriorOf, type Weighing, weighBreak } from "./weigh-break.ts";

/**
 * How an instrument broke: bending fatigue, torsional overload, or a flaw, each with its chance after all that was seen.
 * @throws Refusal `input.impossible` for an instrument, a use, a depth or a piece that can't be, signs that contradict each
 * other, ranges the wrong way round; `input.notDeterminable` where the only measure tells no length, as a width without a
 * taper; `trace.tooFewPoints` under 4 points of a course.
 * @source docs/methods/fracture.md, which says what is published, what is physics and what is assumption
 */
export const fractureTopic = defineTopic({
  name: "fracture",
  version: 1,
  summary: "How an instrument broke: bending fatigue, torsional overload or a flaw, with what weighs for each.",
  input: fractureInput,
  output: fractureOutput,
  sources: fractureSources,
  compute: fracture,
});

function fracture(input: FractureInput): FractureOutput {
  checkTold(input);
  const shape = instrumentShape(input.instrument, "instrument");
  const reading = brokenPlace(input.fragment, shape);
  const { place } = reading;
  const used = usedInstrument(input, shape, place === undefined ? 0 : place.value);
  const ranges = assumedOf(input);
  const facts = [...hardlyBent(used), ...breakFacts(input)];
  const breakCase: BreakCase = { used, ranges, facts, place };
  const weighing = weighBreak(breakCase);
  const middle = lookAt(breakCase, middleOf(ranges));
  const explained: Explained = { input, reading, used, ranges, bent: weighing.fatigue !== undefined };
  const told = [...placeFact(breakCase, middle), ...factsOf(breakCase, middle)];
  return {
    explanations: explanationsOf(breakCase, weighing, { middle, input }),
    weighsMost: weighsMost(breakCase, middle, { told, bent: explained.bent }),
    wouldDecide: wouldDecide(explained),
    ...ofPlace(input, place, shape),
    facts: told,
    priors: priorsOf(facts, middle),
    sensitivity: breakSensitivity(breakCase, middle),
    atMiddle: posteriorOf(facts, middle),
    shifts: explained.bent ? fragmentShifts(used, middle.values) : [],
    basis: fractureBasis(explained),
    cautions: fractureCautions(explained),
    notComputed: fractureNotComputed(explained),
  };
}

function checkTold(input: FractureInput): void {
  const { signs } = input;
  const seen = signs.filter((sign) => sign === "flutesUnwound" || sign === "flutesWoundTighter" || sign === "bent");
  const contradicted =
    signs.includes("noneVisible") && seen.length > 0
      ? [{ path: "signs", says: `noneVisible stands beside ${seen.join(", ")}; they contradict each other` }]
      : [];
  const faults = [...contradicted, ...rangeFaults(input)];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot explain the break: what is told can't be", {}, faults);
}

function ofPlace(
  { instrument, tipDepthMm, courseStarts }: FractureInput,
  place: BrokenPlace | undefined,
  shape: Explained["used"]["shape"],
) {
  const name = courseStarts === "referencePoint" ? "breakFromReferenceMm" : "breakFromOrificeMm";
  if (place === undefined) return {};
  return {
    fragmentLength: fragmentStanding(place),
    twist: twistAtBreak(instrument, shape, place.value),
    ...(tipDepthMm === undefined ? {} : { [name]: tipDepthMm - place.value }),
  };
}

function explanationsOf(
  breakCase: BreakCase,
  weighing: Weighing,
  { middle, input: { tipDepthMm, courseStarts } }: { middle: Look; input: FractureInput },
): FractureOutput["explanations"] {
  const inCanal = courseStarts === "referencePoint" ? "fromReferenceMm" : "fromOrificeMm";
  const { used, ranges } = breakCase;
  const seen = likelihoodsOf(breakCase, middle);
  return explanationNames.map((name) => {
    const predicted = predictedOf(name, used, weighing);
    const { perMm } = densityWith(weighing.parts, name, middle.values);
    return {
      name,
      predictedFromTipMm: predicted,
      places: [...perMm].map((density, index) => ({ fromTipMm: middleMm(index), density })),
      ...(predicted === null || tipDepthMm === undefined ? {} : { [inCanal]: tipDepthMm - predicted.mean }),
      likelihood: seen[name],
      prior: { mean: middle.prior[name], ...countsOf(name, ranges) },
      posterior: { mean: weighing.posterior[name], interval: weighing.intervals[name] },
    };
  });
}

/** Where an explanation expects the break; a flaw may lie anywhere. */
function predictedOf(name: ExplanationName, { endMm }: BreakCase["used"], { fatigue }: Weighing) {
  if (name === "torsionalOverload") return momentsOf(torsionPlaces(endMm));
  return name === "flawOrJoint" || fatigue === undefined ? null : momentsOf(fatigue);
}

/** The likelihood of all that was seen, the largest being 1. */
function likelihoodsOf({ facts }: BreakCase, { chances, values }: Look) {
  const all = [likelihoodOfPlace(chances, values), ...facts.map(({ likelihood }) => likelihood(values))];
  return relative(ofEach((name) => all.reduce((product, one) => product * one[name], 1)));
}

/** Where a prior comes from: counts of the series together, or the assumption. */
function countsOf(name: ExplanationName, ranges: BreakCase["ranges"]) {
  const { low, high, source } = ranges("flawPrior");
  if (name === "flawOrJoint")
    return { source: `${source}: ${written(low)} to ${written(high)} of all breaks; no series counted them` };
  const of = splitSeries.map((one) => ({ ...one, events: name === "torsionalOverload" ? one.n : one.N - one.n }));
  const each = of.map(
    (one) => `${one.source} ${one.events}/${one.N}${one.verification === "memory" ? " (memory)" : ""}`,
  );
  return {
    n: of.reduce((sum, { events }) => sum + events, 0),
    N: of.reduce((sum, one) => sum + one.N, 0),
    source: `${each.join(", ")}: each series weighed alike, not by its size, as they conflict; less the share of flaws`,
  };
}

function placeFact({ place }: BreakCase, { chances, values }: Look): FractureOutput["facts"] {
  if (place === undefined) return [];
  return [
    {
      name: "place",
      says: `It broke ${place.value.toFixed(1)} mm from its tip.`,
      factor: relative(likelihoodOfPlace(chances, values)),
      source: "marsicovetere-1996, wu-2011 for torsion; wear as in lifeUsed for fatigue; common practice for a flaw",
    },
  ];
}

const priorsOf = (facts: BreakCase["facts"], middle: Look): FractureOutput["priors"] =>
  splitSeries.map((one) => ({
    ...one,
    posterior: posteriorOf(facts, {
      ...middle,
      prior: priorOf(middle.values("flawPrior"), torsionalShare(one)),
    }),
  }));
