import type { Axes } from "./graph-axes.ts";
import { linesWithin } from "./lines-within.ts";
import { element, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** A limit as it is written beside its line. */
export interface VapourLimit {
  readonly label: string;
  readonly ppm: number;
}

/** Where a panel is drawn. */
export interface PanelPlace {
  readonly axes: Axes;
  readonly theme: Theme;
}

interface WithLimits {
  readonly limits: readonly VapourLimit[];
}

/** The words beside a panel, from its top: limits off its scale first, the highest first. */
interface PanelLabels {
  readonly limits: readonly { readonly limit: VapourLimit; readonly lines: readonly string[] }[];
  readonly height: number;
}

const size = 11.5;
const lineHeight = 14;
const gap = 4;

/** The limits of a panel, the highest first, in lines that fit beside it, and the height that they need. */
export function panelLabels({ limits }: WithLimits, column: number): PanelLabels {
  const sorted = limits.toSorted((a, b) => b.ppm - a.ppm);
  const labelled = sorted.map((limit) => ({ limit, lines: linesWithin(`↑ ${limit.label}`, column, size, "regular") }));
  const height = labelled.reduce((sum, { lines }) => sum + lines.length * lineHeight + gap, 0);
  return { limits: labelled, height };
}

/** Each limit as a line of its own at its height, joined to its words; one that is off the scale has an arrow up instead. */
export function panelLimits({ limits }: WithLimits, place: PanelPlace, labels: PanelLabels): SvgNode[] {
  const { axes, theme } = place;
  const { right, top } = axes.plot;
  if (limits.length === 0)
    return [labelNode({ text: "no limit of this time was read", x: right + 16, y: top + 12, size, fill: theme.quiet })];
  return spread(place, labels).flatMap(({ limit, isOff, lines, at }) => {
    const y = axes.y(limit.ppm);
    const middle = at + lineHeight / 2;
    const words = lines.map((text, index) =>
      labelNode({
        text: index === 0 && !isOff ? text.slice(2) : text,
        x: right + 16,
        y: at + 11 + index * lineHeight,
        size,
        fill: theme.ink,
      }),
    );
    if (isOff) return words;
    const line = { fill: "none", stroke: theme.ink };
    return [
      element("path", {
        "data-part": "limit",
        d: `M${numberText(axes.plot.left)} ${numberText(y)}H${numberText(right)}`,
        ...{ ...line, "stroke-width": 1.4, "stroke-dasharray": "10 3" },
      }),
      element("path", {
        d: `M${numberText(right)} ${numberText(y)}L${numberText(right + 12)} ${numberText(middle)}`,
        ...{ ...line, "stroke-width": 0.8 },
      }),
      ...words,
    ];
  });
}

/** Blocks of words down the side, each as near to its line as those above and below it let it be. */
function spread({ axes }: PanelPlace, { limits }: PanelLabels) {
  const { top, bottom } = axes.plot;
  const highest = axes.ticks.up.at(-1) ?? 0;
  const rest = limits.map(({ lines }) => lines.length * lineHeight + gap);
  let at = top;
  return limits.map(({ limit, lines }, index) => {
    const isOff = limit.ppm > highest;
    const below = rest.slice(index).reduce((sum, height) => sum + height, 0);
    const wished = isOff ? at : axes.y(limit.ppm) - lineHeight / 2;
    const placed = Math.max(at, Math.min(wished, bottom - below));
    at = placed + (rest[index] ?? 0);
    return { limit, isOff, lines, at: placed };
  });
}
