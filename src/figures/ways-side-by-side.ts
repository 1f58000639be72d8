import { letterSize, whisker } from "./chance-plot.ts";
import { type Chance, chanceColumn, chanceText } from "./chance-text.ts";
import { linesWithin } from "./lines-within.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One way that can be gone. */
export interface SideBySideWay {
  /** What it is called, as `take it out`. */
  readonly way: string;
  /** What it is taken to be, in a few words. */
  readonly words?: string | undefined;
  /** Absent where there is none, as after an extraction. */
  readonly healed?: Chance | undefined;
  readonly kept?: Chance | undefined;
  /** One figure serves this way and the one above: it is drawn once, so that nobody compares it with itself. */
  readonly keptAsAbove?: boolean | undefined;
  /** What the figures rest on, as `Spili 2005, 134/146; ...`. */
  readonly from: string;
}

/** Ways beside each other in two columns, periapical healing and tooth kept; in the order given, none of them best. */
export interface WaysSideBySide {
  readonly ways: readonly SideBySideWay[];
  /** Words over the columns; for a patient they are plainer. */
  readonly headings?: { readonly healed: string; readonly kept: string } | undefined;
  /** Words for a figure that is drawn in the row above; for a patient they are plainer. */
  readonly asAbove?: string | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const usualHeadings = { healed: "periapical healing", kept: "tooth kept" } as const;
const usualAsAbove = "the same figure as above";
const quietSize = 11.5;
const [line, top, between, columnGap] = [15, 28, 14, 26] as const;

interface Columns {
  readonly width: number;
  readonly names: number;
  readonly healed: Column;
  readonly kept: Column;
}
interface Column {
  readonly left: number;
  readonly right: number;
  readonly x: (share: number) => number;
}

function columnsFor(letters: number): Columns {
  const width = 720 / letters;
  const names = width * 0.27;
  const wide = (width - names - columnGap * 2 - 14) / 2;
  const column = (left: number): Column => ({ left, right: left + wide, x: (share) => left + wide * share });
  return { width, names, healed: column(names + columnGap), kept: column(names + columnGap * 2 + wide) };
}

/** One row a way: a bar from 0, a dot and its 95 % interval in each column, and below them what they rest on. */
export function waysSideBySide(given: WaysSideBySide): Figure {
  const theme = themes[given.theme];
  const columns = columnsFor(given.letters ?? 1);
  const headings = given.headings ?? usualHeadings;
  let at = top;
  const rows = given.ways.flatMap((way) => {
    const row = rowOf(way, { columns, theme, top: at, asAbove: given.asAbove ?? usualAsAbove });
    at = row.foot + between;
    return row.nodes;
  });
  const foot = at - between + 4;
  const nodes = [
    ...(["healed", "kept"] as const).flatMap((name) =>
      headingNodes(columns[name], { foot, heading: headings[name], theme }),
    ),
    ...rows,
  ];
  return figureOf({ width: columns.width, height: foot + 20 }, given.widthPx, alternativeOf(given, headings), nodes);
}

function headingNodes(
  { left, x }: Column,
  { foot, heading, theme }: { readonly foot: number; readonly heading: string; readonly theme: Theme },
): SvgNode[] {
  return [
    labelNode({ text: heading, x: left, y: 12, size: letterSize, fill: theme.ink, weight: "semibold" }),
    ...[0, 0.5, 1].map((share) =>
      labelNode({
        ...{ text: share === 1 ? "100 %" : `${100 * share}`, x: x(share), y: foot + 15, size: quietSize },
        ...{ fill: theme.quiet, anchor: share === 1 ? "end" : "middle" },
      }),
    ),
  ];
}

/** A hairline at every quarter of one row; what a way rests on stands between the rows and is not crossed. */
const quarters = ({ x }: Column, y: number, theme: Theme): SvgNode[] =>
  [0, 0.25, 0.5, 0.75, 1].map((share, at) =>
    element("path", {
      d: `M${numberText(x(share))} ${numberText(y - 10)}v20`,
      ...{ stroke: theme.hairline, "stroke-opacity": at % 2 === 0 ? 0.9 : 0.5, "stroke-width": 1, fill: "none" },
    }),
  );

interface RowPlace {
  readonly columns: Columns;
  readonly theme: Theme;
  readonly top: number;
  readonly asAbove: string;
}

function rowOf(way: SideBySideWay, place: RowPlace) {
  const { columns, theme } = place;
  const called = linesWithin(way.way, columns.names, letterSize).map((text) => ({
    ...{ text, size: letterSize, fill: theme.ink },
    weight: "semibold" as const,
  }));
  const says = quietLines(way.words, columns.names, theme);
  const names = [...called, ...says].map((label, at): TextLabel => ({ ...label, x: 0, y: place.top + 11 + at * line }));
  const namesFoot = place.top + names.length * line;
  const fromTop = Math.max(namesFoot, place.top + 38) + 1;
  const from = quietLines(way.from, columns.width - 4, theme).map(
    (label, at): TextLabel => ({ ...label, x: 0, y: fromTop + 11 + at * 14 }),
  );
  const nodes = [
    ...[...names, ...from].map(labelNode),
    ...chanceNodes(way.healed, columns.healed, { ...place, part: "healed" }),
    ...(way.keptAsAbove === true
      ? asAboveNodes(columns.kept, place)
      : chanceNodes(way.kept, columns.kept, { ...place, part: "kept" })),
  ];
  return { nodes, foot: fromTop + from.length * 14 };
}

const quietLines = (text: string | undefined, width: number, theme: Theme) =>
  text === undefined || text === ""
    ? []
    : linesWithin(text, width, quietSize).map((one) => ({ text: one, size: quietSize, fill: theme.quiet }));

/** Words where the figure above is meant; no dot. */
function asAboveNodes({ left, right }: Column, { theme, top: rowTop, asAbove }: RowPlace): SvgNode[] {
  return quietLines(asAbove, right - left, theme).map((label, at) =>
    labelNode({ ...label, x: left, y: rowTop + 13 + at * line }),
  );
}

/** A round dot for healing, a square one for the tooth that is there: they are not the same thing. */
function chanceNodes(
  chance: Chance | undefined,
  column: Column,
  { theme, top: rowTop, part, columns }: Omit<RowPlace, "asAbove"> & { readonly part: "healed" | "kept" },
): SvgNode[] {
  const y = rowTop + 9;
  const number = { x: column.left, y: y + 24, size: letterSize } as const;
  const lines = quarters(column, y, theme);
  if (chance === undefined) return [...lines, labelNode({ ...number, text: "none", fill: theme.quiet })];
  const x = column.x(chance.mean);
  const plot = { ...columns, ...column, numbers: columns.width };
  const pen = { fill: theme.ink, stroke: theme.surface, "stroke-width": 1 };
  return [
    ...lines,
    element("rect", {
      "data-part": `${part}-bar`,
      ...{ x: column.left, y: y - 5, width: x - column.left, height: 10, fill: theme.course, "fill-opacity": 0.28 },
    }),
    ...whisker({ plot, theme, y }, chance.interval, { ink: theme.ink, weight: 1.8 }),
    part === "healed"
      ? element("circle", { "data-part": part, cx: x, cy: y, r: 5, ...pen })
      : element("rect", { "data-part": part, x: x - 4.5, y: y - 4.5, width: 9, height: 9, ...pen }),
    labelNode({ ...number, text: chanceColumn(chance), fill: theme.ink, weight: "medium" }),
  ];
}

function alternativeOf(
  { ways, asAbove = usualAsAbove }: WaysSideBySide,
  headings: { readonly healed: string; readonly kept: string },
): string {
  const lines = ways.map(({ way, words, healed, kept, keptAsAbove, from }) => {
    const said = (chance: Chance | undefined): string => (chance === undefined ? "none" : chanceText(chance));
    const what = words === undefined || words === "" ? "" : `, ${words}`;
    return `${way}${what}: ${headings.healed} ${said(healed)}, ${headings.kept} ${keptAsAbove === true ? asAbove : said(kept)}; from ${from}.`;
  });
  return `Ways side by side, in no order of worth. ${lines.join(" ")}`;
}
