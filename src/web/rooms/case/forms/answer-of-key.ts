/**
 * The answer that a key stands for: the next one, from where the cell stands, whose word begins with the letter; x, Delete
 * and Backspace stand for not done.
 */
export function answerOfKey(key: string, words: Readonly<Record<string, string>>, now: string): string | undefined {
  if (["x", "X", "Delete", "Backspace"].includes(key)) return "notDone" in words ? "notDone" : undefined;
  const answers = Object.keys(words).filter((answer) => answer !== "notDone");
  const matching = answers.filter((answer) => words[answer]?.startsWith(key.toLowerCase()));
  const at = matching.indexOf(now);
  return matching[(at + 1) % Math.max(1, matching.length)];
}
