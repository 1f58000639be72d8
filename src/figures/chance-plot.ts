import type { Ends } from "./chance-text.ts";
import { linesWithin } from "./lines-within.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, type TextWeight, textWidth } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** A plot of chances between a column of names and a column of numbers: one row below the other, 0 to 100 % across. */
export interface ChancePlot {
  readonly width: number;
  /** Where the names end, the plot begins and ends, and the numbers end. */
  readonly names: number;
  readonly left: number;
  readonly right: number;
  readonly numbers: number;
  readonly x: (share: number) => number;
}

/** Where a row is drawn: `y` is the middle of its first line. */
export interface RowPlace {
  readonly plot: ChancePlot;
  readonly theme: Theme;
  readonly y: number;
}

/** The size of letters in these charts, and what stands back beside them. */
export const letterSize = 12.5;
const quietSize = 11.5;
/** Where the first row begins. */
export const plotTop = 4;
/** How far the middle of a row's first line lies below the row's top. */
export const letterHalf = 7.5;
const lineHeight = 15;
const usualWidth = 480;
const gap = 12;

/** The columns for letters of a size: what stands in the number column says how wide it must be. */
export function chancePlotFor(letters: number, numbers: readonly string[]): ChancePlot {
  const width = usualWidth / letters;
  const widest = Math.max(0, ...numbers.map((text) => textWidth(text, letterSize, "semibold")));
  const right = width - 4 - widest - gap;
  const names = Math.round(width * 0.36);
  const left = names + gap;
  return { width, names, left, right, numbers: width - 4, x: (share) => left + (right - left) * share };
}

interface ChanceChart {
  readonly plot: ChancePlot;
  readonly theme: Theme;
  /** Where the last row ends. */
  readonly foot: number;
  readonly widthPx: number;
  readonly alternative: string;
}

/** What is drawn in a plot as a figure, over a hairline at every quarter and its value below. */
export function chanceFigure(
  { plot, theme, foot, widthPx, alternative }: ChanceChart,
  drawn: readonly SvgNode[],
): Figure {
  const nodes = [...quarterLines(plot, foot, theme), ...drawn];
  return figureOf({ width: plot.width, height: foot + 22 }, widthPx, alternative, nodes);
}

const marks = [0, 0.25, 0.5, 0.75, 1];

function quarterLines(plot: ChancePlot, foot: number, theme: Theme): SvgNode[] {
  return marks.flatMap((share, at) => [
    element("path", {
      d: `M${numberText(plot.x(share))} ${numberText(plotTop)}V${numberText(foot)}`,
      ...{ stroke: theme.hairline, "stroke-opacity": at % 2 === 0 ? 0.8 : 0.4, "stroke-width": 1, fill: "none" },
    }),
    ...(at % 2 === 0
      ? [labelNode({ ...quiet(theme), text: axisText(share), x: plot.x(share), y: foot + 15, anchor: "middle" })]
      : []),
  ]);
}

const axisText = (share: number): string => (share === 1 ? "100 %" : numberText(100 * share));
const quiet = (theme: Theme) => ({ size: quietSize, fill: theme.quiet }) as const;

/** An interval as a line with ends across it; nothing where none is known. */
export function whisker(
  { plot, y }: RowPlace,
  interval: Ends | undefined,
  line: { readonly ink: string; readonly weight: number },
): SvgNode[] {
  if (interval === undefined) return [];
  const [from, to] = [plot.x(interval.low), plot.x(interval.high)].map(numberText);
  const ends = [from, to].map((x) => `M${x} ${numberText(y - 4)}v8`).join("");
  const d = `M${from} ${numberText(y)}H${to}${ends}`;
  return [element("path", { "data-part": "interval", d, stroke: line.ink, "stroke-width": line.weight, fill: "none" })];
}

/** A row's number at the right. */
export const rowNumber = (text: string, { plot, theme, y }: RowPlace, weight: TextWeight = "regular"): SvgNode =>
  labelNode({ text, x: plot.numbers, y: y + 4.3, size: letterSize, fill: theme.ink, anchor: "end", weight });

/** Quieter words in the column of numbers. */
export const besideNumbers = (text: string, { plot, theme }: RowPlace, baseline: number): SvgNode =>
  labelNode({ ...quiet(theme), text, x: plot.numbers, y: baseline, anchor: "end" });

/** What a row is called, with a quieter line below it. */
export interface RowWords {
  readonly label: string;
  readonly says?: string | undefined;
}

/** The lines of a row's name, each with how far its baseline lies below the row's top, and the height they take. */
export function rowName(
  { label, says }: RowWords,
  plot: Pick<ChancePlot, "names">,
  theme: Theme,
): { readonly height: number; readonly at: (top: number) => TextLabel[] } {
  const called = linesWithin(label, plot.names, letterSize).map(
    (text) => ({ text, size: letterSize, fill: theme.ink, weight: "medium" }) as const,
  );
  const quieter = says === undefined || says === "" ? [] : linesWithin(says, plot.names, quietSize);
  const lines = [...called, ...quieter.map((text) => ({ text, ...quiet(theme) }))];
  return {
    height: lines.length * lineHeight,
    at: (top) => lines.map((line, index) => ({ ...line, x: 0, y: top + 11.5 + index * lineHeight })),
  };
}
