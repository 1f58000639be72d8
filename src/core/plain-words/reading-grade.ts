import { syllables } from "./syllables.ts";

/**
 * The school year in which a text can be read, by the length of its sentences and of its words.
 * Takes a text of whole sentences; each paragraph ends one.
 * Gives a grade of United States schools, 6 for an age of about 12; undefined for a text without a word.
 * @source Kincaid JP, Fishburne RP, Rogers RL, Chissom BS, Derivation of new readability formulas for Navy enlisted personnel, Research Branch Report 8-75, 1975 (memory)
 */
export function readingGrade(text: string): number | undefined {
  const sentences = text.split(/[.!?]+(?=\s|$)|\n+/).filter((piece) => /[\p{L}\d]/u.test(piece));
  const words = sentences.flatMap((sentence) => sentence.match(/[\p{L}\d]+(?:[’'][\p{L}]+)?/gu) ?? []);
  if (words.length === 0) return undefined;
  const spoken = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (spoken / words.length) - 15.59;
}
