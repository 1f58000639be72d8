import { reach95 } from "../radiograph/interval-around.ts";
import type { SeededRandom } from "../statistics/seeded-random.ts";
import { thickerBy } from "./bending-strain.ts";
import type { CanalBending } from "./canal-bending.ts";
import type { Values } from "./fracture-assumed.ts";
import type { InstrumentShape } from "./instrument-shape.ts";
import { looselyHeld } from "./loosely-held.ts";
import { densityOf, mixed, type PlaceDensity, raised } from "./place-density.ts";
import { costOf, type WearingUse } from "./wear-along.ts";

/** Uses of one depth in one canal, as wear along the instrument sees them. */
export interface BendingUse {
  readonly bending: Pick<CanalBending, "knots" | "lengthMm">;
  /** Courses that the points allow as well; empty for an arc. */
  readonly allowed: readonly Pick<CanalBending, "knots" | "lengthMm">[];
  readonly tipDepthMm: number;
  /** Swept turns at that depth. */
  readonly turns: number;
}

/** An instrument with its uses, along which a place is looked for. */
export interface UsedInstrument {
  readonly shape: InstrumentShape;
  readonly uses: readonly BendingUse[];
  /** End of the instrument from its tip, mm. */
  readonly endMm: number;
}

/** Strain is told as a share of this one, so that powers stay of an ordinary size. */
const referenceStrain = 0.02;

/**
 * Where bending fatigue breaks an instrument: wear to the power of the shape of life's scatter, section by section.
 * Takes the used instrument, the assumptions at their values, and a stream for what is drawn within: courses that the
 * points allow, depths, the diameter. Without a stream everything is as measured. Undefined where nothing bends it.
 * @source M. A. Miner, J Appl Mech 1945;12:A159-A164 (memory), wear as in `lifeUsed`; W. Weibull, 1939 (memory), the
 * weakest section breaks; docs/methods/fracture.md C3, C4
 */
export function fatiguePlaces(used: UsedInstrument, values: Values, random?: SeededRandom): PlaceDensity | undefined {
  const { toleranceMm } = used.shape;
  const byMm = random === undefined ? 0 : (toleranceMm / reach95) * random.normal();
  const shape = thickerBy(used.shape, byMm);
  const wearing = used.uses.map((use) => seatedOnce(use, { shape, values, random }));
  const exponent = 1 / Math.abs(values("slope"));
  const wear = (fromTipMm: number): number =>
    wearing.reduce((sum, use) => sum + costOf(use, fromTipMm, { strain: referenceStrain, exponent }), 0);
  const worn = densityOf(used.endMm, wear);
  return worn === undefined ? undefined : raised(worn, weibullShape(values("lifeScatter")));
}

/** How many looks one set of values is mixed from. */
const looksAtOnce = 8;

/** The same as seen with courses, depths and diameters drawn anew, mixed; undefined where most of the looks see no bend. */
export function spreadOfFatigue(used: UsedInstrument, values: Values, random: SeededRandom): PlaceDensity | undefined {
  const looks = Array.from({ length: looksAtOnce }, () => fatiguePlaces(used, values, random));
  const bent = looks.flatMap((one) => (one === undefined ? [] : [one]));
  if (bent.length <= looksAtOnce / 2) return undefined;
  return mixed(bent.map((of) => ({ of, share: 1 / bent.length })));
}

interface Look {
  readonly shape: InstrumentShape;
  readonly values: Values;
  readonly random: SeededRandom | undefined;
}

function seatedOnce(use: BendingUse, { shape, values, random }: Look): WearingUse {
  const chosen = random === undefined ? undefined : use.allowed[Math.floor(random.uniform() * use.allowed.length)];
  const bending = looselyHeld(chosen ?? use.bending, values("clearanceMm"));
  const off = random === undefined ? 0 : values("depthSigmaMm") * random.normal();
  const tipDepthMm = Math.min(bending.lengthMm, Math.max(0.1, use.tipDepthMm + off));
  return { seated: { shape, bending, tipDepthMm, convention: "neutral" }, turns: use.turns };
}

/**
 * The shape of a Weibull distribution by its standard deviation as a share of its mean, near 3.7 for 0.3.
 * @source the usual approximation cv^-1.086 (memory), within 2 % from 0.05 to 1
 */
export const weibullShape = (variation: number): number => variation ** -1.086;
