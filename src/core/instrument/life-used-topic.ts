import { type Fault, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { peakStrain } from "./bending-strain.ts";
import { type CanalBending, canalBending } from "./canal-bending.ts";
import { type InstrumentShape, instrumentShape } from "./instrument-shape.ts";
import { lifeBasis, lifeCautions, lifeSources, publishedSlope } from "./life-basis.ts";
import { type LifeInput, type LifeOutput, lifeInput, lifeOutput, type Use } from "./life-input.ts";
import { inReferenceCanal } from "./reference-canal.ts";
import { seatedInstrument } from "./seated-instrument.ts";
import { movementFaults, type Turns, turnsOfUse } from "./turns-of-use.ts";
import { costOf, exponentsOf, type WearingUse, type WornSection, wearAlong, worstFor } from "./wear-along.ts";

/**
 * How much of an instrument's life its uses have taken, relative to a minute in a reference canal; never as a count that
 * it will last.
 * @throws Refusal `input.impossible` for an instrument that can't be, a use without its movement or deeper than canal or
 * instrument, slopes in the wrong order; `trace.tooFewPoints` under 4 points of a course.
 * @source Cheung and Darvell 2007 (seen), Miner 1945 (memory); docs/methods/life-used.md
 */
export const lifeUsedTopic = defineTopic({
  name: "lifeUsed",
  version: 1,
  summary: "How much of an instrument's life its uses have taken, relative to a reference canal.",
  input: lifeInput,
  output: lifeOutput,
  sources: lifeSources,
  compute: lifeUsed,
});

/** What the uses of an instrument come to, look by look. */
interface Life {
  readonly uses: readonly { readonly wearing: WearingUse; readonly turns: Turns }[];
  readonly exponents: readonly number[];
  readonly strain: number;
  readonly sections: readonly WornSection[];
  readonly worst: readonly (WornSection | undefined)[];
}

function lifeUsed(input: LifeInput): LifeOutput {
  const shape = instrumentShape(input.instrument, "instrument");
  const life = lifeOf(input, shape);
  const { uses, sections, worst, strain } = life;
  const turns = {
    net: sum(uses.map((use) => use.turns.net)),
    swept: sum(uses.map((use) => use.turns.swept)),
  };
  const equivalentTurns = bandOf(life.exponents.map((_, look) => worst[look]?.turns[look] ?? 0));
  const over = overLimits(input, turns, equivalentTurns.high);
  return {
    turns,
    equivalentTurns,
    referenceStrain: strain,
    ...worstSection(worst),
    ratioToReference: ratioToReference(input, shape, life),
    uses: uses.map(({ wearing, turns: own }) => ({
      turns: own,
      peakStrain: peakStrain(wearing.seated).strain,
      share: shareOf(wearing, life),
    })),
    profile: sections.map((section) => ({ fromTipMm: section.fromTipMm, ...bandOf(section.turns) })),
    over,
    discard: over.length > 0,
    basis: lifeBasis(input),
    cautions: lifeCautions(input),
    notComputed: worst[0] === undefined ? [{ name: "worstSection", why: "no use bent the instrument" }] : [],
  };
}

function lifeOf(input: LifeInput, shape: InstrumentShape): Life {
  const { slope = publishedSlope } = input;
  const order: Fault[] =
    slope.strong > slope.weak
      ? [{ path: "slope.strong", says: `${slope.strong} is weaker than the weak one, ${slope.weak}` }]
      : [];
  const faults = [...movementFaults(input.uses), ...order];
  if (faults.length > 0)
    throw new Refusal("input.impossible", "Cannot compute the life used: its uses can't be as described", {}, faults);
  const uses = wearingUses(input.uses, shape);
  const strain = input.referenceStrain ?? peakStrain(inReferenceCanal(shape)).strain;
  const exponents = exponentsOf(slope);
  const wearing = uses.map((use) => use.wearing);
  const sections = wearAlong(wearing, strain, exponents);
  return { uses, exponents, strain, sections, worst: exponents.map((_, look) => worstFor(sections, look)) };
}

/** The uses, each seated in its canal; canals that are written alike are fitted once. */
function wearingUses(uses: readonly Use[], shape: InstrumentShape) {
  const known = new Map<string, CanalBending>();
  return uses.map((use, index) => {
    const written = JSON.stringify(use.course);
    const bending = known.get(written) ?? canalBending(use.course, `uses[${index}].course`);
    known.set(written, bending);
    const { tipDepthMm } = use;
    const seated = seatedInstrument({ shape, bending, tipDepthMm, convention: "neutral" }, `uses[${index}].tipDepthMm`);
    const turns = turnsOfUse(use);
    return { turns, wearing: { seated, turns: turns.swept * (use.engagedFraction ?? 1) } };
  });
}

function worstSection(worst: Life["worst"]) {
  const places = worst.flatMap((section) => (section === undefined ? [] : [section.fromTipMm]));
  const middle = places[(places.length - 1) / 2];
  return middle === undefined ? {} : { worstSection: { fromTipMm: middle, within: bandOf(places) } };
}

/** The wear of the worst section in that of one minute in the reference canal, at the mean rate of the uses. */
function ratioToReference({ uses }: LifeInput, shape: InstrumentShape, life: Life) {
  const minutes = sum(uses.map(({ seconds }) => seconds)) / 60;
  const rate = sum(life.uses.map(({ turns }) => turns.swept)) / minutes;
  const reference = peakStrain(inReferenceCanal(shape)).strain;
  return bandOf(
    life.exponents.map((exponent, look) => {
      const minute = rate * (reference / life.strain) ** exponent;
      return (life.worst[look]?.turns[look] ?? 0) / minute;
    }),
  );
}

function shareOf(use: WearingUse, { worst, exponents, strain }: Life) {
  const shares = worst.map((section, look) => {
    const exponent = exponents[look] ?? 1;
    const all = section?.turns[look] ?? 0;
    return section === undefined || all === 0 ? 0 : costOf(use, section.fromTipMm, { strain, exponent }) / all;
  });
  return bandOf(shares);
}

function overLimits({ limits = {}, uses }: LifeInput, { net }: Turns, equivalentTurns: number): LifeOutput["over"] {
  const found = { uses: uses.length, turns: net, equivalentTurns };
  return (["uses", "turns", "equivalentTurns"] as const).flatMap((name) => {
    const limit = limits[name];
    return limit !== undefined && found[name] > limit ? [{ name, limit, found: found[name] }] : [];
  });
}

const bandOf = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) });

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
