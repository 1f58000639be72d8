import vertucci from "../../../data/vertucci-1984/source.json" with { type: "json" };
import { type CanalLevel, canalsAt } from "./canal-root.ts";

/** Type of a canal system by Vertucci. */
export type VertucciType = "I" | "II" | "III" | "IV" | "V" | "VI" | "VII" | "VIII";

const types: Readonly<Record<string, string>> = vertucci.types;
const known: readonly string[] = Object.values(types);
const isType = (text: string | undefined): text is VertucciType => text !== undefined && known.includes(text);

/**
 * The numbers of separate canals from orifice to foramen, equal neighbours written once.
 * Takes levels, orifice first; levels without a lumen (C5) say nothing about the number and are passed over.
 * @source docs/methods/canals, C3
 */
export function canalSequence(levels: readonly CanalLevel[]): readonly number[] {
  const counts = levels.map(canalsAt).filter((count) => count > 0);
  return counts.filter((count, at) => at === 0 || count !== counts[at - 1]);
}

/** A sequence as it is written: `2-1-2`. */
export const sequenceText = (sequence: readonly number[]): string => sequence.join("-");

/**
 * Vertucci's type of a sequence; null for a sequence that is none of the eight.
 * @source Vertucci FJ, Root canal anatomy of the human permanent teeth, Oral Surg Oral Med Oral Pathol, 1984, 589-599 (memory); docs/methods/canals, C4
 */
export function vertucciType(sequence: readonly number[]): VertucciType | null {
  const text = sequenceText(sequence);
  const type = Object.hasOwn(types, text) ? types[text] : undefined;
  return isType(type) ? type : null;
}
