import { linesWithin } from "./lines-within.ts";
import { element, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** What is said of a place of a drawing, in a column beside it. */
export interface Callout {
  readonly near: Spot;
  /** The first line stands out. */
  readonly title: string;
  readonly says?: string | undefined;
  readonly isAccent?: boolean | undefined;
}

/** The column that callouts stand in. */
interface CalloutColumn {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly theme: Theme;
}

const [titleSize, saysSize, line, between] = [12.5, 11.5, 15, 9] as const;

/** Callouts below one another in the order of their places, each with a thin line to its place; `foot` is where they end. */
export function calloutNodes(callouts: readonly Callout[], column: CalloutColumn): { nodes: SvgNode[]; foot: number } {
  let foot = column.top;
  const nodes = [...callouts]
    .sort((a, b) => a.near.y - b.near.y)
    .flatMap((callout) => {
      const labels = labelsOf(callout, column);
      const top = Math.max(foot, Math.min(callout.near.y - 10, callout.near.y));
      foot = top + labels.length * line + between;
      return [
        leader(callout, top, column),
        ...labels.map((label, at) => labelNode({ ...label, y: top + 12 + at * line })),
      ];
    });
  return { nodes, foot };
}

function labelsOf({ title, says, isAccent }: Callout, { left, right, theme }: CalloutColumn): TextLabel[] {
  const [x, width, y] = [left + 14, right - left - 14, 0];
  const titles = linesWithin(title, width, titleSize, "semibold").map(
    (text): TextLabel => ({
      ...{ text, x, y, size: titleSize, weight: "semibold" },
      fill: isAccent === true ? theme.accent : theme.ink,
    }),
  );
  const rest = says === undefined || says === "" ? [] : linesWithin(says, width, saysSize);
  return [...titles, ...rest.map((text): TextLabel => ({ text, x, y, size: saysSize, fill: theme.quiet }))];
}

const leader = ({ near, isAccent }: Callout, top: number, { left, theme }: CalloutColumn): SvgNode =>
  element("path", {
    "data-part": "leader",
    d: pathThrough([near, { x: left, y: top + 8 }, { x: left + 9, y: top + 8 }]),
    ...{ fill: "none", stroke: isAccent === true ? theme.accent : theme.quiet, "stroke-width": 0.9 },
  });
