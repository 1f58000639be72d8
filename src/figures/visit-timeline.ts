import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";
import { type LaneRows, laidInRows, type PlacedMark } from "./timeline-rows.ts";

/** Something at a minute, or from one to another. */
export interface TimelineMark {
  readonly fromMin: number;
  readonly toMin?: number | undefined;
  readonly says: string;
}

/** A visit over its minutes, a lane for each sort of thing. */
export interface VisitTimelineDrawn {
  readonly minutes?: number | undefined;
  readonly lanes: readonly { readonly name: string; readonly marks: readonly TimelineMark[] }[];
  readonly withoutMinute: readonly { readonly name: string; readonly says: readonly string[] }[];
  /** The minute that is now, while the clock runs. */
  readonly nowMin?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const letters = 12;
const small = 11.5;
const rowHeight = 19;
const lanePad = 5;
const top = 40;
const least = { width: 560, minutes: 10 } as const;

/** The names of the lanes at the left, their minutes on one axis; words stand beside their mark and never on another's. */
export function visitTimeline(given: VisitTimelineDrawn): Figure {
  const theme = themes[given.theme];
  const width = Math.max(least.width, given.widthPx);
  const left = 14 + Math.max(60, ...namesIn(given).map((name) => textWidth(name, letters, "medium")));
  const most = mostOf(given);
  const right = width - 10;
  const x = (minute: number): number => left + ((right - left) * minute) / most;
  let at = top;
  const lanes = given.lanes.map(({ name, marks }) => {
    const laid = laidInRows(marks, { x, left, right, letters });
    const lane = { name, laid, top: at, bottom: at + Math.max(1, laid.rows) * rowHeight + 2 * lanePad };
    at = lane.bottom;
    return lane;
  });
  const place: Place = { x, left, right, bottom: at, most, theme };
  const foot = withoutMinuteNodes(given, { left, right, top: at + 30, theme });
  const nodes = [
    ...axisNodes(place),
    ...nowNodes(given.nowMin, place),
    ...lanes.flatMap((lane) => laneNodes(lane, place)),
    ...foot.nodes,
  ];
  return figureOf({ width, height: foot.bottom }, given.widthPx, alternativeOf(given), nodes);
}

const namesIn = ({ lanes, withoutMinute }: VisitTimelineDrawn): readonly string[] =>
  [...lanes, ...withoutMinute].map(({ name }) => name);

function mostOf({ minutes = 0, lanes, nowMin = 0 }: VisitTimelineDrawn): number {
  const ends = lanes.flatMap(({ marks }) => marks.map(({ fromMin, toMin }) => toMin ?? fromMin));
  return Math.max(least.minutes, minutes, nowMin, ...ends);
}

interface Place {
  readonly x: (minute: number) => number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly most: number;
  readonly theme: Theme;
}

function axisNodes({ x, left, right, bottom, most, theme }: Place): SvgNode[] {
  const step = [1, 2, 5, 10, 15, 30, 60].find((one) => most / one <= 10) ?? 120;
  const ticks = Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, index) => index * step);
  const quiet = { size: small, fill: theme.quiet } as const;
  const named = ticks.map((minute) => ({
    text: numberText(minute),
    x: x(minute),
    half: textWidth(numberText(minute), small) / 2,
  }));
  return [
    element("path", {
      d: `M${numberText(left)} ${top}H${numberText(right)}`,
      ...{ stroke: theme.hairline, "stroke-width": 1, fill: "none" },
    }),
    element("path", {
      d: ticks.map((minute) => `M${numberText(x(minute))} ${top - 4}V${numberText(bottom)}`).join(""),
      ...{ stroke: theme.hairline, "stroke-opacity": 0.4, "stroke-width": 1, fill: "none" },
    }),
    ...named.map(({ text, x: at, half }) =>
      labelNode({ ...quiet, text, x: Math.min(at, right - half), y: top - 8, anchor: "middle" }),
    ),
    labelNode({ ...quiet, text: "min", x: left - 10, y: top - 8, anchor: "end" }),
  ];
}

/** The line that is now, named above the minutes. */
function nowNodes(nowMin: number | undefined, { x, left, right, bottom, theme }: Place): SvgNode[] {
  if (nowMin === undefined) return [];
  const text = `now, ${numberText(nowMin)} min`;
  const half = textWidth(text, small, "semibold") / 2;
  const at = Math.min(right - half, Math.max(left + half, x(nowMin)));
  return [
    element("path", {
      "data-part": "now",
      d: `M${numberText(x(nowMin))} 20V${numberText(bottom)}`,
      ...{ stroke: theme.accent, "stroke-width": 1.6, fill: "none" },
    }),
    labelNode({ text, x: at, y: 14, size: small, fill: theme.accent, weight: "semibold", anchor: "middle" }),
  ];
}

interface Lane {
  readonly name: string;
  readonly laid: LaneRows;
  readonly top: number;
  readonly bottom: number;
}

function laneNodes({ name, laid, top: from, bottom }: Lane, { left, right, theme }: Place): SvgNode[] {
  return [
    labelNode({ text: name, x: 4, y: from + lanePad + 13.5, size: letters, fill: theme.ink, weight: "medium" }),
    ...laid.marks.flatMap((mark) => markNodes(mark, from + lanePad + mark.row * rowHeight, theme)),
    element("path", {
      d: `M4 ${numberText(bottom)}H${numberText(Math.max(left, right))}`,
      ...{ stroke: theme.hairline, "stroke-opacity": 0.7, "stroke-width": 1, fill: "none" },
    }),
  ];
}

/** What lasts is a bar as long as it lasted; what does not, a dot at its minute. */
function markNodes({ from, to, words }: PlacedMark, y: number, theme: Theme): SvgNode[] {
  const shape =
    to === undefined
      ? element("circle", { "data-part": "at", cx: from, cy: y + 9.5, r: 3.6, fill: theme.ink })
      : element("rect", {
          "data-part": "lasting",
          x: from,
          y: y + 4,
          width: to - from,
          height: 11,
          fill: theme.course,
        });
  const label = labelNode({ ...words, y: y + 13.7, size: letters, fill: theme.ink, halo: theme.surface });
  return [shape, label];
}

interface FootPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly theme: Theme;
}

/** What has no minute stands below the axis in words, broken into lines. */
function withoutMinuteNodes({ withoutMinute }: VisitTimelineDrawn, { left, right, top: from, theme }: FootPlace) {
  if (withoutMinute.length === 0) return { nodes: [], bottom: from - 22 };
  let y = from;
  const nodes = [
    labelNode({ text: "no minute noted", x: 4, y, size: small, fill: theme.quiet, weight: "medium" }),
    ...withoutMinute.flatMap(({ name, says }) => {
      const lines = linesOf(says.join(" · "), right - left);
      y += 7;
      const heading = labelNode({ text: name, x: 4, y: y + 16, size: letters, fill: theme.ink, weight: "medium" });
      const words = lines.map((text, index) =>
        labelNode({ text, x: left, y: y + 16 * (index + 1), size: letters, fill: theme.ink }),
      );
      y += 16 * lines.length;
      return [heading, ...words];
    }),
  ];
  return { nodes, bottom: y + 10 };
}

/** Words laid in lines that are no wider than asked; one word that is wider is cut. */
function linesOf(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ").map((one) => cutTo(one, most))) {
    const last = lines.at(-1);
    const longer = last === undefined ? undefined : `${last} ${word}`;
    if (longer !== undefined && textWidth(longer, letters) <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

const cutTo = (word: string, most: number): string => {
  if (textWidth(word, letters) <= most) return word;
  const signs = [...word];
  while (signs.length > 1 && textWidth(`${signs.join("")}…`, letters) > most) signs.pop();
  return `${signs.join("")}…`;
};

function alternativeOf({ minutes, lanes, withoutMinute, nowMin }: VisitTimelineDrawn): string {
  const lasted = minutes === undefined ? "Its length is not noted" : `${numberText(minutes)} min long`;
  const now = nowMin === undefined ? [] : [`Now: minute ${numberText(nowMin)}.`];
  const told = lanes.map(({ name, marks }) => `${name}: ${marks.map(markSays).join("; ")}.`);
  const untold = withoutMinute.map(({ name, says }) => `${name}, no minute noted: ${says.join("; ")}.`);
  return [`The visit by the clock.`, `${lasted}.`, ...now, ...told, ...untold].join(" ");
}

const markSays = ({ fromMin, toMin, says }: TimelineMark): string =>
  `${toMin === undefined ? `at ${numberText(fromMin)} min` : `${numberText(fromMin)} to ${numberText(toMin)} min`} ${says}`;
