import { type CanalRoot, canalNames, cShapeAt } from "../core/tooth/canal-root.ts";
import { trackOffset } from "./canal-course.ts";
import { element, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** One root in its column. */
export interface RootColumn {
  readonly root: CanalRoot;
  /** Where its axis crosses the level of the orifices. */
  readonly axis: number;
  /** Half of its width at that level. */
  readonly half: number;
  /** Half of the width that it takes together with its words. */
  readonly room: number;
  readonly orificeY: number;
  /** From the level of the orifices to the tip; negative upwards. */
  readonly reach: number;
  /** How far the tip lies from the axis; positive to the right. */
  readonly bend: number;
}

/** How far the trunk reaches from the orifices towards the crown. */
const crownward = 40;
/** Where the roots part, as a share of the way to the tip. */
const furcation = 0.13;

/** Half of a root's width at a share of the way to its tip: a taper that ends round. */
export const rootHalfWidth = ({ half }: RootColumn, share: number): number =>
  half * Math.sqrt(1 - Math.min(1, Math.max(0, share)) ** 3.2) * (1 - 0.42 * share);

/** A point of a root: a share of the way to the tip, and an offset from the axis in half widths. */
export const rootPoint = (column: RootColumn, share: number, offset: number): Spot => ({
  x: column.axis + column.bend * Math.max(0, share) ** 2.6 + offset * rootHalfWidth(column, share),
  y: column.orificeY + column.reach * share,
});

/** The body of the tooth from its neck to the tips: filled, and outlined but for the crown side, which is left open. */
export function trunkNodes(columns: readonly RootColumn[], theme: Theme): readonly SvgNode[] {
  const first = columns[0];
  const last = columns.at(-1);
  if (first === undefined || last === undefined) return [];
  const sign = Math.sign(first.reach);
  const neck = (column: RootColumn, side: 1 | -1): Spot => rootPoint(column, -crownward / Math.abs(column.reach), side);
  const outline = [neck(first, -1), ...columns.flatMap((column, at) => around(columns, column, at)), neck(last, 1)];
  const d = pathThrough(outline);
  return [
    element("path", { "data-part": "root", d: `${d}Z`, fill: theme.dentine }),
    element("path", { d, fill: "none", stroke: theme.ink, "stroke-width": 1.6, "stroke-linejoin": "round" }),
    element("path", {
      d: neckLine(neck(first, -1), neck(last, 1), sign),
      fill: "none",
      stroke: theme.hairline,
      "stroke-width": 1.2,
    }),
  ];
}

/** Down one side of a root, round its tip, up the other; between two roots the roof of the furcation. */
function around(columns: readonly RootColumn[], column: RootColumn, at: number): Spot[] {
  const start = at === 0 ? 0 : furcation;
  const end = at === columns.length - 1 ? 0 : furcation;
  const shares = Array.from({ length: 41 }, (_, step) => Math.sin((step / 40) * (Math.PI / 2)));
  const down = shares.filter((share) => share >= start).map((share) => rootPoint(column, share, -1));
  const up = shares
    .filter((share) => share >= end)
    .reverse()
    .map((share) => rootPoint(column, share, 1));
  const next = columns[at + 1];
  return [
    ...down,
    ...up,
    ...(next === undefined ? [] : roof(rootPoint(column, furcation, 1), rootPoint(next, furcation, -1), column)),
  ];
}

/** An arch from one root to the next, rising towards the crown out of the sides of both. */
function roof(from: Spot, to: Spot, { reach }: RootColumn): Spot[] {
  const across = Math.abs(to.x - from.x);
  const rise = -Math.sign(reach) * Math.min(Math.max(14, across * 0.26), across * 0.5);
  return Array.from({ length: 15 }, (_, step) => {
    const turn = (Math.PI * (step + 1)) / 16;
    const way = (1 - Math.cos(turn)) / 2;
    return { x: from.x + (to.x - from.x) * way, y: from.y + (to.y - from.y) * way + rise * Math.sin(turn) };
  });
}

/** The neck of the tooth: a line that bows towards the tips. */
function neckLine(from: Spot, to: Spot, sign: number): string {
  const middle = { x: (from.x + to.x) / 2, y: from.y + sign * 9 };
  return `M${numberText(from.x)} ${numberText(from.y)}Q${numberText(middle.x)} ${numberText(middle.y)} ${numberText(to.x)} ${numberText(to.y)}`;
}

/** The pulp chamber: a low dome from the first orifice to the last, open to every canal. */
export function pulpNodes(columns: readonly RootColumn[], theme: Theme): readonly SvgNode[] {
  const edges = columns.flatMap((column) => {
    const count = canalNames(column.root).length;
    const reach = isRibbon(column.root) ? rootHalfWidth(column, 0) * (count === 1 ? 0.62 : 0.38) : 9;
    return [0, count - 1].map((track) => ({ ...rootPoint(column, 0, trackOffset(track, count)), reach }));
  });
  const first = edges[0];
  const last = edges.at(-1);
  if (first === undefined || last === undefined) return [];
  const high = -Math.sign(columns[0]?.reach ?? 1) * 17;
  const from = first.x - first.reach;
  const to = last.x + last.reach;
  const shoulder = Math.min(15, (to - from) * 0.45);
  const at = (x: number, y: number): string => `${numberText(x)} ${numberText(first.y + y)}`;
  const d = `M${at(from, 0)}Q${at(from, high)} ${at(from + shoulder, high)}L${at(to - shoulder, high)}Q${at(to, high)} ${at(to, 0)}Z`;
  return [element("path", { "data-part": "pulp", d, fill: theme.ground, stroke: theme.quiet, "stroke-width": 1.2 })];
}

/** Whether a root's canal begins as the ribbon of a C. */
export const isRibbon = (root: CanalRoot): boolean =>
  root.levels.slice(0, 1).some((level) => ["C1", "C2"].includes(cShapeAt(level) ?? ""));
