import { peakStrain, type Seated, strainAt } from "./bending-strain.ts";

/** One use as wear sees it: where the instrument was seated, and how many turns it was bent through there. */
export interface WearingUse {
  readonly seated: Seated;
  /** Swept turns at that depth. */
  readonly turns: number;
}

/** The wear of an instrument at one place: equivalent reference turns of each use, for each exponent. */
export interface WornSection {
  readonly fromTipMm: number;
  /** Of every exponent, all uses together. */
  readonly turns: readonly number[];
}

/** How far apart sections lie at most, mm. */
const stepMm = 0.1;
/** How many exponents a range is looked at with: a sum of powers may turn inside of it. */
const looks = 17;

/**
 * The exponents 1 / |c| of a range of strain-life slopes, from the strong slope to the weak one.
 * Takes two slopes below 0; the strong one has the larger amount.
 */
export function exponentsOf({ strong, weak }: { strong: number; weak: number }): number[] {
  const [from, to] = [1 / Math.abs(strong), 1 / Math.abs(weak)];
  return Array.from({ length: looks }, (_, index) => from + ((to - from) * index) / (looks - 1));
}

/** Equivalent reference turns of one use at a section: each turn costs (e / e0) ^ exponent. */
export function costOf({ seated, turns }: WearingUse, fromTipMm: number, by: { strain: number; exponent: number }) {
  const strain = fromTipMm > seated.tipDepthMm ? 0 : strainAt(seated, fromTipMm);
  return strain === 0 ? 0 : turns * (strain / by.strain) ** by.exponent;
}

/**
 * Equivalent reference turns along an instrument, of all its uses together.
 * Takes the uses, the reference strain as a fraction and the exponents; the uses' wear adds, section by section.
 * @source M. A. Miner, "Cumulative damage in fatigue", J Appl Mech 1945;12:A159-A164 (memory); G. S. P. Cheung,
 * B. W. Darvell, Int Endod J 2007;40:626-632 for the slope (seen, its strong end from memory); docs/methods/life-used C3
 */
export function wearAlong(uses: readonly WearingUse[], strain: number, exponents: readonly number[]): WornSection[] {
  return sectionsOf(uses).map((fromTipMm) => ({
    fromTipMm,
    turns: exponents.map((exponent) =>
      uses.reduce((sum, use) => sum + costOf(use, fromTipMm, { strain, exponent }), 0),
    ),
  }));
}

/** The place of the most wear for one of the exponents, or undefined where nothing is worn. */
export function worstFor(sections: readonly WornSection[], look: number): WornSection | undefined {
  return sections.reduce<WornSection | undefined>(
    (best, section) => ((section.turns[look] ?? 0) > (best?.turns[look] ?? 0) ? section : best),
    undefined,
  );
}

/** Even steps, and the place where each use bends most, which even steps may miss. */
function sectionsOf(uses: readonly WearingUse[]): number[] {
  const deepest = Math.max(...uses.map(({ seated }) => seated.tipDepthMm));
  const even = Array.from({ length: Math.floor(deepest / stepMm) + 1 }, (_, index) => index * stepMm);
  const peaks = uses.map(({ seated }) => peakStrain(seated).fromTipMm);
  return [...new Set([...even, ...peaks])].sort((a, b) => a - b);
}
