import { element, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** The explanations of a break. */
export type BreakName = "bendingFatigue" | "torsionalOverload" | "flawOrJoint";

/** The mark of an explanation, a shape of its own: a disc for bending, a square for twisting, a triangle for a flaw. */
export function breakMark(name: BreakName, { x, y }: Spot, theme: Theme): SvgNode {
  const pen = { "data-part": name, fill: theme.ink, stroke: theme.surface, "stroke-width": 1.2 };
  if (name === "bendingFatigue") return element("circle", { cx: x, cy: y, r: 5.4, ...pen });
  const half = 5;
  const corners =
    name === "torsionalOverload"
      ? [
          { x: x - half, y: y - half },
          { x: x + half, y: y - half },
          { x: x + half, y: y + half },
          { x: x - half, y: y + half },
        ]
      : [
          { x, y: y - 6.5 },
          { x: x + 6.5, y: y + 5 },
          { x: x - 6.5, y: y + 5 },
        ];
  return element("path", { d: pathThrough(corners, true), ...pen });
}
