import { Refusal } from "../refusal.ts";
import { type ToothFacts, teeth } from "./teeth.ts";

/** The three notations, as the fields of {@link ToothFacts} that hold them. */
export const notations = ["twoDigit", "universal", "quadrant"] as const;
/** One of the three notations. */
export type Notation = (typeof notations)[number];

const spoken: Record<Notation, { readonly is: string; readonly accepted: string }> = {
  twoDigit: { is: "a two-digit number", accepted: "11-18, 21-28, 31-38, 41-48 or 51-55, 61-65, 71-75, 81-85" },
  universal: { is: "a universal number", accepted: "1-32 or A-T, in capitals" },
  quadrant: { is: "a quadrant with a position", accepted: 'as "lower right 6" or "upper left C"' },
};

/**
 * The tooth that a text names in one notation.
 * Takes the notation and the text exactly as written, without blanks round it.
 * @throws Refusal `tooth.unknown` with what is accepted and every other tooth that the text could have meant.
 * @source International Organization for Standardization, ISO 3950, 2016 (memory); docs/methods/tooth, C1-C5
 */
export function toothOf(notation: Notation, value: string): ToothFacts {
  const found = teeth.find((tooth) => tooth[notation] === value);
  if (found !== undefined) return found;
  const meant = meaningsText(value);
  const says = `${JSON.stringify(value)} is not ${spoken[notation].is} (${spoken[notation].accepted}); ${meant}`;
  const faults = [{ path: "value", says }];
  throw new Refusal("tooth.unknown", `Cannot name the tooth: ${says}`, { notation, value }, faults);
}

/** What a refused text could have meant in each notation, in one clause. */
function meaningsText(value: string): string {
  const capitals = value.toUpperCase();
  const meanings = [...wholeMeanings(capitals), ...positionMeaning(capitals)];
  return meanings.length === 0 ? "it names no tooth in any notation" : `it could mean ${meanings.join(", or ")}`;
}

function wholeMeanings(capitals: string): string[] {
  return notations.flatMap((notation) =>
    teeth
      .filter((tooth) => tooth[notation].toUpperCase() === capitals)
      .map((tooth) => `${notation} "${tooth[notation]}", the ${tooth.name}`),
  );
}

/** A position without its quadrant names one tooth in each of four quadrants. */
function positionMeaning(capitals: string): string[] {
  const four = teeth.filter((tooth) => tooth.quadrant.endsWith(` ${capitals}`));
  if (four.length === 0) return [];
  const numbers = four.map((tooth) => tooth.twoDigit).join(", ");
  return [`position ${capitals} of a quadrant that is not named (twoDigit ${numbers})`];
}
