import type { PartOf } from "../../../record/parts.ts";

/** A film as it stands in the case. */
export type Film = PartOf<"film">;

/** The purposes a film can have, each with its name, in the order of a treatment. */
export const purposeNames: readonly (readonly [Film["body"]["purpose"], string])[] = [
  ["diagnostic", "diagnostic"],
  ["angled", "angled"],
  ["workingLength", "working length"],
  ["masterCone", "master cone"],
  ["final", "final"],
  ["recall", "recall"],
  ["other", "other"],
];
const names: ReadonlyMap<string, string> = new Map(purposeNames);

/** What a film was taken for, in a word or two. */
export const purposeName = (purpose: Film["body"]["purpose"]): string => names.get(purpose) ?? purpose;

/** The days from one calendar day to another; below 0 for earlier. */
export function daysFrom(start: string, day: string): number {
  return Math.round((Date.parse(day) - Date.parse(start)) / 86_400_000);
}

/** A day counted from the case's first: "day 0", "day 13". */
export const dayName = (presentedOn: string, day: string): string => `day ${daysFrom(presentedOn, day)}`;

/** A film in a sentence: "the film of day 0". */
export const filmName = ({ body }: Film, presentedOn: string): string =>
  `the ${body.purpose === "diagnostic" ? "" : `${purposeName(body.purpose)} `}film of ${dayName(presentedOn, body.takenOn)}`;

/** The films of a case by day; on one day as they were taken in. */
export const filmsByDay = (films: readonly Film[]): Film[] =>
  [...films].sort((a, b) => a.body.takenOn.localeCompare(b.body.takenOn));
