import { letterSize, rowName } from "./chance-plot.ts";
import { percentText } from "./chance-text.ts";
import { mmRuler } from "./mm-ruler.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** Lengths of fragments in one published series, mm. */
export interface FragmentSeries {
  readonly mean: number;
  readonly sd: number;
  /** Absent where it is not printed. */
  readonly n?: number | undefined;
  readonly source: string;
}

/** A fragment's length among published ones. */
export interface FragmentAmongPublished {
  readonly mm: number;
  /** Share of published lengths that are shorter, 0 to 1. */
  readonly percentile: number;
  readonly series: readonly FragmentSeries[];
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const top = 28;
const rowHeight = 34;

/** A row for each series, its mean and two standard deviations each way, with this fragment as a line across all. */
export function fragmentAmongPublished(given: FragmentAmongPublished): Figure {
  const theme = themes[given.theme];
  const width = 560 / (given.letters ?? 1);
  const names = width * 0.3;
  const [left, right] = [names + 14, width - 18];
  const mostMm = Math.ceil(Math.max(5, given.mm * 1.1, ...given.series.map(({ mean, sd }) => mean + 2 * sd)));
  const x = (mm: number): number => left + ((right - left) * Math.max(0, mm)) / mostMm;
  let at = top;
  const rows = given.series.flatMap((one) => {
    const name = rowName({ label: one.source, says: seriesWords(one) }, { names }, theme);
    const nodes = [...name.at(at).map(labelNode), ...seriesNodes(one, x, { y: at + 12, theme })];
    at += Math.max(rowHeight, name.height + 6);
    return nodes;
  });
  const nodes = [
    ...rows,
    ...fragmentNodes(given, { x, foot: at, width, theme }),
    ...mmRuler({ x, mostMm, y: at, perMm: (right - left) / mostMm }, theme),
    labelNode({ text: "length of the piece, mm", x: 0, y: at + 19, size: 11.5, fill: theme.quiet }),
  ];
  return figureOf({ width, height: at + 28 }, given.widthPx, alternativeOf(given), nodes);
}

const seriesWords = ({ mean, sd, n }: FragmentSeries): string =>
  `${numberText(mean)} mm, SD ${numberText(sd)}${n === undefined ? "" : `, n ${n}`}`;

function seriesNodes(
  { mean, sd }: FragmentSeries,
  x: (mm: number) => number,
  { y, theme }: { readonly y: number; readonly theme: Theme },
): SvgNode[] {
  const bar = (times: number, high: number, opacity: number): SvgNode =>
    element("rect", {
      "data-part": `sd-${times}`,
      ...{ x: x(mean - times * sd), y: y - high / 2, width: x(mean + times * sd) - x(mean - times * sd), height: high },
      ...{ fill: theme.course, "fill-opacity": opacity },
    });
  return [
    bar(2, 6, 0.3),
    bar(1, 12, 0.45),
    element("circle", { "data-part": "mean", cx: x(mean), cy: y, r: 4.4, fill: theme.ink }),
  ];
}

interface LinePlace {
  readonly x: (mm: number) => number;
  readonly foot: number;
  readonly width: number;
  readonly theme: Theme;
}

const fragmentWords = ({ mm, percentile }: FragmentAmongPublished): string =>
  `this piece ${mm.toFixed(1)} mm: ${percentText(percentile)} % are shorter`;

function fragmentNodes(given: FragmentAmongPublished, { x, foot, width, theme }: LinePlace): SvgNode[] {
  const text = fragmentWords(given);
  const half = textWidth(text, letterSize, "semibold") / 2;
  return [
    element("path", {
      "data-part": "fragment",
      d: `M${numberText(x(given.mm))} ${top - 8}V${numberText(foot)}`,
      ...{ stroke: theme.accent, "stroke-width": 2, fill: "none" },
    }),
    labelNode({
      ...{ text, x: Math.max(half + 2, Math.min(width - 4 - half, x(given.mm))), y: 14, size: letterSize },
      ...{ fill: theme.accent, weight: "semibold", anchor: "middle" },
    }),
  ];
}

function alternativeOf(given: FragmentAmongPublished): string {
  const lines = given.series.map((one) => `${one.source}: ${seriesWords(one)}.`);
  return `Length of the piece among published ones. ${given.mm.toFixed(1)} mm; ${percentText(given.percentile)} % are shorter, were each series normal.${lines.map((text) => ` ${text}`).join("")}`;
}
