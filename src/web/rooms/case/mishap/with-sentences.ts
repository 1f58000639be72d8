/** A text with the sentences put in that do not stand there yet, behind what was written. */
export function withSentences(text: string, sentences: readonly string[]): string {
  const missing = sentences.filter((sentence) => !text.includes(sentence));
  return [...(text.trim() === "" ? [] : [text.trimEnd()]), ...(missing.length === 0 ? [] : [missing.join(" ")])].join(
    "\n",
  );
}
