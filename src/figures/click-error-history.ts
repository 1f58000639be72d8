import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** The click error of exercises over time. */
export interface ClickErrorHistory {
  /** In the order in which they were done; at least one. */
  readonly exercises: readonly {
    /** The day in words, as it is written under its mark. */
    readonly day: string;
    readonly sigmaPx: number;
    readonly low: number;
    readonly high: number;
    /** Sums use it now. */
    readonly isUsed: boolean;
  }[];
  /** What is assumed before anything was measured. */
  readonly assumedPx?: number;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 560, height: 212 };
const plot = { left: 48, right: 470, top: 34, bottom: 168 };
/** More than this many days would run into each other; then the first, the last and some between are written. */
const mostDays = 6;

/** A mark with its interval for each exercise; the one in use is filled, the assumed error a dashed line. */
export function clickErrorHistory(history: ClickErrorHistory): Figure {
  const theme = themes[history.theme];
  const { exercises, assumedPx } = history;
  const top = topOf(Math.max(...exercises.map(({ high }) => high), assumedPx ?? 0));
  const y = (px: number): number => plot.bottom - ((plot.bottom - plot.top) * px) / top;
  const x = (index: number): number =>
    plot.left + ((plot.right - plot.left) * (index + 0.5)) / Math.max(exercises.length, 3);
  return figureOf(view, history.widthPx, alternativeOf(history), [
    ...scaleNodes(top, y, theme),
    ...(assumedPx === undefined ? [] : assumedNodes(y(assumedPx), assumedPx, theme)),
    ...exercises.flatMap((one, index) => markNodes(one, { x: x(index), y, theme })),
    ...dayNodes(exercises, x, theme),
  ]);
}

type Done = ClickErrorHistory["exercises"][number];

/** The next of 1, 2, 5 times a power of ten that four steps of reach. */
function stepOf(highest: number): number {
  const power = 10 ** Math.floor(Math.log10(highest / 4));
  return ([1, 2, 5, 10].find((one) => one * power * 4 >= highest - 1e-9) ?? 10) * power;
}

const topOf = (highest: number): number => {
  const step = stepOf(Math.max(highest, 0.2));
  return Math.ceil(highest / step - 1e-9) * step || step;
};

function scaleNodes(top: number, y: (px: number) => number, theme: Theme): SvgNode[] {
  const step = stepOf(Math.max(top, 0.2));
  const heights = Array.from({ length: Math.round(top / step) + 1 }, (_, index) => index * step);
  const quiet = { size: 12, fill: theme.quiet } as const;
  return [
    ...heights.map((px) =>
      element("path", {
        d: pathThrough([
          { x: plot.left, y: y(px) },
          { x: plot.right, y: y(px) },
        ]),
        stroke: theme.hairline,
        "stroke-opacity": px === 0 ? 1 : 0.45,
        "stroke-width": 1,
        fill: "none",
      }),
    ),
    ...heights.map((px) =>
      labelNode({ ...quiet, text: numberText(px), x: plot.left - 8, y: y(px) + 4, anchor: "end" }),
    ),
    labelNode({ ...quiet, text: "click error, px (95 % interval)", x: 8, y: 15 }),
  ];
}

function assumedNodes(y: number, px: number, theme: Theme): SvgNode[] {
  return [
    element("path", {
      "data-part": "assumed",
      d: `M${plot.left} ${numberText(y)}H${plot.right}`,
      stroke: theme.quiet,
      "stroke-width": 1.2,
      "stroke-dasharray": "5 4",
      fill: "none",
    }),
    labelNode({
      ...{ text: `assumed, ${numberText(px)}`, x: plot.right + 8, y: y + 4, size: 12, fill: theme.quiet },
    }),
  ];
}

interface Place {
  readonly x: number;
  readonly y: (px: number) => number;
  readonly theme: Theme;
}

function markNodes({ sigmaPx, low, high, isUsed }: Done, { x, y, theme }: Place): SvgNode[] {
  const ink = isUsed ? theme.accent : theme.ink;
  const whisker = `M${x} ${y(low)}V${y(high)}M${x - 6} ${y(low)}H${x + 6}M${x - 6} ${y(high)}H${x + 6}`;
  return [
    element("path", { "data-part": "interval", d: whisker, stroke: ink, "stroke-width": 1.6, fill: "none" }),
    element("circle", {
      "data-part": isUsed ? "used" : "exercise",
      ...{ cx: x, cy: y(sigmaPx), r: 5.5, stroke: ink, "stroke-width": 2, fill: isUsed ? ink : theme.surface },
    }),
    labelNode({
      text: sigmaPx.toFixed(2),
      x: x + 11,
      y: y(sigmaPx) + 4,
      size: 13,
      fill: ink,
      weight: "semibold",
      halo: theme.ground,
    }),
  ];
}

function dayNodes(exercises: readonly Done[], x: (index: number) => number, theme: Theme): SvgNode[] {
  const every = Math.ceil(exercises.length / mostDays);
  return exercises.flatMap(({ day, isUsed }, index) => {
    if (index % every !== 0) return [];
    const label: TextLabel = {
      text: day,
      x: x(index),
      y: plot.bottom + 18,
      size: 12,
      fill: theme.quiet,
      anchor: "middle",
    };
    const used: TextLabel = { ...label, text: "in use", y: plot.bottom + 35, fill: theme.accent };
    return isUsed ? [labelNode(label), labelNode(used)] : [labelNode(label)];
  });
}

function alternativeOf({ exercises }: ClickErrorHistory): string {
  const count = exercises.length === 1 ? "1 exercise" : `${exercises.length} exercises`;
  const lines = exercises.map(
    ({ day, sigmaPx, low, high, isUsed }) =>
      `${day}: ${sigmaPx.toFixed(2)} px, ${low.toFixed(2)} to ${high.toFixed(2)}${isUsed ? ", in use" : ""}.`,
  );
  return `Click error of ${count}. ${lines.join(" ")}`;
}
