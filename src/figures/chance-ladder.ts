import {
  besideNumbers,
  type ChancePlot,
  chanceFigure,
  chancePlotFor,
  letterHalf,
  plotTop,
  type RowPlace,
  type RowWords,
  rowName,
  rowNumber,
  whisker,
} from "./chance-plot.ts";
import { type Chance, chanceColumn, chanceText } from "./chance-text.ts";
import { element, type Figure, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One rung: where the chance stands before anything, or after a test or a look. */
export interface ChanceRung extends RowWords {
  /** Absent where this step could not be reckoned in. */
  readonly chance?: Chance | undefined;
}

/** A chance step by step: that the pulp is not vital after each test, or that a canal is there after each look. */
export interface ChanceLadder {
  /** What it is the chance of, as `a second mesiobuccal canal is there`. */
  readonly that: string;
  /** From what is known beforehand to now; at least one. */
  readonly rungs: readonly ChanceRung[];
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const between = 13;

/** A row for each step with a dot and its 95 % interval on 0 to 100 %, joined by a line; the last that counts is filled. */
export function chanceLadder(given: ChanceLadder): Figure {
  const theme = themes[given.theme];
  const numbers = given.rungs.flatMap(({ chance }) => (chance === undefined ? [] : [chanceColumn(chance)]));
  const plot = chancePlotFor(given.letters ?? 1, numbers);
  const rows = placedRows(given.rungs, plot, theme);
  const foot = rows.reduce((lowest, { y, height }) => Math.max(lowest, y - letterHalf + height), plotTop) + 4;
  const spots = rows.flatMap(({ rung, y }) =>
    rung.chance === undefined ? [] : [{ x: plot.x(rung.chance.mean), y, chance: rung.chance }],
  );
  const path = { fill: "none", stroke: theme.course, "stroke-width": 1.4, "stroke-dasharray": "3 3" };
  const drawn: SvgNode[] = [
    ...(spots.length > 1 ? [element("path", { "data-part": "way", d: pathThrough(spots), ...path })] : []),
    ...spots.flatMap((spot, at) =>
      dotWithInterval(spot.chance, { plot, theme, y: spot.y }, { isFirst: at === 0, isLast: at === spots.length - 1 }),
    ),
    ...rows.flatMap((row) => row.names.map(labelNode)),
    ...rows.flatMap(({ rung, y }) =>
      rung.chance === undefined ? [besideNumbers("not reckoned in", { plot, theme, y }, y + 4)] : [],
    ),
  ];
  return chanceFigure({ plot, theme, foot, widthPx: given.widthPx, alternative: alternativeOf(given) }, drawn);
}

function placedRows(rungs: readonly ChanceRung[], plot: ChancePlot, theme: Theme) {
  let at = plotTop;
  return rungs.map((rung) => {
    const name = rowName(rung, plot, theme);
    const row = { rung, y: at + letterHalf, height: name.height, names: name.at(at) };
    at += name.height + between;
    return row;
  });
}

interface Standing {
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

/** What was known beforehand is a diamond, every step a ring, where it stands now a full disc. */
function dotWithInterval(chance: Chance, place: RowPlace, { isFirst, isLast }: Standing): SvgNode[] {
  const { plot, theme, y } = place;
  const x = plot.x(chance.mean);
  const fill = isLast ? theme.ink : theme.surface;
  const ink = { stroke: theme.ink, "stroke-width": 1.6, fill };
  const diamond = [
    { x, y: y - 6 },
    { x: x + 6, y },
    { x, y: y + 6 },
    { x: x - 6, y },
  ];
  return [
    ...whisker(place, chance.interval, { ink: isLast ? theme.ink : theme.quiet, weight: isLast ? 2.2 : 1.6 }),
    isFirst
      ? element("path", { "data-part": "beforehand", d: pathThrough(diamond, true), ...ink })
      : element("circle", { "data-part": isLast ? "now" : "step", cx: x, cy: y, r: 4.6, ...ink }),
    rowNumber(chanceColumn(chance), place, isLast ? "semibold" : "regular"),
  ];
}

function alternativeOf({ that, rungs }: ChanceLadder): string {
  const lines = rungs.map(({ label, says, chance }) => {
    const about = [label, says ?? ""].filter((text) => text !== "").join(", ");
    return `${about}; ${chance === undefined ? "not reckoned in" : chanceText(chance)}.`;
  });
  return `Chance that ${that}, step by step. ${lines.join(" ")}`;
}
