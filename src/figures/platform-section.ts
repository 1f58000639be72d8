import { linesWithin } from "./lines-within.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A side of the root at the head. */
export interface PlatformWall {
  readonly side: "furcation" | "mesial" | "distal" | "buccal" | "lingual";
  /** Dentine from the canal to the surface, mm. */
  readonly mm: number;
  /** What the platform leaves of it, mm; below 0 it leaves the root. */
  readonly left: number;
}

/** A platform around the head of a fragment, in the root's section. */
export interface PlatformSection {
  readonly canalMm: number;
  readonly platformMm: number;
  /** How far it lies off the canal, towards its thinnest wall; 0 where absent. */
  readonly offCentreMm?: number | undefined;
  readonly walls: readonly PlatformWall[];
  /** Limits that the wall left is judged against. */
  readonly limits?: readonly { readonly mm: number; readonly words: string }[] | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 480, section: 250 } as const;
const centre = { x: 130, y: 128 } as const;
const ways: Readonly<Record<PlatformWall["side"], Spot>> = {
  buccal: { x: 0, y: -1 },
  distal: { x: 1, y: 0 },
  lingual: { x: 0, y: 1 },
  mesial: { x: -1, y: 0 },
  furcation: { x: Math.SQRT1_2, y: Math.SQRT1_2 },
};
/** Round the section, from above on; the furcation stands where distal is, or mesial, if that wall is not given. */
const around = ["buccal", "distal", "lingual", "mesial"] as const;

/** The section at the head: root, canal and platform to scale, each wall with what is left, and the limits on a line. */
export function platformSection(given: PlatformSection): Figure {
  const theme = themes[given.theme];
  const walls = given.walls.map((wall) => ({ ...wall, way: wayOf(wall, given.walls) }));
  const outer = given.canalMm / 2 + Math.max(0.5, ...given.walls.map(({ mm }) => mm));
  const perMm = 92 / Math.max(outer, given.platformMm / 2 + (given.offCentreMm ?? 0));
  const scale = { perMm, theme };
  const lines = strip(given, view.section, theme);
  const nodes = [
    ...rootNodes(given, walls, scale),
    ...cutNodes(given, walls, scale),
    ...wallList(given, theme),
    ...lines.nodes,
  ];
  return figureOf({ width: view.width, height: lines.foot + 6 }, given.widthPx, alternativeOf(given), nodes);
}

type PlacedWall = PlatformWall & { readonly way: Spot };
interface Scale {
  readonly perMm: number;
  readonly theme: Theme;
}

function wayOf({ side }: PlatformWall, walls: readonly PlatformWall[]): Spot {
  if (side !== "furcation") return ways[side];
  const free = (["distal", "mesial"] as const).find((one) => walls.every((wall) => wall.side !== one));
  return free === undefined ? ways.furcation : ways[free];
}

/** The root's surface through the walls that are known; a side of which nothing is known is taken as their mean. */
function rootNodes(
  { canalMm, walls: given }: PlatformSection,
  walls: readonly PlacedWall[],
  { perMm, theme }: Scale,
): SvgNode[] {
  if (given.length === 0) return [];
  const mean = given.reduce((sum, { mm }) => sum + mm, 0) / given.length;
  const reach = around.map((side) => {
    const wall = walls.find(({ way }) => way.x === ways[side].x && way.y === ways[side].y);
    return (canalMm / 2 + (wall?.mm ?? mean)) * perMm;
  });
  return [
    element("path", {
      "data-part": "root",
      d: pathThrough(outlineOf(reach), true),
      ...{ fill: theme.dentine, stroke: theme.ink, "stroke-width": 1.4, "stroke-linejoin": "round" },
      "stroke-dasharray": given.length < around.length ? "5 3" : undefined,
    }),
  ];
}

/** Four quarters of ellipses, from each side to the next. */
function outlineOf(reach: readonly number[]): readonly Spot[] {
  return around.flatMap((side, at) => {
    const [one, next] = [ways[side], ways[around[(at + 1) % 4] ?? side]];
    const [far, nextFar] = [reach[at] ?? 0, reach[(at + 1) % 4] ?? 0];
    return Array.from({ length: 12 }, (_, step) => {
      const turn = (step / 12) * (Math.PI / 2);
      const [by, nextBy] = [far * Math.cos(turn), nextFar * Math.sin(turn)];
      return { x: centre.x + one.x * by + next.x * nextBy, y: centre.y + one.y * by + next.y * nextBy };
    });
  });
}

function cutNodes(given: PlatformSection, walls: readonly PlacedWall[], { perMm, theme }: Scale): SvgNode[] {
  const thinnest = [...walls].sort((a, b) => a.left - b.left)[0];
  const off = (given.offCentreMm ?? 0) * perMm;
  const way = thinnest?.way ?? { x: 0, y: 0 };
  const platform = { x: centre.x + way.x * off, y: centre.y + way.y * off };
  return [
    element("circle", {
      "data-part": "platform",
      ...{ cx: platform.x, cy: platform.y, r: (given.platformMm / 2) * perMm },
      ...{
        fill: theme.accent,
        "fill-opacity": 0.22,
        stroke: theme.accent,
        "stroke-width": 1.6,
        "stroke-dasharray": "5 3",
      },
    }),
    element("circle", {
      "data-part": "canal",
      ...{ cx: centre.x, cy: centre.y, r: (given.canalMm / 2) * perMm, fill: theme.ink, "fill-opacity": 0.75 },
    }),
  ];
}

const leftWords = ({ left }: PlatformWall): string =>
  left < 0 ? `${(-left).toFixed(2)} mm beyond the root` : `${left.toFixed(2)} mm left`;

/** Widths and walls beside the section, the furcation's first. */
function wallList(given: PlatformSection, theme: Theme): SvgNode[] {
  const [x, width] = [256, view.width - 260];
  const ordered = [...given.walls].sort((a, b) => Number(b.side === "furcation") - Number(a.side === "furcation"));
  const lines: readonly Omit<TextLabel, "x" | "y">[] = [
    { text: `platform ${given.platformMm.toFixed(2)} mm, dashed`, size: 12.5, fill: theme.accent, weight: "semibold" },
    { text: `canal ${given.canalMm.toFixed(2)} mm, filled`, size: 12.5, fill: theme.ink, weight: "semibold" },
    ...((given.offCentreMm ?? 0) > 0
      ? [{ text: `${(given.offCentreMm ?? 0).toFixed(2)} mm off the centre`, size: 11.5, fill: theme.quiet }]
      : []),
    ...(ordered.length === 0
      ? [{ text: "no wall is known", size: 11.5, fill: theme.quiet }]
      : ordered.flatMap((wall) => [
          { text: `${wall.side}: ${wall.mm.toFixed(2)} mm`, size: 12.5, fill: theme.ink },
          ...linesWithin(leftWords(wall), width - 12, 11.5).map((text) => ({ text, size: 11.5, fill: theme.quiet })),
        ])),
  ];
  return lines.map((line, at) => labelNode({ ...line, x, y: 20 + at * 17 }));
}

const bar = { left: 16, right: view.width - 24 } as const;

/** The wall left of each side on a line in mm, among the limits. */
function strip(given: PlatformSection, top: number, theme: Theme): { nodes: SvgNode[]; foot: number } {
  const limits = [...(given.limits ?? [])].sort((a, b) => a.mm - b.mm);
  const most = Math.max(0.5, ...given.walls.map(({ left }) => left), ...limits.map(({ mm }) => mm)) * 1.12;
  const least = Math.min(0, ...given.walls.map(({ left }) => left));
  const x = (mm: number): number => bar.left + ((bar.right - bar.left) * (mm - least)) / (most - least);
  const y = top + 30;
  const heads = sideLabels(given, { x, y, theme });
  const quiet = { size: 11.5, fill: theme.quiet } as const;
  const numbers = limitNumbers(limits, x, y);
  const listTop = Math.max(y + 18, ...numbers.map((label) => label.y)) + 20;
  const list = limits.map(({ mm, words }, at) => ({
    text: `${numberText(mm)} mm: ${words}`,
    x: bar.left,
    y: listTop + at * 16,
  }));
  const nodes = [
    element("path", { d: `M${bar.left} ${y}H${bar.right}`, stroke: theme.hairline, "stroke-width": 1.4 }),
    labelNode({ ...quiet, text: "wall left, mm; dashed: limits", x: bar.right, y: top + 2, anchor: "end" }),
    element("path", { d: `M${numberText(x(0))} ${y - 5}v10`, stroke: theme.ink, "stroke-width": 1.4 }),
    ...limits.map(({ mm }, at) => limitRule(x(mm), y, { foot: (numbers[at + 1]?.y ?? y) - 10, theme })),
    ...numbers.map((label) => labelNode({ ...label, size: 11.5, fill: theme.ink, anchor: "middle" })),
    ...list.map((label) => labelNode({ ...label, size: 11.5, fill: theme.quiet })),
    ...heads,
  ];
  return { nodes, foot: listTop + limits.length * 16 - 12 };
}

/** The numbers under the line, from 0 on; one that would meet its neighbour stands a line lower. */
function limitNumbers(limits: readonly { readonly mm: number }[], x: (mm: number) => number, y: number) {
  const taken: { x: number; y: number }[] = [];
  for (const mm of [0, ...limits.map((limit) => limit.mm)]) {
    const row = [0, 1, 2, 3, 4, 5].find((one) =>
      taken.every((other) => other.y !== y + 18 + one * 14 || Math.abs(other.x - x(mm)) > 34),
    );
    taken.push({ x: x(mm), y: y + 18 + (row ?? 6) * 14 });
  }
  return taken.map((place, at) => ({ ...place, text: numberText(at === 0 ? 0 : (limits[at - 1]?.mm ?? 0)) }));
}

const limitRule = (x: number, y: number, { foot, theme }: { readonly foot: number; readonly theme: Theme }): SvgNode =>
  element("path", {
    "data-part": "limit",
    d: `M${numberText(x)} ${y - 9}V${numberText(foot)}`,
    ...{ stroke: theme.accent, "stroke-width": 1.6, "stroke-dasharray": "4 2", fill: "none" },
  });

/** A dot for each side; only the thinnest is named, the list beside the section has all. */
function sideLabels(
  { walls }: PlatformSection,
  { x, y, theme }: { readonly x: (mm: number) => number; readonly y: number; readonly theme: Theme },
): SvgNode[] {
  const sorted = [...walls].sort((a, b) => a.left - b.left);
  return sorted.flatMap((wall, at) => {
    const spot = x(wall.left);
    const text = `${wall.side} ${wall.left.toFixed(2)}`;
    const half = textWidth(text, 12.5, "semibold") / 2;
    const fill = at === 0 ? theme.ink : theme.surface;
    const dot = element("circle", {
      "data-part": at === 0 ? "thinnest" : "wall",
      ...{ cx: spot, cy: y, r: 5, fill, stroke: theme.ink, "stroke-width": 1.6 },
    });
    const middle = Math.max(half + 2, Math.min(view.width - 2 - half, spot));
    const label = {
      text,
      x: middle,
      y: y - 12,
      size: 12.5,
      fill: theme.ink,
      weight: "semibold",
      anchor: "middle",
    } as const;
    return at === 0 ? [dot, labelNode(label)] : [dot];
  });
}

function alternativeOf(given: PlatformSection): string {
  const { canalMm, platformMm, offCentreMm = 0, walls, limits = [] } = given;
  const off = offCentreMm > 0 ? `, ${offCentreMm.toFixed(2)} mm off its centre` : "";
  const sides = walls.map((wall) => `${wall.side} ${wall.mm.toFixed(2)} mm, ${leftWords(wall)}`);
  const said = sides.length === 0 ? "No wall is known" : `Walls: ${sides.join("; ")}`;
  const judged = limits.map(({ mm, words }) => `${numberText(mm)} mm: ${words}`);
  const against = judged.length === 0 ? "" : ` Limits: ${judged.join("; ")}.`;
  return `Platform of ${platformMm.toFixed(2)} mm around a canal of ${canalMm.toFixed(2)} mm${off}. ${said}.${against}`;
}
