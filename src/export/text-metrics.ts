/** Widths in thousandths of the size, of the upright Helvetica-metric faces that every office program has. */
const narrow = "ijl'";
const widthsByLetter: Readonly<Record<string, number>> = {
  ...widthsOf(278, " !,./:;I[]ft"),
  ...widthsOf(333, "()-r"),
  ...widthsOf(500, "Jckvsxyz"),
  ...widthsOf(611, "FTZ"),
  ...widthsOf(667, "ABEKPSVXY&"),
  ...widthsOf(722, "CDHNRUw"),
  ...widthsOf(778, "GOQ"),
  ...widthsOf(833, "Mm"),
  ...widthsOf(222, narrow),
  W: 944,
  "%": 889,
  "@": 1015,
};
/** Digits and most small letters; also the guess for a letter outside the table. */
const usualWidth = 560;
const pointsInInch = 72;

function widthsOf(width: number, letters: string): Record<string, number> {
  return Object.fromEntries([...letters].map((letter) => [letter, width]));
}

/**
 * The width of a text in inches at a size in points.
 * @source Helvetica font metrics, Adobe Core 14 AFM files (from memory); a guess for letters outside it
 */
function textWidthIn(text: string, sizePt: number): number {
  const thousandths = [...text].reduce((sum, letter) => sum + (widthsByLetter[letter] ?? usualWidth), 0);
  return (thousandths / 1000) * (sizePt / pointsInInch);
}

/** A text broken into lines that fit a width, word by word; a word wider than the line is broken. */
export function wrapped(text: string, widthIn: number, sizePt: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).flatMap((whole) => brokenWord(whole, widthIn, sizePt))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidthIn(longer, sizePt) <= widthIn) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

function brokenWord(word: string, widthIn: number, sizePt: number): string[] {
  if (textWidthIn(word, sizePt) <= widthIn) return [word];
  const letters = Math.max(1, Math.floor((word.length * widthIn) / textWidthIn(word, sizePt)) - 1);
  return Array.from({ length: Math.ceil(word.length / letters) }, (_, index) =>
    word.slice(index * letters, (index + 1) * letters),
  );
}

/** The height of lines of a size in inches, with the usual leading. */
export const linesHeightIn = (lines: number, sizePt: number): number => (lines * sizePt * 1.22) / pointsInInch;
