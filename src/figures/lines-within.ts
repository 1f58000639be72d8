import { type TextWeight, textWidth } from "./text-label.ts";

/** A text as lines that are no wider than a column; a single word that is wider stands alone. */
export function linesWithin(text: string, width: number, size: number, weight: TextWeight = "medium"): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = `${lines.at(-1)} ${word}`;
    const fits = lines.length > 0 && textWidth(longer, size, weight) <= width;
    if (fits) lines.pop();
    lines.push(fits ? longer : word);
  }
  return lines;
}
