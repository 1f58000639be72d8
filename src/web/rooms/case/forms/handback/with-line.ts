/** A text with one more line behind what was written. */
export const withLine = (text: string, line: string): string =>
  [text.trimEnd(), line].filter((piece) => piece !== "").join("\n");
