import { type CanalLevel, type CanalRoot, canalsAt, cShapeAt } from "../core/tooth/canal-root.ts";
import { cArc, cParts } from "./c-shaped-orifice.ts";
import { type RootColumn, rootHalfWidth, rootPoint } from "./root-shape.ts";
import { element, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** How far the forms of a root's levels stand out beyond its side. */
export const formsReach = 62;

/** Whether any level of a root is C-shaped. */
export const isCShaped = (root: CanalRoot): boolean => root.levels.some((level) => cShapeAt(level) !== undefined);

/** Where the levels of a root lie on the way from orifice to foramen; a lone level lies at the orifice. */
export const shareOfLevel = (level: number, levels: number): number => (levels === 1 ? 0 : level / (levels - 1));

/** Nearest that two forms are drawn to each other. */
const apart = 19;

/** Beside a C-shaped root the form of each of its levels, drawn small and called by its name; crowded ones are left out. */
export function formNodes(column: RootColumn, theme: Theme): readonly SvgNode[] {
  const { levels } = column.root;
  if (!isCShaped(column.root)) return [];
  const x = column.axis + rootHalfWidth(column, 0) + 22;
  let last = Number.NEGATIVE_INFINITY;
  return levels.flatMap((level, at) => {
    const share = shareOfLevel(at, levels.length);
    const { y } = rootPoint(column, share, 0);
    const along = Math.abs(y - column.orificeY);
    if (along - last < apart) return [];
    last = along;
    const edge = rootPoint(column, Math.min(share, 0.97), 1).x + 4;
    const rung = element("path", {
      "data-part": "rung",
      d: pathThrough([
        { x: edge, y },
        { x: x - 11, y },
      ]),
      stroke: theme.hairline,
      "stroke-width": 1,
      fill: "none",
    });
    const text = cShapeAt(level) ?? `${canalsAt(level)}`;
    const label = labelNode({ text, x: x + 15, y: y + 5, size: 13, fill: theme.quiet });
    return [rung, formMark(level, { x, y }, 9, theme), label];
  });
}

/** The section of a level, small: an arc for a C, discs for round canals, a stroke where no lumen is seen. */
export function formMark(level: CanalLevel, { x, y }: Spot, radius: number, theme: Theme): SvgNode {
  const form = cShapeAt(level);
  const count = canalsAt(level);
  return group({ "data-part": "form", "data-form": form }, [
    ...(count === 0
      ? [
          element("path", {
            d: pathThrough(dash(x, y, radius)),
            stroke: theme.quiet,
            "stroke-width": 1.6,
            fill: "none",
          }),
        ]
      : form === undefined || form === "C4"
        ? discs(count, { x, y }, radius, theme)
        : cParts(form, count)
            .flat()
            .map((part) => arc(part, { x, y }, radius, theme))),
  ]);
}

const dash = (x: number, y: number, radius: number): Spot[] => [
  { x: x - radius * 0.5, y },
  { x: x + radius * 0.5, y },
];

function arc({ from, to }: { from: number; to: number }, { x, y }: Spot, radius: number, theme: Theme): SvgNode {
  const spots = Array.from({ length: 17 }, (_, at) => {
    const spot = cArc(from + ((to - from) * at) / 16);
    return { x: x + spot.x * radius * 1.5, y: y + spot.y * radius * 1.5 + radius * 0.2 };
  });
  return element("path", {
    d: pathThrough(spots),
    fill: "none",
    stroke: theme.ink,
    "stroke-width": radius * 0.42,
    "stroke-linecap": "round",
  });
}

/** Round canals side by side. */
function discs(count: number, { x, y }: Spot, radius: number, theme: Theme): readonly SvgNode[] {
  const r = Math.min(radius * 0.42, (radius * 2) / (count * 2 + 0.8));
  return Array.from({ length: count }, (_, at) =>
    element("circle", { cx: x + (at - (count - 1) / 2) * r * 2.6, cy: y, r, fill: theme.ink }),
  );
}
