import allard from "../../../../data/allard-andersson-1992/source.json" with { type: "json" };
import amoore from "../../../../data/amoore-hautala-1983/source.json" with { type: "json" };
import baldwin from "../../../../data/baldwin-maynard-1998/source.json" with { type: "json" };
import operatory from "../../../../data/operatory-air-1992/source.json" with { type: "json" };
import ren from "../../../../data/ren-2021/source.json" with { type: "json" };
import { standingCaution } from "../standing-caution.ts";
import type { RatesAsked } from "./rates-asked.ts";
import type { SolventInput } from "./solvent-input.ts";
import type { LimitRow, SolventOutput } from "./solvent-output.ts";

/** What cautions are drawn from. */
export interface ToldOfSolvent {
  readonly rates: RatesAsked;
  readonly saturated: boolean;
  readonly limits: readonly LimitRow[];
  readonly carcinogen: SolventOutput["carcinogen"];
}

/** What a reader must know beside the vapour; the standing caution comes last. */
export function solventCautions(input: SolventInput, told: ToldOfSolvent): string[] {
  return [
    ...limitCautions(input, told),
    ...told.carcinogen.map(({ says }) => says),
    ...roomCautions(input, told),
    ...doseCautions(input),
    ...solventCautionsOf(input),
    ...(input.extrusion === undefined
      ? []
      : ["With an open apex, resorption or a perforation nobody has measured how much passes."]),
    standingCaution,
  ];
}

function limitCautions({ solvent, otherCases = [] }: SolventInput, { limits, rates }: ToldOfSolvent): string[] {
  const name = typeof solvent === "string" ? solvent : solvent.own;
  const above = limits.filter(({ passed }) => passed);
  const atRates = above.every(({ stands }) => stands === "above") ? "at every rate" : "at some rates";
  const [first] = above.toSorted((a, b) => b.ratio - a.ratio);
  return [
    ...(limits.length === 0
      ? [`No limit is set for ${name} in any list that was read; that says nothing about its harm.`]
      : []),
    ...(first === undefined
      ? []
      : [
          `Above ${numberOfLimits(above)} of ${numberOfLimits(limits)} limits${rates.within === undefined ? "" : ` ${atRates} of the range`}; most above that of ${first.authority}, ${first.ppm} ppm, by a factor of ${(first.ratioWithin?.high ?? first.ratio).toPrecision(3)}.`,
        ]),
    ...(limits.some(({ mark }) => mark === "memory")
      ? ["Limits marked memory were recalled and not read: look them up."]
      : []),
    ...(otherCases.length === 0 && limits.length > 0
      ? ["Other cases of the day are not told: the mean over 8 hours holds this one alone."]
      : []),
  ];
}

/** Limits, each counted once though it stands in both zones. */
const numberOfLimits = (rows: readonly LimitRow[]): number =>
  new Set(rows.map(({ authority, ppm, averagingMin, source }) => [authority, ppm, averagingMin, source].join("\n")))
    .size;

function roomCautions({ room, nearField }: SolventInput, { rates, saturated }: ToldOfSolvent): string[] {
  const [fewest, most] = ren.airChangesPerHour;
  return [
    ...(room.airChangesPerHour === 0 ? ["The room is closed: what has evaporated stays in its air."] : []),
    ...(room.airChangesPerHour > (most ?? 0)
      ? [
          `In ${ren.rooms} dental rooms ${fewest} to ${most} air changes an hour were measured; ${room.airChangesPerHour} is more.`,
        ]
      : []),
    ...(nearField === undefined
      ? ["Without a near field the air beside the mouth is not told: it holds more than the room's mean."]
      : []),
    ...(nearField !== undefined && rates.kind === "instant"
      ? ["A dose that enters the air beside the mouth at once is an upper bound of the peak there."]
      : []),
    ...(nearField !== undefined && nearField.airSpeedMPerMin < 0.6
      ? [`An air speed of ${nearField.airSpeedMPerMin} m/min is below 0.01 m/s; was it meant in m/s?`]
      : []),
    ...(nearField !== undefined && nearField.airSpeedMPerMin > baldwin.meanMPerS * 60
      ? [
          `In ${baldwin.workAreas} indoor work areas the air moved by ${baldwin.meanMPerS} m/s on average and by less in ${baldwin.shareBelowMean * 100} of 100 readings; a faster one thins the air beside the mouth.`,
        ]
      : []),
    ...(saturated
      ? ["The air was saturated for a while: the amounts are beyond what a treatment uses, look at them again."]
      : []),
  ];
}

function doseCautions({ doses }: SolventInput): string[] {
  const total = doses.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
  return [
    ...(total > 10 ? [`${Number(total.toPrecision(4))} ml in all are much for a tooth; were microlitres meant?`] : []),
    ...(doses.some(({ recoveredFraction = 0 }) => recoveredFraction > 0)
      ? ["How much suction recovers is as told; nothing published was read for it."]
      : []),
  ];
}

function solventCautionsOf({ solvent }: SolventInput): string[] {
  if (typeof solvent === "object" || solvent === "limonene" || solvent === "eucalyptol") return [];
  const odour = `Smell is no measure: the threshold is about ${amoore.thresholdPpm[solvent]} ppm (value from memory).`;
  if (solvent !== "chloroform") return [odour];
  const { cups, plasticTube } = allard.mgM3;
  const highest = Math.max(...cups.flat());
  const lowest = Math.min(...plasticTube);
  return [
    odour,
    `Measured: in one surgery the air breathed held < ${operatory.breathingZoneBelowPpm} ppm over ${operatory.overMin} min, that is < ${operatory.dayBelowPpm} ppm over 8 hours; in another up to ${highest} mg/m3 from open cups and from ${lowest} mg/m3 on from a closed tube: handling decides.`,
  ];
}
