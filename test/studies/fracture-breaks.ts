import type { BreakSign } from "../../src/core/instrument/break-signs.ts";
import type { ExplanationName, FractureInput } from "../../src/core/instrument/fracture-input.ts";
import { type SeededRandom, seededRandom } from "../../src/core/statistics/seeded-random.ts";

/** How the breaks of a design are made; none of it is the model's own. */
export interface BreakMaking {
  /** Range of the exponent that wear rises with, of the strain. */
  readonly exponent: readonly [number, number];
  /** Range of how much wider the canal is, mm. */
  readonly clearanceMm: readonly [number, number];
  /** How far the told course is off: share of the radius, degrees of the turn, mm of its beginning. */
  readonly courseError: { readonly radius: number; readonly turnDeg: number; readonly startMm: number };
  /** Share of breaks of two mechanisms. */
  readonly mixed: number;
  /** Whether signs and handling are told as well as the place. */
  readonly signs: boolean;
  /** Whether the course is told as traced points. */
  readonly traced: boolean;
}

/** A break of a known cause, as a person would tell it. */
export interface MadeBreak {
  readonly truth: ExplanationName;
  readonly input: FractureInput;
}

/** A canal of a straight part, one arc, and what is straight after it. */
interface Arc {
  readonly radiusMm: number;
  readonly turnDeg: number;
  readonly startMm: number;
  readonly lengthMm: number;
}

const between = (random: SeededRandom, [low, high]: readonly [number, number]): number =>
  low + (high - low) * random.uniform();

const oneOf = <Of>(random: SeededRandom, list: readonly [Of, ...Of[]]): Of =>
  list[Math.floor(random.uniform() * list.length)] ?? list[0];

const happens = (random: SeededRandom, chance: number): boolean => random.uniform() < chance;

function someCanal(random: SeededRandom): Arc {
  const radiusMm = between(random, [3, 12]);
  const turnDeg = between(random, [15, Math.min(60, (8 / radiusMm) * (180 / Math.PI))]);
  const arcMm = (radiusMm * turnDeg * Math.PI) / 180;
  const startMm = between(random, [4, 9]);
  return { radiusMm, turnDeg, startMm, lengthMm: startMm + arcMm + between(random, [0.2, 3]) };
}

/** The told canal: the true one as a person reads it. */
function toldCanal(canal: Arc, { courseError, traced }: BreakMaking, random: SeededRandom): FractureInput["course"] {
  const radiusMm = canal.radiusMm * Math.exp(courseError.radius * random.normal());
  const turnDeg = Math.max(5, canal.turnDeg + courseError.turnDeg * random.normal());
  const startMm = Math.max(1, canal.startMm + courseError.startMm * random.normal());
  const arcMm = (radiusMm * turnDeg * Math.PI) / 180;
  if (!traced) return { radiusMm, turnDeg, startMm, lengthMm: Math.max(canal.lengthMm, startMm + arcMm + 0.01) };
  const points: [number, number][] = [];
  let [x, y, heading] = [0, 0, 0];
  const step = 0.01;
  const steps = Math.round(canal.lengthMm / step);
  for (let index = 0; index <= steps; index++) {
    const s = index * step;
    if (index % 50 === 0 || index === steps) points.push([x + 0.07 * random.normal(), y + 0.07 * random.normal()]);
    const end = canal.startMm + (canal.radiusMm * canal.turnDeg * Math.PI) / 180;
    if (s >= canal.startMm && s < end) heading += step / canal.radiusMm;
    x += step * Math.sin(heading);
    y += step * Math.cos(heading);
  }
  return { points };
}

interface Turning {
  readonly canal: Arc;
  readonly tipDepthMm: number;
  readonly turns: number;
}

const fineMm = 0.05;

/** Where wear and local weakness together are most: each stretch of half a millimetre is as strong as it happens to be. */
function fatiguePlace(
  turning: readonly Turning[],
  diameterAt: (mm: number) => number,
  making: BreakMaking,
  random: SeededRandom,
): number {
  const exponent = between(random, making.exponent);
  const clearance = between(random, making.clearanceMm);
  const weakness = Array.from({ length: 80 }, () => Math.exp(0.3 * random.normal()));
  let [best, most] = [between(random, [1, 8]), 0];
  for (let index = 1; index < 400; index++) {
    const x = index * fineMm;
    const wear = turning.reduce((sum, { canal, tipDepthMm, turns }) => {
      const s = tipDepthMm - x;
      const end = canal.startMm + (canal.radiusMm * canal.turnDeg * Math.PI) / 180;
      // A loose instrument cuts the corner: its curvature rises and falls over a length of its own.
      const soft = 0.1 + Math.sqrt(clearance * canal.radiusMm);
      const rise = 1 / (1 + Math.exp((-4 * (s - canal.startMm)) / soft));
      const fall = 1 / (1 + Math.exp((4 * (s - end)) / soft));
      const strain = (diameterAt(x) * rise * fall) / (2 * canal.radiusMm);
      return s > 0 ? sum + turns * strain ** exponent : sum;
    }, 0);
    const weak = weakness[Math.floor(x / 0.5)] ?? 1;
    if (wear * weak > most) [best, most] = [x, wear * weak];
  }
  return best;
}

/** Just above the part that binds, mostly 1 to 3 mm of the tip, at times anywhere up to 10 mm. */
function torsionPlace(random: SeededRandom): number {
  if (happens(random, 0.1)) return between(random, [2, 10]);
  const bound = 2 * Math.exp(0.32 * random.normal());
  return bound - 0.35 * Math.log(1 - random.uniform());
}

function flawPlace(random: SeededRandom, lengthMm: number): number {
  return happens(random, 0.5) ? between(random, [0.6 * lengthMm, lengthMm - 1]) : between(random, [1, 0.6 * lengthMm]);
}

/** What is told of the break besides its place; the shares are not those that the model assumes. */
function toldSigns(truth: ExplanationName, random: SeededRandom) {
  const torsion = truth === "torsionalOverload";
  const fatigue = truth === "bendingFatigue";
  const signs: BreakSign[] = [];
  if (happens(random, 0.7)) {
    const deformed = happens(random, torsion ? 0.45 : 0.08);
    signs.push(deformed ? oneOf(random, ["flutesUnwound", "flutesWoundTighter"]) : "noneVisible");
  }
  if (happens(random, 0.15)) {
    if (happens(random, fatigue ? 0.7 : 0.06)) signs.push("striations");
    if (happens(random, fatigue ? 0.4 : 0.15)) signs.push("severalOrigins");
    if (happens(random, torsion ? 0.9 : 0.6)) signs.push("dimples");
    if (happens(random, torsion ? 0.6 : 0.05)) signs.push("circularAbrasion");
    if (happens(random, truth === "flawOrJoint" ? 0.5 : 0.06)) signs.push("inclusionOrPore");
  }
  return {
    signs,
    ...(happens(random, 0.5) ? { tipBound: happens(random, torsion ? 0.8 : 0.35) } : {}),
    ...(happens(random, 0.4) ? { stoppedAtTorqueLimit: happens(random, torsion ? 0.6 : 0.3) } : {}),
  };
}

function causeOf(random: SeededRandom): ExplanationName {
  if (happens(random, 0.06)) return "flawOrJoint";
  const torsional = oneOf(random, [44 / 79, 36 / 58, 107 / 358]);
  return happens(random, torsional) ? "torsionalOverload" : "bendingFatigue";
}

function measuredPiece(
  place: number,
  taper: number,
  diameterMm: number,
  random: SeededRandom,
): FractureInput["fragment"] {
  const positive = (value: number): number => Math.max(0.1, value);
  const way = random.uniform();
  if (way < 0.6) return { lengthMm: { value: positive(place + 0.2 * random.normal()), sigma: 0.2 } };
  if (way < 0.8 && taper >= 0.04 && place < 12)
    return { brokenEndDiameterMm: { value: diameterMm + 0.015 * random.normal(), sigma: 0.015 } };
  return { remainingLengthMm: { value: positive(25 - place + 0.3 * random.normal()), sigma: 0.3 } };
}

/** A break of a known cause from a seed. */
export function madeBreak(making: BreakMaking, seed: number): MadeBreak {
  const random = seededRandom(seed);
  const size = oneOf(random, [20, 25, 30, 35]);
  const taper = oneOf(random, [0.02, 0.04, 0.06, 0.08]);
  const off = 0.01 * random.normal();
  const diameterAt = (mm: number): number => size / 100 + off + taper * Math.min(mm, 16);
  const turning = Array.from({ length: 1 + Math.floor(3 * random.uniform()) }, (): Turning & { seconds: number } => {
    const canal = someCanal(random);
    const seconds = between(random, [15, 60]);
    const tipDepthMm = canal.lengthMm - between(random, [0, 1]);
    return { canal, tipDepthMm, seconds, turns: 5 * seconds * between(random, [0.3, 1]) };
  });
  const truth = causeOf(random);
  const [fatigue, torsion] = [fatiguePlace(turning, diameterAt, making, random), torsionPlace(random)];
  const share = happens(random, making.mixed) ? between(random, [0.5, 1]) : 1;
  const places: Record<ExplanationName, number> = {
    bendingFatigue: share * fatigue + (1 - share) * torsion,
    torsionalOverload: share * torsion + (1 - share) * fatigue,
    flawOrJoint: flawPlace(random, 25),
  };
  const place = Math.min(24.5, Math.max(0.5, places[truth]));
  const told = turning.map(({ canal, tipDepthMm, seconds }) => {
    const course = toldCanal(canal, making, random);
    const depth = Math.min(tipDepthMm + 0.4 * random.normal(), canal.lengthMm - 0.4);
    return { rpm: 300, seconds, tipDepthMm: depth, course };
  });
  const last = told.at(-1);
  return {
    truth,
    input: {
      instrument: { size, taper, lengthMm: 25, maxDiameterMm: 1.6 },
      uses: told.flatMap(({ course, ...use }) => (course === undefined ? [] : [{ ...use, course }])),
      ...(last?.course === undefined ? {} : { course: last.course, tipDepthMm: last.tipDepthMm }),
      fragment: measuredPiece(place, taper, diameterAt(place), random),
      ...(making.signs ? toldSigns(truth, random) : { signs: [] }),
    },
  };
}
