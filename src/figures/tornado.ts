import { letterSize, rowName } from "./chance-plot.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One input moved over its own interval, and what that makes of the result. */
export interface TornadoDriver {
  readonly name: string;
  /** The ends of its interval, in words or as numbers. */
  readonly low: string | number;
  readonly high: string | number;
  /** The result with the input at each end. */
  readonly atLow: number;
  readonly atHigh: number;
}

/** What drives a result: each input moved alone. */
export interface Tornado {
  /** What the result is, as `healed when taken out, less healed when left`. */
  readonly of: string;
  /** With every input at its middle. */
  readonly base: number;
  readonly drivers: readonly TornadoDriver[];
  /** Of the result, as `points` of percent. */
  readonly unit: string;
  readonly theme: ThemeName;
  readonly widthPx: number;
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
}

const top = 30;

/** A bar for each input from the result at its low end to that at its high end, the widest first, round the base. */
export function tornado(given: Tornado): Figure {
  const theme = themes[given.theme];
  const drivers = [...given.drivers].sort((a, b) => spanOf(b) - spanOf(a));
  const width = 640 / (given.letters ?? 1);
  const [names, room] = [width * 0.34, 46];
  const values = [given.base, 0, ...drivers.flatMap(({ atLow, atHigh }) => [atLow, atHigh])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const [left, right] = [names + 14 + room, width - 4 - room];
  const x = (value: number): number => left + ((right - left) * (value - least)) / Math.max(1e-9, most - least);
  let at = top;
  const rows = drivers.flatMap((driver) => {
    const name = rowName({ label: driver.name, says: rangeWords(driver) }, { names }, theme);
    const nodes = [...name.at(at).map(labelNode), ...barNodes(driver, { x, y: at + 12, theme })];
    at += Math.max(name.height, 26) + 8;
    return nodes;
  });
  const foot = at;
  const nodes = [
    ...upright(x(0), foot, { stroke: theme.hairline, "stroke-width": 1 }),
    ...upright(x(given.base), foot, { "data-part": "base", stroke: theme.ink, "stroke-width": 1.4 }),
    ...rows,
    ...headNodes(given, { x, width, foot, theme }),
  ];
  return figureOf({ width, height: foot + 22 }, given.widthPx, alternativeOf(given, drivers), nodes);
}

const spanOf = ({ atLow, atHigh }: TornadoDriver): number => Math.abs(atHigh - atLow);
const endText = (end: string | number): string => (typeof end === "number" ? numberText(end) : end);
const rangeWords = ({ low, high }: TornadoDriver): string => `${endText(low)} to ${endText(high)}`;
const signed = (value: number): string => numberText(value).replace("-", "−");

const upright = (x: number, foot: number, pen: Readonly<Record<string, string | number>>): SvgNode[] => [
  element("path", { d: `M${numberText(x)} ${top - 6}V${numberText(foot)}`, fill: "none", ...pen }),
];

interface BarPlace {
  readonly x: (value: number) => number;
  readonly y: number;
  readonly theme: Theme;
}

/** The end that belongs to the input's high value is filled, the other open, so that the way of its pull is seen. */
function barNodes({ atLow, atHigh }: TornadoDriver, { x, y, theme }: BarPlace): SvgNode[] {
  const [from, to] = [Math.min(atLow, atHigh), Math.max(atLow, atHigh)];
  const bar = { x: x(from), y: y - 6, width: Math.max(1, x(to) - x(from)), height: 12 };
  const end = (value: number, fill: string, part: string): SvgNode =>
    element("circle", { "data-part": part, cx: x(value), cy: y, r: 4.2, fill, stroke: theme.ink, "stroke-width": 1.4 });
  const number = { size: letterSize, fill: theme.ink, y: y + 4.3 } as const;
  return [
    element("rect", { "data-part": "bar", ...bar, fill: theme.course, "fill-opacity": 0.3 }),
    end(atLow, theme.surface, "at-low"),
    end(atHigh, theme.ink, "at-high"),
    labelNode({ ...number, text: signed(from), x: x(from) - 8, anchor: "end" }),
    labelNode({ ...number, text: signed(to), x: x(to) + 8 }),
  ];
}

interface HeadPlace {
  readonly x: (value: number) => number;
  readonly width: number;
  readonly foot: number;
  readonly theme: Theme;
}

function headNodes({ base, unit }: Tornado, { x, width, foot, theme }: HeadPlace): SvgNode[] {
  const text = `at their middle ${signed(base)} ${unit}`;
  const half = textWidth(text, letterSize, "semibold") / 2;
  const at = Math.min(width - 2 - half, Math.max(half + 2, x(base)));
  const key = { size: 11.5, fill: theme.quiet, y: foot + 15 } as const;
  return [
    labelNode({ text, x: at, y: 14, size: letterSize, fill: theme.ink, weight: "semibold", anchor: "middle" }),
    labelNode({ ...key, text: "open: with the input at its low end, filled: at its high end", x: 0 }),
  ];
}

function alternativeOf({ of, base, unit }: Tornado, drivers: readonly TornadoDriver[]): string {
  const lines = drivers.map(
    (driver) =>
      `${driver.name} from ${rangeWords(driver)}: ${signed(driver.atLow)} to ${signed(driver.atHigh)} ${unit}.`,
  );
  return `What drives the result: ${of}. With every input at its middle ${signed(base)} ${unit}. ${lines.join(" ")}`;
}
