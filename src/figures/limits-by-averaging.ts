import { ratioFigure, timesText } from "../core/times-text.ts";
import { rowName } from "./chance-plot.ts";
import type { Ends } from "./chance-text.ts";
import { type LogAxis, logAxis, powerText, type Standing, standingMark, standingWords } from "./limit-marks.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A value in parts of a limit. */
export interface InLimit {
  readonly ratio: number;
  /** The least and the most over the rates of evaporation. */
  readonly within?: Ends | undefined;
  readonly stands: Standing;
}

/** One limit in one zone. */
export interface LimitOfAir extends InLimit {
  /** Whose it is, as `NIOSH (United States) 2005`. */
  readonly label: string;
  /** What is held against it, as `mean over 60 min near the mouth, 0.28 of 2 ppm`. */
  readonly says: string;
  /** The same if something were otherwise. */
  readonly supposed?: InLimit | undefined;
}

/** Limits beside each other, whatever their averaging time, as parts of each. */
export interface LimitsByAveraging {
  /** The strictest first. */
  readonly rows: readonly LimitOfAir[];
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 640;
const names = 232;
const left = names + 20;
const top = 34;
const letter = 12.5;
const small = 11.5;

/** A row a limit with its mark on an axis in powers of ten, over a line where the value is the limit. */
export function limitsByAveraging(given: LimitsByAveraging): Figure {
  const theme = themes[given.theme];
  const words = given.rows.flatMap(numbersOf);
  const right = width - 12 - Math.max(96, ...words.map(({ text }) => textWidth(text, letter, "semibold")));
  const axis = logAxis([1, ...given.rows.flatMap(valuesOf)], left, right);
  let at = top;
  const rows = given.rows.flatMap((row) => {
    const name = rowName(row, { names }, theme);
    const numbers = numbersOf(row);
    const nodes = [
      ...name.at(at).map(labelNode),
      ...marksOf(row, axis, at + 8, theme),
      ...numberNodes(numbers, at, theme),
    ];
    at += Math.max(name.height, numbers.length * 15) + 12;
    return nodes;
  });
  const supposes = given.rows.some(({ supposed }) => supposed !== undefined);
  const nodes = [...axisNodes(axis, at, theme), ...rows, ...legendNodes(at + 40, supposes, theme)];
  return figureOf({ width, height: at + 50 }, given.widthPx, alternativeOf(given), nodes);
}

const valuesOf = ({ ratio, within, supposed }: LimitOfAir): number[] => [
  ...[ratio, within?.low ?? ratio, within?.high ?? ratio],
  ...(supposed === undefined
    ? []
    : [supposed.ratio, supposed.within?.low ?? supposed.ratio, supposed.within?.high ?? supposed.ratio]),
];

interface NumberLine {
  readonly text: string;
  readonly weight: "semibold" | "regular";
  readonly quiet: boolean;
}

function numbersOf(row: LimitOfAir): NumberLine[] {
  const { supposed } = row;
  return [
    { text: `${ratioFigure(row.ratio)}, ${standingWords[row.stands]}`, weight: "semibold", quiet: false },
    ...(row.within === undefined ? [] : [{ text: rangeText(row.within), weight: "regular", quiet: true } as const]),
    ...(supposed === undefined
      ? []
      : [
          {
            text: `if: ${ratioFigure(supposed.ratio)}, ${standingWords[supposed.stands]}`,
            weight: "regular",
            quiet: false,
          } as const,
        ]),
  ];
}

const rangeText = ({ low, high }: Ends): string => {
  const [from, to] = [ratioFigure(low), ratioFigure(high)];
  return from === to ? "at every rate" : `${from} to ${to}`;
};

const numberNodes = (lines: readonly NumberLine[], at: number, theme: Theme): SvgNode[] =>
  lines.map(({ text, weight, quiet }, index) =>
    labelNode({
      ...{ text, weight, x: width - 4, y: at + 12 + index * 15, anchor: "end" },
      ...{ size: quiet ? small : letter, fill: quiet ? theme.quiet : theme.ink },
    }),
  );

function marksOf(row: LimitOfAir, axis: LogAxis, y: number, theme: Theme): SvgNode[] {
  const { supposed } = row;
  return [
    ...rangeLine(row.within, axis, { y, stroke: theme.ink, dash: undefined }),
    ...standingMark(row.stands, { x: axis.x(row.ratio), y }, theme),
    ...(supposed === undefined
      ? []
      : [
          ...rangeLine(supposed.within, axis, { y: y + 16, stroke: theme.quiet, dash: "2 3" }),
          ...supposedMark(axis.x(supposed.ratio), y + 16, theme),
        ]),
  ];
}

const supposedMark = (x: number, y: number, theme: Theme): SvgNode[] => [
  element("path", {
    "data-part": "supposed",
    d: `M${numberText(x)} ${numberText(y - 5)}L${numberText(x + 5)} ${numberText(y + 4)}H${numberText(x - 5)}Z`,
    ...{ fill: theme.surface, stroke: theme.quiet, "stroke-width": 1.6 },
  }),
];

function rangeLine(
  within: Ends | undefined,
  axis: LogAxis,
  line: { readonly y: number; readonly stroke: string; readonly dash: string | undefined },
): SvgNode[] {
  if (within === undefined) return [];
  const [from, to] = [axis.x(within.low), axis.x(within.high)].map(numberText);
  const ends = [from, to].map((x) => `M${x} ${numberText(line.y - 4)}v8`).join("");
  return [
    element("path", {
      "data-part": "range",
      d: `M${from} ${numberText(line.y)}H${to}${ends}`,
      ...{ stroke: line.stroke, "stroke-width": 1.8, "stroke-dasharray": line.dash, fill: "none" },
    }),
  ];
}

function axisNodes(axis: LogAxis, foot: number, theme: Theme): SvgNode[] {
  const one = axis.x(1);
  const words = "the limit";
  const half = textWidth(words, letter, "semibold") / 2;
  return [
    ...axis.ticks.flatMap((tick) => [
      element("path", {
        d: `M${numberText(axis.x(tick))} ${top - 8}V${numberText(foot)}`,
        ...{ stroke: theme.hairline, "stroke-opacity": 0.6, "stroke-width": 1, fill: "none" },
      }),
      labelNode({
        text: powerText(tick),
        x: axis.x(tick),
        y: foot + 15,
        size: small,
        fill: theme.quiet,
        anchor: "middle",
      }),
    ]),
    element("path", {
      "data-part": "limit",
      d: `M${numberText(one)} ${top - 12}V${numberText(foot)}`,
      ...{ stroke: theme.ink, "stroke-width": 2, fill: "none" },
    }),
    labelNode({
      ...{ text: words, x: Math.min(width - 4 - half, Math.max(left + half, one)), y: 15 },
      ...{ size: letter, fill: theme.ink, weight: "semibold", anchor: "middle" },
    }),
  ];
}

function legendNodes(y: number, supposes: boolean, theme: Theme): SvgNode[] {
  const shown: readonly Standing[] = ["below", "above", "dependsOnRate"];
  const names = shown.map((one) => (one === "above" ? "at or above" : standingWords[one]));
  let x = 8;
  const nodes = shown.flatMap((one, index) => {
    const text = names[index] ?? "";
    const at = x;
    x += 12 + textWidth(text, small) + 26;
    return [
      ...standingMark(one, { x: at, y: y - 4 }, theme),
      labelNode({ text, x: at + 12, y, size: small, fill: theme.quiet }),
    ];
  });
  if (!supposes) return nodes;
  return [
    ...nodes,
    ...supposedMark(x, y - 4, theme),
    labelNode({ text: "what if", x: x + 12, y, size: small, fill: theme.quiet }),
  ];
}

function alternativeOf({ rows }: LimitsByAveraging): string {
  const lines = rows.map(({ label, says, supposed, ...row }) => {
    const range = row.within === undefined ? "" : `, over the rates ${rangeText(row.within)}`;
    const otherwise =
      supposed === undefined ? "" : `; what if: ${ratioFigure(supposed.ratio)}, ${standingWords[supposed.stands]}`;
    return `${label}: ${says}; ${timesText(row.ratio)} it, ${standingWords[row.stands]}${range}${otherwise}.`;
  });
  return `Each limit with what is held against it, the strictest first. ${rows.length === 0 ? "No limit was read." : lines.join(" ")}`;
}
