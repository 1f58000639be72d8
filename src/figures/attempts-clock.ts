import { letterSize, rowName } from "./chance-plot.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One attempt as it was logged. */
export interface ClockedAttempt {
  /** When it began, in words, as `12 Mar, 09:40`. */
  readonly at: string;
  readonly minutes: number;
  /** As `ultrasonic tip`. */
  readonly tool: string;
  /** What moved, as `nothing moved`. */
  readonly moved: string;
}

/** Attempts end to end by the minutes that they took, against the rule that was set before. */
export interface AttemptsClock {
  /** In their order. */
  readonly attempts: readonly ClockedAttempt[];
  /** The rule; absent where none was set. */
  readonly stopAfterMin?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const width = 640;
const names = 190;
const left = names + 16;
const top = 30;

/** A bar for each attempt that begins where the one before ended, with the time that the rule leaves. */
export function attemptsClock(given: AttemptsClock): Figure {
  const theme = themes[given.theme];
  const { attempts, stopAfterMin } = given;
  const total = totalOf(attempts);
  const most = Math.max(10, total, stopAfterMin ?? 0);
  const words = attempts.map(barWords);
  const right = width - 8 - Math.max(70, ...words.map((text) => textWidth(text, letterSize)));
  const x = (minutes: number): number => left + ((right - left) * minutes) / most;
  let [at, spent] = [top, 0];
  const rows = attempts.flatMap((attempt, index) => {
    const name = rowName({ label: `${index + 1}. ${attempt.tool}`, says: attempt.at }, { names }, theme);
    const place = { x, y: at + 12, theme, stopAfterMin };
    const nodes = [...name.at(at).map(labelNode), ...barNodes(attempt, spent, place)];
    spent += attempt.minutes;
    at += Math.max(name.height, 26) + 8;
    return nodes;
  });
  const nodes = [...axisNodes(most, { x, foot: at, theme }), ...stopNodes(given, { x, foot: at, theme }), ...rows];
  return figureOf({ width, height: at + 38 }, given.widthPx, alternativeOf(given), nodes);
}

const totalOf = (attempts: readonly ClockedAttempt[]): number =>
  attempts.reduce((sum, { minutes }) => sum + minutes, 0);
const barWords = ({ minutes, moved }: ClockedAttempt): string => `${numberText(minutes)} min, ${moved}`;

interface BarPlace {
  readonly x: (minutes: number) => number;
  readonly y: number;
  readonly theme: Theme;
  readonly stopAfterMin: number | undefined;
}

/** What lies past the rule is hatched and in the colour of "look here". */
function barNodes(attempt: ClockedAttempt, spent: number, { x, y, theme, stopAfterMin }: BarPlace): SvgNode[] {
  const end = spent + attempt.minutes;
  const past = Math.max(spent, Math.min(end, stopAfterMin ?? end));
  const box = (from: number, to: number) => ({ x: x(from), y: y - 7, width: Math.max(1, x(to) - x(from)), height: 14 });
  return [
    ...(past > spent ? [element("rect", { "data-part": "within", ...box(spent, past), fill: theme.course })] : []),
    ...(end > past
      ? [
          element("rect", {
            "data-part": "past",
            ...box(past, end),
            ...{ fill: theme.surface, stroke: theme.accent, "stroke-width": 1.6 },
          }),
          element("path", {
            d: hatched(x(past), x(end), y),
            ...{ stroke: theme.accent, "stroke-width": 1.2, fill: "none" },
          }),
        ]
      : []),
    labelNode({
      ...wordsBeside(attempt, end, { x, stopAfterMin }),
      y: y + 4.3,
      size: letterSize,
      fill: theme.ink,
      halo: theme.surface,
    }),
  ];
}

/** Right of the bar; past the rule's line where they would lie on it or touch it. */
function wordsBeside(attempt: ClockedAttempt, end: number, { x, stopAfterMin }: Pick<BarPlace, "x" | "stopAfterMin">) {
  const text = barWords(attempt);
  const beside = x(end) + 7;
  const line = stopAfterMin === undefined || end >= stopAfterMin ? undefined : x(stopAfterMin);
  const meets = line !== undefined && beside + textWidth(text, letterSize) > line - 7;
  return { text, x: meets ? line + 7 : beside };
}

const hatched = (from: number, to: number, y: number): string =>
  Array.from({ length: Math.max(1, Math.floor((to - from) / 6)) }, (_, at) => from + at * 6)
    .map((x) => `M${numberText(x)} ${numberText(y + 7)}L${numberText(Math.min(to, x + 6))} ${numberText(y - 7)}`)
    .join("");

interface AxisPlace {
  readonly x: (minutes: number) => number;
  readonly foot: number;
  readonly theme: Theme;
}

function axisNodes(most: number, { x, foot, theme }: AxisPlace): SvgNode[] {
  const step = [1, 2, 5, 10, 15, 30, 60, 120, 300].find((one) => most / one <= 6) ?? 600;
  const ticks = Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, at) => at * step);
  const quiet = { size: 11.5, fill: theme.quiet } as const;
  return [
    element("path", {
      d: `M${numberText(x(0))} ${foot}H${numberText(x(most))}${ticks.map((minutes) => `M${numberText(x(minutes))} ${foot}v5`).join("")}`,
      ...{ stroke: theme.hairline, "stroke-width": 1, fill: "none" },
    }),
    ...ticks.map((minutes) =>
      labelNode({ ...quiet, text: `${minutes}`, x: x(minutes), y: foot + 18, anchor: "middle" }),
    ),
    labelNode({ ...quiet, text: "minutes of attempts, together", x: x(0), y: foot + 33 }),
  ];
}

function stopNodes({ stopAfterMin }: AttemptsClock, { x, foot, theme }: AxisPlace): SvgNode[] {
  if (stopAfterMin === undefined)
    return [labelNode({ text: "no rule for the time was set", x: left, y: 14, size: letterSize, fill: theme.quiet })];
  const text = `stop after ${numberText(stopAfterMin)} min`;
  const half = textWidth(text, letterSize, "semibold") / 2;
  const at = Math.min(width - 4 - half, Math.max(left + half, x(stopAfterMin)));
  return [
    element("path", {
      "data-part": "stop",
      d: `M${numberText(x(stopAfterMin))} ${top - 10}V${numberText(foot)}`,
      ...{ stroke: theme.accent, "stroke-width": 1.8, "stroke-dasharray": "6 3", fill: "none" },
    }),
    labelNode({ text, x: at, y: 14, size: letterSize, fill: theme.accent, weight: "semibold", anchor: "middle" }),
  ];
}

function alternativeOf({ attempts, stopAfterMin }: AttemptsClock): string {
  const total = totalOf(attempts);
  const rule =
    stopAfterMin === undefined
      ? "No rule for the time was set"
      : total > stopAfterMin
        ? `${numberText(total - stopAfterMin)} min past the rule of ${numberText(stopAfterMin)} min`
        : `${numberText(stopAfterMin - total)} min below the rule of ${numberText(stopAfterMin)} min`;
  const lines = attempts.map((one, at) => `${at + 1}. ${one.at}: ${one.tool}, ${barWords(one)}.`);
  return `Attempts by the clock. ${numberText(total)} min together. ${rule}.${lines.map((text) => ` ${text}`).join("")}`;
}
