import { inAirMg } from "./air-state.ts";
import { heldToLimits, type ZoneLooks } from "./held-to-limits.ts";
import { liquidMg } from "./liquid.ts";
import { type GasUnits, gasUnits, molarVolume } from "./molar-volume.ts";
import { limitsOf } from "./published-limits.ts";
import { type RatesAsked, ratesAsked } from "./rates-asked.ts";
import { middleOf, type RoomLook, roomLook, zonesOf } from "./room-look.ts";
import { roomAir } from "./room-modes.ts";
import type { SolventFacts } from "./solvent-facts.ts";
import type { SolventInput } from "./solvent-input.ts";
import type { SolventOutput } from "./solvent-output.ts";
import { wholeArea } from "./vapour-course.ts";
import { volumeAtFirstLimit } from "./volume-at-first-limit.ts";
import { seriesTimes } from "./zone-series.ts";
import { zoneTold, zoneWithDay } from "./zone-told.ts";

type RoomPart = Pick<
  SolventOutput,
  | "far"
  | "near"
  | "limits"
  | "volumeAtFirstLimitMl"
  | "firstLimit"
  | "massBalance"
  | "evaporation"
  | "saturationMgM3"
  | "notComputed"
>;

/**
 * What the doses make of the room's air, over the rates of evaporation.
 * @source docs/methods/solvent.md C1 to C10
 */
export function roomAnswer(
  input: SolventInput,
  facts: SolventFacts,
): RoomPart & { rates: RatesAsked; saturated: boolean } {
  const { temperatureC = 25, pressureKPa = 101.325, room, nearField } = input;
  const units = gasUnits(facts.molarMassGMol, molarVolume(temperatureC, pressureKPa));
  const saturationMgM3 = units.mgM3Of((facts.vapourPressurePa / (pressureKPa * 1000)) * 1_000_000);
  const rates = ratesAsked(input.evaporation);
  const air = roomAir(room, nearField);
  const doses = evaporatingDoses(input, facts);
  const laws = rates.looks.map((evaporation) => ({ air, evaporation, saturationMgM3 }));
  const looks = laws.map((law) => roomLook(law, doses));
  const otherMgM3 = units.mgM3Of(otherPpm(input));
  const limits = limitsOf(input, units);
  const zones: ZoneLooks[] = zonesOf({ air }).map((zone) => zoneWithDay(zone, looks, otherMgM3));
  const dispensedMl = input.doses.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
  return {
    ...zonesTold(input, { looks, zones, units, rates, otherMgM3 }),
    limits: heldToLimits(limits, zones, units),
    ...volumeAtFirstLimit({ laws, looks, doses, dispensedMl, limits, otherMgM3, units }),
    massBalance: massBalance(input, facts, middleOf(looks), air),
    evaporation: evaporationTold(rates),
    ...{ saturationMgM3, rates, saturated: looks.some(({ course }) => course.saturated) },
  };
}

/** The doses by time, without what suction takes. */
const evaporatingDoses = ({ doses }: SolventInput, { densityGMl }: SolventFacts) =>
  doses
    .map(({ atMin, volumeMl, recoveredFraction = 0 }) => ({
      atMin,
      mg: volumeMl * densityGMl * 1000 * (1 - recoveredFraction),
    }))
    .sort((a, b) => a.atMin - b.atMin);

/** What the day's other cases add to the mean over 480 min: concentration times time, over 480 min. */
const otherPpm = ({ otherCases = [] }: SolventInput): number =>
  otherCases.reduce((sum, { ppm, minutes }) => sum + ppm * minutes, 0) / 480;

interface Told {
  readonly looks: readonly RoomLook[];
  readonly zones: readonly ZoneLooks[];
  readonly units: GasUnits;
  readonly rates: RatesAsked;
  readonly otherMgM3: number;
}

function zonesTold(
  { doses }: SolventInput,
  { looks, zones, units, rates, otherMgM3 }: Told,
): Pick<RoomPart, "far" | "near"> {
  const atOnce = rates.kind === "instant";
  const times = seriesTimes(middleOf(looks), atOnce ? doses.map(({ atMin }) => atMin) : []);
  const told = zones.map((zone) => zoneTold(zone, { looks, times, units, atOnce, otherMgM3 }));
  const [far, near] = told;
  if (far === undefined) throw new Error("a room has a far zone");
  return { far, ...(near === undefined ? {} : { near }) };
}

function massBalance(
  { doses }: SolventInput,
  { densityGMl }: SolventFacts,
  { course }: RoomLook,
  air: ReturnType<typeof roomAir>,
): SolventOutput["massBalance"] {
  const mgOf = (of: (dose: SolventInput["doses"][number]) => number) =>
    doses.reduce((sum, dose) => sum + of(dose), 0) * densityGMl * 1000;
  return {
    dispensedMg: mgOf(({ volumeMl }) => volumeMl),
    ventilatedMg: air.outflowM3Min * wholeArea(course, "far"),
    inAirMg: inAirMg(air, course.end),
    recoveredMg: mgOf(({ volumeMl, recoveredFraction = 0 }) => volumeMl * recoveredFraction),
    notEvaporatedMg: liquidMg(course.end.liquid),
    atMin: course.end.atMin,
  };
}

const evaporationTold = ({ kind, origin, ratePerMin, within }: RatesAsked): SolventOutput["evaporation"] => ({
  ...{ kind, origin },
  ...(ratePerMin === undefined ? {} : { ratePerMin }),
  ...(within === undefined ? {} : { within }),
});
