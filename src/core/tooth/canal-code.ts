import type { CanalRoot } from "./canal-root.ts";
import { canalSequence, sequenceText } from "./canal-sequence.ts";

/** The code of a tooth's canals, as plain text and with raised digits. */
export interface CanalCode {
  /** `^3 16 MB^2-1 DB^1 P^1`: a caret before what is raised. */
  readonly plain: string;
  /** `³16 MB²⁻¹ DB¹ P¹`. */
  readonly display: string;
}

const raised: Readonly<Record<string, string>> = {
  "0": "⁰",
  "1": "¹",
  "2": "²",
  "3": "³",
  "4": "⁴",
  "5": "⁵",
  "6": "⁶",
  "7": "⁷",
  "8": "⁸",
  "9": "⁹",
  "-": "⁻",
};

/** A text of digits and dashes, raised. */
const superscript = (text: string): string => [...text].map((sign) => raised[sign] ?? sign).join("");

/**
 * The code of a tooth's roots and canals: number of roots, tooth, then each root with the course of its canals.
 * Takes the two-digit number and the roots in their order; a lone root's name is left out.
 * @source Ahmed HMA, Versiani MA, De-Deus G, Dummer PMH, A new system for classifying root and root canal morphology, Int Endod J, 2017, 761-770 (memory); docs/methods/canals, C5
 */
export function canalCode(twoDigit: string, roots: readonly CanalRoot[]): CanalCode {
  const count = String(roots.length);
  const courses = roots.map((root) => ({
    name: roots.length === 1 ? "" : root.name,
    course: sequenceText(canalSequence(root.levels)),
  }));
  const plain = courses.map(({ name, course }) => `${name}^${course}`).join(" ");
  const display = courses.map(({ name, course }) => `${name}${superscript(course)}`).join(" ");
  const gap = roots.length === 1 ? "" : " ";
  return { plain: `^${count} ${twoDigit} ${plain}`, display: `${superscript(count)}${twoDigit}${gap}${display}` };
}
