import {
  chanceFigure,
  chancePlotFor,
  letterHalf,
  plotTop,
  type RowPlace,
  rowName,
  rowNumber,
  whisker,
} from "./chance-plot.ts";
import { type Chance, chanceColumn, chanceText, percentText } from "./chance-text.ts";
import { element, type Figure, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type ThemeName, themes } from "./theme.ts";

/** One published series: how many of how many had it. */
export interface SeriesRow extends Chance {
  /** Where it was counted, as `Korea, 2013`. */
  readonly name: string;
  readonly n: number;
  readonly of: number;
}

/** Published series of one thing, and what they tell of the next people. */
export interface SeriesStrip {
  /** What was counted, as `a third root`. */
  readonly what: string;
  readonly series: readonly SeriesRow[];
  /** The chance in the next population; wide where series differ. Absent where it was not reckoned. */
  readonly next?: Chance | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const between = 7;
const nextWords = { label: "Next population", says: "95 % of such lie here" } as const;

/** A square with its interval for each series from the rarest up, and below a line the wide one of the next population. */
export function seriesStrip(given: SeriesStrip): Figure {
  const theme = themes[given.theme];
  const { next, letters = 1 } = given;
  const series = [...given.series].sort((a, b) => a.mean - b.mean);
  const plot = chancePlotFor(letters, [...series.map(numberOf), ...(next ? [chanceColumn(next)] : [])]);
  const most = Math.max(1, ...series.map(({ of }) => of));
  let at = plotTop;
  const drawn = series.flatMap((row) => {
    const name = rowName({ label: row.name }, plot, theme);
    const nodes = [...name.at(at).map(labelNode), ...seriesNodes(row, most, { plot, theme, y: at + letterHalf })];
    at += name.height + between;
    return nodes;
  });
  const told = rowName(nextWords, plot, theme);
  const nextTop = at + 8;
  const foot = next === undefined ? at : nextTop + told.height + 4;
  const place = { plot, theme, y: nextTop + letterHalf };
  const below = next === undefined ? [] : [...told.at(nextTop).map(labelNode), ...nextNodes(next, place)];
  const alternative = alternativeOf(given, series);
  return chanceFigure({ plot, theme, foot, widthPx: given.widthPx, alternative }, [...drawn, ...below]);
}

/** How many of how many, and what share that is. */
const numberOf = ({ n, of, mean }: SeriesRow): string => `${n}/${of} · ${percentText(mean)} %`;

/** Larger series have larger squares: the side goes with the root of their number. */
function seriesNodes(row: SeriesRow, most: number, place: RowPlace): SvgNode[] {
  const { plot, theme, y } = place;
  const side = 4 + 6 * Math.sqrt(row.of / most);
  return [
    ...whisker(place, row.interval, { ink: theme.quiet, weight: 1.4 }),
    element("rect", {
      "data-part": "series",
      ...{ x: plot.x(row.mean) - side / 2, y: y - side / 2, width: side, height: side, fill: theme.ink },
    }),
    rowNumber(numberOf(row), place),
  ];
}

function nextNodes(next: Chance, place: RowPlace): SvgNode[] {
  const { plot, theme, y } = place;
  const x = plot.x(next.mean);
  const spots = [
    { x: plot.x(next.interval?.low ?? next.mean), y },
    { x, y: y - 7 },
    { x: plot.x(next.interval?.high ?? next.mean), y },
    { x, y: y + 7 },
  ];
  return [
    element("path", {
      d: pathThrough([
        { x: 0, y: y - 15 },
        { x: plot.width, y: y - 15 },
      ]),
      ...{ stroke: theme.hairline, "stroke-width": 1, fill: "none" },
    }),
    element("path", {
      "data-part": "next",
      d: pathThrough(spots, true),
      ...{ fill: theme.course, "fill-opacity": 0.25, stroke: theme.course, "stroke-width": 1.6 },
    }),
    rowNumber(chanceColumn(next), place, "semibold"),
  ];
}

function alternativeOf({ what, next }: SeriesStrip, series: readonly SeriesRow[]): string {
  const lines = series.map((row) => `${row.name}, ${row.n} of ${row.of}; ${chanceText(row)}.`);
  const then = next === undefined ? "" : ` Next population, where 95 % of such lie; ${chanceText(next)}.`;
  return `How often published series found ${what}. ${lines.join(" ")}${then}`;
}
