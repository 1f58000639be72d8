import { numberInWords, withUnit } from "../../parts/figures-in-words.ts";
import { dayName, type Film, purposeNames } from "./film-name.ts";
import { tubeSide } from "./tube-angle.ts";

/** From where the tube looked at the tooth; "unknown" where nobody wrote it down. */
export type TubeFrom = "straight" | "mesial" | "distal" | "unknown";

/** The films of one day, in the order of the strip. */
export interface StripDay {
  readonly day: string;
  readonly films: readonly Film[];
}

const fromOrder: readonly TubeFrom[] = ["straight", "mesial", "distal", "unknown"];
const purposeOrder = purposeNames.map(([purpose]) => purpose);

/** From where a film was taken, by its recorded angle. */
export function tubeFrom({ body: { horizontalAngleDeg: angle } }: Film): TubeFrom {
  if (angle === undefined) return "unknown";
  return angle === 0 ? "straight" : tubeSide(angle);
}

/** From where a film was taken, in words: `straight`, `20° from mesial`; nothing where it is not known. */
export function tubeFromInWords(film: Film): string {
  const from = tubeFrom(film);
  if (from === "straight" || from === "unknown") return from === "straight" ? "straight" : "";
  const size = Math.abs(film.body.horizontalAngleDeg ?? 0);
  return `${withUnit(numberInWords(size, Number.isInteger(size) ? 0 : 1), "°")} from ${from}`;
}

/**
 * The films of a case day by day; on one day by angle, straight first, then from mesial, then from distal, the smaller
 * before the larger. A film without an angle comes where its purpose has it: an angled one last, any other first.
 */
export function stripDays(films: readonly Film[], presentedOn: string): StripDay[] {
  const inOrder = filmsInStrip(films);
  const days = [...new Set(inOrder.map(({ body }) => body.takenOn))];
  return days.map((takenOn) => ({
    day: dayName(presentedOn, takenOn),
    films: inOrder.filter(({ body }) => body.takenOn === takenOn),
  }));
}

/** The films of a case as the strip has them. */
export const filmsInStrip = (films: readonly Film[]): Film[] => [...films].sort(inStripOrder);

function inStripOrder(a: Film, b: Film): number {
  return (
    a.body.takenOn.localeCompare(b.body.takenOn) ||
    fromRank(a) - fromRank(b) ||
    angleOf(a) - angleOf(b) ||
    purposeOrder.indexOf(a.body.purpose) - purposeOrder.indexOf(b.body.purpose)
  );
}

function fromRank(film: Film): number {
  const from = tubeFrom(film);
  return fromOrder.indexOf(from === "unknown" && film.body.purpose !== "angled" ? "straight" : from);
}

const angleOf = ({ body }: Film): number => Math.abs(body.horizontalAngleDeg ?? 0);
