import {
  besideNumbers,
  chanceFigure,
  chancePlotFor,
  letterHalf,
  letterSize,
  plotTop,
  type RowPlace,
  rowName,
  rowNumber,
  whisker,
} from "./chance-plot.ts";
import { type Chance, chanceColumn, chanceText } from "./chance-text.ts";
import { element, type Figure, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type ThemeName, themes } from "./theme.ts";

/** What was counted; a tooth that is still there need not have healed, so each kind stands apart. */
export type OutcomeKind = "healing" | "notWorse" | "retention" | "pulp" | "replacement";

/** One published series of an outcome. */
export interface OutcomeRow extends Chance {
  readonly kind: OutcomeKind;
  /** What was counted and by whom, as `healed, Ng 2011`. */
  readonly name: string;
  /** How it was told, on what film, after how long, in whom. */
  readonly says: string;
  /** Absent where no counts are printed. */
  readonly counts?: { readonly events: number; readonly n: number } | undefined;
  /** The group that is nearest to the case. */
  readonly isNearest: boolean;
}

/** Published outcomes of one way. */
export interface OutcomeRows {
  readonly rows: readonly OutcomeRow[];
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const kinds = ["healing", "pulp", "notWorse", "retention", "replacement"] as const;
const headings: Readonly<Record<OutcomeKind, string>> = {
  healing: "Healing",
  pulp: "Pulp still alive",
  notWorse: "No worse on the film, healed or not",
  retention: "Still in place, healed or not",
  replacement: "What replaces the tooth",
};
const [between, headHeight] = [8, 24];
/** Names need more room here than letters of the usual size leave. */
const usualLetters = 0.7;

/** A dot with its interval for each published series, healing apart from what is merely still in place. */
export function outcomeRows(given: OutcomeRows): Figure {
  const theme = themes[given.theme];
  const plot = chancePlotFor((given.letters ?? 1) * usualLetters, given.rows.map(numberOf));
  let at = plotTop;
  const drawn = kinds.flatMap((kind) => {
    const rows = given.rows.filter((row) => row.kind === kind);
    if (rows.length === 0) return [];
    const head = labelNode({
      text: headings[kind],
      x: 0,
      y: at + 13,
      size: letterSize,
      fill: theme.ink,
      weight: "semibold",
    });
    at += headHeight;
    const nodes = rows.flatMap((row) => {
      const name = rowName({ label: row.name, says: row.says }, plot, theme);
      const drawnRow = [...name.at(at).map(labelNode), ...rowNodes(row, { plot, theme, y: at + letterHalf })];
      at += name.height + between;
      return drawnRow;
    });
    return [head, ...nodes];
  });
  const alternative = alternativeOf(given.rows);
  return chanceFigure({ plot, theme, foot: at, widthPx: given.widthPx, alternative }, drawn);
}

const countsText = ({ counts }: OutcomeRow): string =>
  counts === undefined ? "no counts printed" : `${counts.events}/${counts.n}`;

/** The wider of the two texts in the column of numbers. */
const numberOf = (row: OutcomeRow): string => {
  const [share, counts] = [chanceColumn(row), countsText(row)];
  return share.length > counts.length ? share : counts;
};

function rowNodes(row: OutcomeRow, place: RowPlace): SvgNode[] {
  const { plot, theme, y } = place;
  return [
    ...whisker(place, row.interval, {
      ink: row.isNearest ? theme.ink : theme.quiet,
      weight: row.isNearest ? 2 : 1.4,
    }),
    element("path", {
      ...{ "data-part": row.isNearest ? "nearest" : "outcome", "data-kind": row.kind },
      d: shapeAt(row.kind, plot.x(row.mean), y),
      fill: row.isNearest ? theme.ink : theme.surface,
      ...{ stroke: theme.ink, "stroke-width": 1.6 },
    }),
    rowNumber(chanceColumn(row), place, row.isNearest ? "semibold" : "regular"),
    besideNumbers(countsText(row), place, y + 19),
  ];
}

const half = 5;

/** Each kind has a shape of its own: a round dot, a diamond, a square, a triangle up or down. */
function shapeAt(kind: OutcomeKind, x: number, y: number): string {
  const [left, right, top, foot] = [x - half, x + half, y - half, y + half];
  const spot = (across: number, down: number) => ({ x: across, y: down });
  if (kind === "pulp")
    return pathThrough([spot(x, top - 1), spot(right + 1, y), spot(x, foot + 1), spot(left - 1, y)], true);
  if (kind === "retention")
    return pathThrough([spot(left, top), spot(right, top), spot(right, foot), spot(left, foot)], true);
  if (kind === "notWorse") return pathThrough([spot(left, top), spot(right, top), spot(x, foot)], true);
  if (kind === "replacement") return pathThrough([spot(x, top), spot(right, foot), spot(left, foot)], true);
  const [from, to, round] = [left, right, `A${half} ${half} 0 1 0`].map((one) =>
    typeof one === "number" ? numberText(one) : one,
  );
  return `M${from} ${numberText(y)}${round} ${to} ${numberText(y)}${round} ${from} ${numberText(y)}Z`;
}

function alternativeOf(rows: readonly OutcomeRow[]): string {
  const told = kinds.flatMap((kind) => {
    const lines = rows.filter((row) => row.kind === kind).map(rowInWords);
    return lines.length === 0 ? [] : [`${headings[kind]}: ${lines.join("; ")}.`];
  });
  return `Published outcomes of this way. ${told.length === 0 ? "None is kept." : told.join(" ")}`;
}

const rowInWords = (row: OutcomeRow): string =>
  [
    `${row.name}, ${chanceText(row)}, ${row.counts === undefined ? "no counts printed" : `${row.counts.events} of ${row.counts.n}`}`,
    ...(row.says === "" ? [] : [row.says]),
    ...(row.isNearest ? ["nearest to this case"] : []),
  ].join(", ");
