import { ratioFigure, timesText } from "../core/times-text.ts";
import type { ClinicRules } from "../record/clinic-rules.ts";
import type { SolventTold } from "./solvent-told.ts";

type Limit = SolventTold["limits"][number];
type Zone = Limit["zone"];

/** What a person breathes during a visit, and the limit that it comes closest to. */
export interface Breathed {
  readonly who: "dentist" | "assistant" | "patient";
  readonly zone: Zone;
  /** As `the air near the mouth`. */
  readonly where: string;
  readonly peak: SolventTold["far"]["peak"];
  readonly means: readonly { readonly averagingMin: 15 | 60 | 480; readonly mean: SolventTold["far"]["mean15"] }[];
  readonly nearest: Limit | undefined;
}

/** The answers for the staff, and for the patient where those differ, and where the assistant stands. */
export interface BreathedBy {
  readonly staff: SolventTold;
  readonly patient?: SolventTold | undefined;
  readonly assistantIn?: NonNullable<ClinicRules["room"]>["assistantIn"];
}

/** Who breathes what: dentist and patient the air near the mouth, the assistant that or the rest of the room. */
export function breathed({ staff, patient, assistantIn = "near" }: BreathedBy): readonly Breathed[] {
  return [
    breathedBy("dentist", staff, "near"),
    breathedBy("assistant", staff, assistantIn),
    breathedBy("patient", patient ?? staff, "near"),
  ];
}

function breathedBy(who: Breathed["who"], told: SolventTold, wished: Zone): Breathed {
  const zone = told.near === undefined ? "far" : wished;
  const { peak, mean15, mean60, mean480 } = (zone === "near" ? told.near : undefined) ?? told.far;
  return {
    ...{ who, zone, where: zoneInWords(told, zone), peak },
    means: [
      { averagingMin: 15, mean: mean15 },
      { averagingMin: 60, mean: mean60 },
      { averagingMin: 480, mean: mean480 },
    ],
    nearest: nearestLimit(told, zone),
  };
}

/** A zone in words: without a near field the room is all of the air. */
export const zoneInWords = ({ near }: Pick<SolventTold, "near">, zone: Zone): string =>
  zone === "near"
    ? "the air near the mouth"
    : near === undefined
      ? "the room, mixed throughout"
      : "the rest of the room";

/** How much of a limit is reached at most, over the rates. */
const atMost = ({ ratio, ratioWithin }: Limit): number => ratioWithin?.high ?? ratio;

/** The limit that most is reached of, at the rate that makes most of it; in one zone, or in any. */
export const nearestLimit = ({ limits }: Pick<SolventTold, "limits">, zone?: Zone): Limit | undefined =>
  limits.filter((one) => zone === undefined || one.zone === zone).toSorted((a, b) => atMost(b) - atMost(a))[0];

/** A limit by what it averages over and whose it is: `the 60-minute limit of NIOSH (United States) 2005`. */
export function limitInWords({ averagingMin, authority, year, ppm }: Limit): string {
  const kind =
    averagingMin === 0 ? "the ceiling" : averagingMin === 480 ? "the 8-hour limit" : `the ${averagingMin}-minute limit`;
  return `${kind} of ${authority}${year === undefined ? "" : ` ${year}`}, ${Number(ppm.toPrecision(3))} ppm`;
}

/** The one sentence of a visit's solvent; the number that it begins with stands apart, for whoever asks where it comes from. */
export interface Headline {
  readonly leads: string;
  readonly follows: string;
}

/** The limit that most is reached of, by how much, where, and over the rates. */
export function solventHeadline(told: SolventTold, name: string): Headline {
  const nearest = nearestLimit(told);
  if (nearest === undefined)
    return {
      leads: "No limit",
      follows: `for ${name} is set in any list that was read; that says nothing about its harm.`,
    };
  const { ratio, ratioWithin, zone, stands } = nearest;
  const more = told.near === undefined ? "; beside the mouth there is more" : "";
  const where = `${zoneInWords(told, zone)}${more}`;
  if (ratioWithin !== undefined && stands === "dependsOnRate")
    return {
      leads: `${ratioFigure(ratioWithin.low)} to ${ratioFigure(ratioWithin.high)} times`,
      follows: `${limitInWords(nearest)}, in ${where}; whether it is passed depends on the rate of evaporation.`,
    };
  const range =
    ratioWithin === undefined || ratioFigure(ratioWithin.low) === ratioFigure(ratioWithin.high)
      ? ""
      : `; the range of rates gives ${ratioFigure(ratioWithin.low)} to ${ratioFigure(ratioWithin.high)} of it`;
  return { leads: sentenceStart(timesText(ratio)), follows: `${limitInWords(nearest)}, in ${where}${range}.` };
}

const sentenceStart = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

/** The rate of evaporation that single numbers are told for, in three figures. */
export const rateTaken = ({
  evaporation: { ratePerMin },
}: Pick<SolventTold, "evaporation">): { ratePerMin?: number } =>
  ratePerMin === undefined ? {} : { ratePerMin: Number(ratePerMin.toPrecision(3)) };

/** Where that rate comes from: `the middle of 0.0318 to 2, which is assumed`. */
export function rateInWords({ evaporation: { within, origin } }: Pick<SolventTold, "evaporation">): string {
  const from = origin === "given" ? "as recorded" : "which is assumed";
  return within === undefined ? from : `the middle of ${within.low} to ${within.high}, ${from}`;
}

/** How what passed the foramen stands to a dose: `2.2 times below`, `4.6 times`. */
export const marginInWords = ({ margin }: NonNullable<SolventTold["extrusion"]>["margins"][number]): string =>
  timesText(1 / margin);

/** How much could be dispensed in all, at the same times, until the first limit is met. */
export function firstLimitInWords(told: SolventTold): string | undefined {
  const { volumeAtFirstLimitMl: volume, firstLimit } = told;
  if (volume === undefined || firstLimit === undefined) return undefined;
  const { authority, averagingMin, zone, volumeWithinMl: within } = firstLimit;
  const time = averagingMin === 0 ? "ceiling" : averagingMin === 480 ? "8-hour limit" : `${averagingMin}-minute limit`;
  const range =
    within === undefined ? "" : ` (${figure(within.low)} to ${figure(within.high)} ml over the range of rates)`;
  return `The first limit would be met at ${figure(volume)} ml in all${range}: the ${time} of ${authority}, in ${zoneInWords(told, zone)}.`;
}

const figure = (value: number): string => String(Number(value.toPrecision(2)));
