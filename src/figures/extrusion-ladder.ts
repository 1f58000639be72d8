import { timesText } from "../core/times-text.ts";
import { rowName } from "./chance-plot.ts";
import { type LogAxis, logAxis, powerText } from "./limit-marks.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A dose that something is held against. */
interface DoseRung {
  /** What kind of dose it is, as `daily reference dose`. */
  readonly label: string;
  /** Its source and whether it was read, as `EPA 2001, from memory`. */
  readonly says: string;
  readonly mgPerKg: number;
}

/** What passed the foramen, held against doses, with what is often said of it. */
export interface ExtrusionLadder {
  /** In mg for a kg of body mass. */
  readonly passedMgPerKg: number;
  /** The lowest first. */
  readonly rungs: readonly DoseRung[];
  /** The toxic doses that a saying without a source would imply. */
  readonly tradition: { readonly low: number; readonly high: number };
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 640;
const names = 232;
const left = names + 20;
const top = 36;
const letter = 12.5;
const small = 11.5;

/** What passed as a line across, each dose as a diamond on an axis in powers of ten, the saying as a hatched band. */
export function extrusionLadder(given: ExtrusionLadder): Figure {
  const theme = themes[given.theme];
  const { passedMgPerKg: passed, rungs, tradition } = given;
  const margins = rungs.map(({ mgPerKg }) => marginWords(mgPerKg, passed));
  const right = width - 24 - Math.max(110, ...margins.map((text) => textWidth(text, letter, "semibold")));
  const axis = logAxis([passed, tradition.low, tradition.high, ...rungs.map(({ mgPerKg }) => mgPerKg)], left, right);
  let at = top;
  const rows = rungs.flatMap((rung, index) => {
    const name = rowName(rung, { names }, theme);
    const nodes = [
      ...name.at(at).map(labelNode),
      ...rungNodes(rung, { axis, y: at + 8, theme, passed }),
      numberNode(margins[index] ?? "", at, theme),
    ];
    at += Math.max(name.height, 18) + 12;
    return nodes;
  });
  const said = rowName(
    { label: "what is often said", says: "1,000 to 15,000 times below; common practice, no source" },
    { names },
    theme,
  );
  const band = [
    ...said.at(at).map(labelNode),
    ...bandNodes(tradition, { axis, y: at + 8, theme }),
    numberNode("no source", at, theme),
  ];
  at += said.height + 8;
  const nodes = [...axisNodes(axis, at, theme), ...passedNodes(passed, axis, at, theme), ...rows, ...band];
  return figureOf({ width, height: at + 38 }, given.widthPx, alternativeOf(given), nodes);
}

/** How far what passed lies from a dose. */
function marginWords(mgPerKg: number, passed: number): string {
  const ratio = passed / mgPerKg;
  return ratio > 1 ? `${timesText(ratio)} it` : timesText(ratio);
}

interface RungPlace {
  readonly axis: LogAxis;
  readonly y: number;
  readonly theme: Theme;
}

/** The gap from what passed to the dose; in the colour of "look here" where the dose is passed. */
function rungNodes(
  { mgPerKg }: DoseRung,
  { axis, y, theme, passed }: RungPlace & { readonly passed: number },
): SvgNode[] {
  const [from, to] = [axis.x(passed), axis.x(mgPerKg)];
  const isOver = passed > mgPerKg;
  const ink = isOver ? theme.accent : theme.ink;
  const corners = [
    { x: to, y: y - 7 },
    { x: to + 7, y },
    { x: to, y: y + 7 },
    { x: to - 7, y },
  ];
  return [
    element("path", {
      "data-part": isOver ? "over" : "margin",
      d: `M${numberText(from)} ${numberText(y)}H${numberText(to)}`,
      ...{ stroke: ink, "stroke-width": isOver ? 4 : 1.6, fill: "none" },
    }),
    element("path", {
      "data-part": "dose",
      d: pathThrough(corners, true),
      fill: isOver ? ink : theme.surface,
      stroke: ink,
      "stroke-width": 1.6,
    }),
  ];
}

function bandNodes({ low, high }: ExtrusionLadder["tradition"], { axis, y, theme }: RungPlace): SvgNode[] {
  const [from, to] = [axis.x(low), axis.x(high)];
  const count = Math.max(1, Math.floor((to - from) / 6));
  const hatch = Array.from({ length: count }, (_, at) => from + at * 6)
    .map((x) => `M${numberText(x)} ${numberText(y + 7)}L${numberText(Math.min(to, x + 6))} ${numberText(y - 7)}`)
    .join("");
  const quiet = { stroke: theme.quiet, "stroke-width": 1.2 };
  return [
    element("rect", {
      "data-part": "tradition",
      x: from,
      y: y - 7,
      width: to - from,
      height: 14,
      fill: "none",
      ...quiet,
      "stroke-dasharray": "3 3",
    }),
    element("path", { d: hatch, fill: "none", ...quiet }),
  ];
}

const numberNode = (text: string, at: number, theme: Theme): SvgNode =>
  labelNode({ text, x: width - 4, y: at + 12, size: letter, fill: theme.ink, weight: "semibold", anchor: "end" });

function axisNodes(axis: LogAxis, foot: number, theme: Theme): SvgNode[] {
  const quiet = { size: small, fill: theme.quiet } as const;
  return [
    ...axis.ticks.flatMap((tick) => [
      element("path", {
        d: `M${numberText(axis.x(tick))} ${top - 8}V${numberText(foot)}`,
        ...{ stroke: theme.hairline, "stroke-opacity": 0.6, "stroke-width": 1, fill: "none" },
      }),
      labelNode({ ...quiet, text: powerText(tick), x: axis.x(tick), y: foot + 15, anchor: "middle" }),
    ]),
    labelNode({ ...quiet, text: "mg for each kg of body mass", x: left, y: foot + 31 }),
  ];
}

function passedNodes(passed: number, axis: LogAxis, foot: number, theme: Theme): SvgNode[] {
  const text = `taken to have passed: ${figureText(passed)} mg/kg`;
  const half = textWidth(text, letter, "semibold") / 2;
  const x = axis.x(passed);
  return [
    element("path", {
      "data-part": "passed",
      d: `M${numberText(x)} ${top - 12}V${numberText(foot)}`,
      stroke: theme.ink,
      "stroke-width": 2,
      fill: "none",
    }),
    labelNode({
      ...{ text, x: Math.min(width - 4 - half, Math.max(left + half - 16, x)), y: 16 },
      ...{ size: letter, fill: theme.ink, weight: "semibold", anchor: "middle" },
    }),
  ];
}

const figureText = (value: number): string => String(Number(value.toPrecision(2)));

function alternativeOf({ passedMgPerKg: passed, rungs, tradition }: ExtrusionLadder): string {
  const lines = rungs.map(
    ({ label, says, mgPerKg }) => `${label}, ${says}, ${figureText(mgPerKg)} mg/kg: ${marginWords(mgPerKg, passed)}.`,
  );
  const held = rungs.length === 0 ? "No dose to hold it against is known." : lines.join(" ");
  return `What is taken to have passed the foramen, ${figureText(passed)} mg/kg, against doses, the lowest first. ${held} What is often said, 1,000 to 15,000 times below the toxic dose, has no source; it would make the toxic dose ${figureText(tradition.low)} to ${figureText(tradition.high)} mg/kg.`;
}
