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
import { type Chance, chanceText, percentText } from "./chance-text.ts";
import { element, type Figure, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type ThemeName, themes } from "./theme.ts";

/** A group of a published series. */
export interface RemovalChanceRow {
  /** What the series was split by, as `third of the canal`. */
  readonly by: string;
  /** The group, and what was counted, as `middle third, removed or passed`. */
  readonly words: string;
  /** Absent where only a share is printed. */
  readonly events?: number | undefined;
  readonly n?: number | undefined;
  readonly share?: number | undefined;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  /** Whether this case belongs to the group. */
  readonly matches: "yes" | "no" | "notKnown";
  /** As `Shen 2004`. */
  readonly source: string;
  /** As `read` or `from memory`. */
  readonly mark: string;
}

/** Published chances of getting a fragment out, the groups that this case belongs to first. */
export interface RemovalChances {
  readonly rows: readonly RemovalChanceRow[];
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const groups = [
  { matches: "yes", heading: "Groups that this case belongs to" },
  { matches: "notKnown", heading: "Not known whether it belongs to them" },
  { matches: "no", heading: "Other groups" },
] as const;
const [between, headHeight] = [8, 24] as const;
/** Names need more room here than letters of the usual size leave. */
const usualLetters = 0.7;

/** A dot with its interval for each group of each series as n/N, those that match this case first and filled. */
export function removalChances(given: RemovalChances): Figure {
  const theme = themes[given.theme];
  const plot = chancePlotFor((given.letters ?? 1) * usualLetters, ["100 %", ...given.rows.flatMap(numbersOf)]);
  let at = plotTop;
  const drawn = groups.flatMap(({ matches, heading }) => {
    const rows = given.rows.filter((row) => row.matches === matches);
    if (rows.length === 0) return [];
    const text = { text: heading, x: 0, y: at + 13, size: letterSize, fill: theme.ink } as const;
    at += headHeight;
    const nodes = rows.flatMap((row) => {
      const name = rowName({ label: row.words, says: `${row.by}; ${row.source}, ${row.mark}` }, plot, theme);
      const nodesOfRow = [...name.at(at).map(labelNode), ...rowNodes(row, { plot, theme, y: at + letterHalf })];
      at += Math.max(name.height, 30) + between;
      return nodesOfRow;
    });
    return [labelNode({ ...text, weight: "semibold" }), ...nodes];
  });
  return chanceFigure({ plot, theme, foot: at, widthPx: given.widthPx, alternative: alternativeOf(given.rows) }, drawn);
}

const shareOf = ({ share, events, n }: RemovalChanceRow): number | undefined =>
  share ?? (events === undefined || n === undefined || n === 0 ? undefined : events / n);

const intervalOf = ({ low, high }: RemovalChanceRow) =>
  low === undefined || high === undefined ? undefined : { low, high };

function chanceOf(row: RemovalChanceRow): Chance | undefined {
  const mean = shareOf(row);
  return mean === undefined ? undefined : { mean, interval: intervalOf(row) };
}

const countsText = ({ events, n }: RemovalChanceRow): string =>
  events === undefined || n === undefined ? (n === undefined ? "no counts printed" : `of ${n}`) : `${events}/${n}`;

function shareText(row: RemovalChanceRow): string {
  const chance = chanceOf(row);
  if (chance === undefined) return "no share printed";
  const { interval } = chance;
  const ends = interval === undefined ? "" : ` (${percentText(interval.low)}–${percentText(interval.high)})`;
  return `${percentText(chance.mean)} %${ends}`;
}

const numbersOf = (row: RemovalChanceRow): string[] => [shareText(row), countsText(row)];

/** The dot's shape tells whether this case belongs to the group: a filled disc, a diamond, a ring. */
function rowNodes(row: RemovalChanceRow, place: RowPlace): SvgNode[] {
  const { plot, theme, y } = place;
  const chance = chanceOf(row);
  const isIn = row.matches === "yes";
  const x = plot.x(chance?.mean ?? 0);
  const pen = { fill: isIn ? theme.ink : theme.surface, stroke: theme.ink, "stroke-width": 1.6 };
  const corners = [
    { x, y: y - 6 },
    { x: x + 6, y },
    { x, y: y + 6 },
    { x: x - 6, y },
  ];
  const dot =
    row.matches === "notKnown"
      ? element("path", { "data-part": row.matches, d: pathThrough(corners, true), ...pen })
      : element("circle", { "data-part": row.matches, cx: x, cy: y, r: 4.8, ...pen });
  return [
    ...whisker(place, chance?.interval, { ink: isIn ? theme.ink : theme.quiet, weight: isIn ? 2 : 1.4 }),
    ...(chance === undefined ? [] : [dot]),
    rowNumber(shareText(row), place, isIn ? "semibold" : "regular"),
    besideNumbers(countsText(row), place, y + 19),
  ];
}

function alternativeOf(rows: readonly RemovalChanceRow[]): string {
  const told = groups.flatMap(({ matches, heading }) => {
    const lines = rows.filter((row) => row.matches === matches).map(rowInWords);
    return lines.length === 0 ? [] : [`${heading}: ${lines.join("; ")}.`];
  });
  return `Published chances of getting a fragment out. ${told.length === 0 ? "None is kept." : told.join(" ")}`;
}

function rowInWords(row: RemovalChanceRow): string {
  const chance = chanceOf(row);
  const counts = row.events === undefined || row.n === undefined ? countsText(row) : `${row.events} of ${row.n}`;
  const said = chance === undefined ? "no share printed" : chanceText(chance);
  return `${row.by}, ${row.words}, ${said}, ${counts}, ${row.source}, ${row.mark}`;
}
