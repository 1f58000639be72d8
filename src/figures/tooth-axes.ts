import type { Eye } from "./eye-in-space.ts";
import type { ToothPlace } from "./seen-from.ts";
import { element, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { boxesMeet, labelBox, rimmedLabel, type TextLabel, textWidth } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** Where the axes of a tooth are drawn: a cross at a level below the foramen, and the long axis down to it, in mm. */
export interface AxesPlace {
  readonly x: number;
  readonly y: number;
  readonly fromMm: number;
  readonly floorMm: number;
  readonly reachMm: number;
  readonly innerSide: "lingual" | "palatal";
}

const size = 11.5;
/** An axis that points at the eye is shorter than this in the drawing, and is not named. */
const leastNamed = 15;

/** The axes of a tooth as thin lines with their names at their ends; one that points at the eye keeps its name back. */
export function toothAxes(place: AxesPlace, eye: Eye, theme: Theme): readonly SvgNode[] {
  const { x, y, fromMm, floorMm, reachMm, innerSide } = place;
  const foot: ToothPlace = [x, y, floorMm];
  const arms: readonly (readonly [string, ToothPlace])[] = [
    ["distal", [x + reachMm, y, floorMm]],
    ["mesial", [x - reachMm, y, floorMm]],
    ["buccal", [x, y + reachMm, floorMm]],
    [innerSide, [x, y - reachMm, floorMm]],
  ];
  return [
    line([x, y, fromMm], foot, { eye, theme, dash: "2 4" }),
    ...arms.map(([, end]) => line(foot, end, { eye, theme })),
    ...namesOf(
      [...arms.map(([name, to]) => ({ name, from: foot, to })), { name: "apical", from: [x, y, fromMm], to: foot }],
      eye,
      theme,
    ),
  ];
}

interface Named {
  readonly name: string;
  readonly from: ToothPlace;
  readonly to: ToothPlace;
}

/** The names beyond the ends of their axes, the longest axis first; one that finds no room of its own is left out. */
function namesOf(named: readonly Named[], eye: Eye, theme: Theme): readonly SvgNode[] {
  const wishes = named
    .map(({ name, from, to }) => ({ name, start: eye.spot(from), end: eye.spot(to) }))
    .map((wish) => ({ ...wish, length: Math.hypot(wish.end.x - wish.start.x, wish.end.y - wish.start.y) }))
    .filter(({ length }) => length >= leastNamed)
    .sort((a, b) => b.length - a.length);
  const placed: TextLabel[] = [];
  for (const wish of wishes) {
    const taken = placed.map(labelBox);
    const free = rows
      .map((row) => labelOf(wish, row, { eye, theme }))
      .find((label) => !taken.some((box) => boxesMeet(box, labelBox(label))));
    if (free !== undefined) placed.push(free);
  }
  return placed.flatMap(rimmedLabel);
}

/** Lines below and above the place where a name would stand by itself. */
const rows = [0, 13, -13, 26] as const;

function labelOf(
  { name, start, end, length }: { name: string; start: Spot; end: Spot; length: number },
  row: number,
  { eye: { view }, theme }: Pen,
): TextLabel {
  const half = textWidth(name, size) / 2;
  const x = end.x + ((end.x - start.x) / length) * (half + 5);
  const y = end.y + ((end.y - start.y) / length) * 10 + size * 0.34 + row;
  return {
    ...{ text: name, size, fill: theme.quiet, anchor: "middle", halo: theme.surface },
    ...{
      x: Math.min(view.width - half - 3, Math.max(half + 3, x)),
      y: Math.min(view.height - 4, Math.max(view.top + 12, y)),
    },
  };
}

interface Pen {
  readonly eye: Eye;
  readonly theme: Theme;
  readonly dash?: string;
}

const line = (from: ToothPlace, to: ToothPlace, { eye, theme, dash }: Pen): SvgNode =>
  element("path", {
    "data-part": "axis",
    d: pathThrough([eye.spot(from), eye.spot(to)]),
    fill: "none",
    stroke: theme.hairline,
    "stroke-width": 1,
    "stroke-dasharray": dash,
  });
