import { type TextLabel, textWidth } from "./text-label.ts";

/** A mark with where it is drawn, in which row of its lane, and its words beside it. */
export interface PlacedMark {
  readonly row: number;
  readonly from: number;
  /** Absent for a moment. */
  readonly to?: number | undefined;
  readonly words: Pick<TextLabel, "text" | "x" | "anchor">;
}

/** The marks of a lane in as few rows as keep them apart. */
export interface LaneRows {
  readonly rows: number;
  readonly marks: readonly PlacedMark[];
}

interface RowsWish {
  readonly x: (minute: number) => number;
  readonly left: number;
  readonly right: number;
  readonly letters: number;
}

interface ToPlace {
  readonly fromMin: number;
  readonly toMin?: number | undefined;
  readonly says: string;
}

const gap = 8;
const dot = 5;

/** Each mark with its words goes into the first row in which both meet nothing; words that find no room on a line are cut. */
export function laidInRows(marks: readonly ToPlace[], wish: RowsWish): LaneRows {
  const taken: { readonly from: number; readonly to: number }[][] = [];
  const placed = marks.map((mark): PlacedMark => {
    const { span, ...drawn } = drawnOf(mark, wish);
    const free = taken.findIndex((row) => row.every(({ from, to }) => span.to + gap < from || to + gap < span.from));
    const row = free === -1 ? taken.length : free;
    taken[row] = [...(taken[row] ?? []), span];
    return { row, ...drawn };
  });
  return { rows: taken.length, marks: placed };
}

/** Words stand right of their mark; left of it where there is more room for them. */
function drawnOf({ fromMin, toMin, says }: ToPlace, { x, left, right, letters }: RowsWish) {
  const from = x(fromMin);
  const to = toMin === undefined ? undefined : Math.max(from + 3, x(toMin));
  const [start, end] = to === undefined ? [from - dot, from + dot] : [from, to];
  const [before, after] = [start - 3 - left, right - end - 3];
  const goesAfter = textWidth(says, letters) <= after || after >= before;
  const text = cutTo(says, goesAfter ? after : before, letters);
  const wide = textWidth(text, letters);
  return goesAfter
    ? { from, to, words: { text, x: end + 3 }, span: { from: start, to: end + 3 + wide } }
    : { from, to, words: { text, x: start - 3, anchor: "end" as const }, span: { from: start - 3 - wide, to: end } };
}

function cutTo(says: string, most: number, letters: number): string {
  if (textWidth(says, letters) <= most) return says;
  const signs = [...says];
  while (signs.length > 0 && textWidth(`${signs.join("").trimEnd()}…`, letters) > most) signs.pop();
  return `${signs.join("").trimEnd()}…`;
}
