import { isUnset } from "../../../parts/fields/unset.ts";

/**
 * The answer that a key stands for: the next one, from where the cell stands, whose word begins with the sign; x, Delete and
 * Backspace take the answer back to not done or not asked.
 */
export function answerOfKey(key: string, words: Readonly<Record<string, string>>, now: string): string | undefined {
  if (["x", "X", "Delete", "Backspace"].includes(key)) return Object.keys(words).find(isUnset);
  const answers = Object.keys(words).filter((answer) => !isUnset(answer));
  const matching = answers.filter((answer) => words[answer]?.startsWith(key.toLowerCase()));
  const at = matching.indexOf(now);
  return matching[(at + 1) % Math.max(1, matching.length)];
}
