import { element, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** Where a graph stands in its drawing, how far its values go from 0 (or from `least`), and what its axes are called. */
export interface AxesWish {
  readonly plot: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly least?: { readonly across: number };
  readonly most: { readonly across: number; readonly up: number };
  readonly words: { readonly up: string; readonly across: string };
}

/** A graph's axes: from values to spots, and the values that have a tick. */
export interface Axes extends AxesWish {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly ticks: { readonly across: readonly number[]; readonly up: readonly number[] };
}

/** Axes whose upper end is a round value; across they end where the values do. */
export function axesOf(wish: AxesWish): Axes {
  const { plot, most } = wish;
  const from = wish.least?.across ?? 0;
  const width = Math.max(1e-6, most.across - from);
  const step = niceStep(most.up / 4);
  const top = Math.ceil(most.up / step - 1e-9) * step;
  return {
    ...wish,
    x: (value) => plot.left + ((plot.right - plot.left) * (value - from)) / width,
    y: (value) => plot.bottom - ((plot.bottom - plot.top) * Math.min(top, Math.max(0, value))) / top,
    ticks: { across: ticksBetween(from, most.across), up: ticksBetween(0, top) },
  };
}

/** The next of 1, 2, 5 times a power of ten. */
function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5, 10].find((one) => one * power >= least - 1e-12) ?? 10) * power;
}

function ticksBetween(from: number, to: number): readonly number[] {
  const step = niceStep(Math.max(1e-6, to - from) / 5);
  const first = Math.ceil(from / step - 1e-9);
  return Array.from({ length: Math.floor(to / step + 1e-9) - first + 1 }, (_, at) => (first + at) * step);
}

/** The axes as hairlines with their values and names. */
export function plotted({ plot, x, y, ticks, words }: Axes, theme: Theme): readonly SvgNode[] {
  const quiet = { size: 11.5, fill: theme.quiet } as const;
  const labels: TextLabel[] = [
    ...ticks.up.map(
      (value): TextLabel => ({ ...quiet, text: numberText(value), x: plot.left - 7, y: y(value) + 4, anchor: "end" }),
    ),
    ...ticks.across.map(
      (value): TextLabel => ({ ...quiet, text: signed(value), x: x(value), y: plot.bottom + 16, anchor: "middle" }),
    ),
    { ...quiet, text: words.up, x: 4, y: 13 },
    { ...quiet, text: words.across, ...underneath(words.across, plot.right), y: plot.bottom + 33 },
  ];
  return [
    ...ticks.up.map((value) =>
      line({ x: plot.left, y: y(value) }, { x: plot.right, y: y(value) }, theme, value === 0 ? 1 : 0.45),
    ),
    ...ticks.across.map((value) =>
      line({ x: x(value), y: plot.bottom }, { x: x(value), y: plot.bottom + 4 }, theme, 1),
    ),
    ...labels.map(labelNode),
  ];
}

/** Right below the plot's end; words that are wider than the plot begin at the drawing's edge. */
const underneath = (words: string, right: number): Pick<TextLabel, "x" | "anchor"> =>
  textWidth(words, 11.5) > right - 4 ? { x: 4 } : { x: right, anchor: "end" };

const signed = (value: number): string => numberText(value).replace("-", "−");

const line = (from: Spot, to: Spot, theme: Theme, opacity: number): SvgNode =>
  element("path", {
    d: pathThrough([from, to]),
    stroke: theme.hairline,
    "stroke-opacity": opacity,
    "stroke-width": 1,
    fill: "none",
  });
