import { element, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** A ruler: where each mm stands across, how far it goes, and at which height. */
export interface MmRuler {
  readonly x: (mm: number) => number;
  readonly mostMm: number;
  readonly y: number;
  /** A mm is drawn as this much; where it is little, every fifth one alone has its tick. */
  readonly perMm: number;
}

/** A ruler in mm from 0, a tick for each one, longer at every fifth, numbered as far as there is room. */
export function mmRuler({ x, mostMm, y, perMm }: MmRuler, theme: Theme): readonly SvgNode[] {
  const last = Math.floor(mostMm + 1e-9);
  const marks = Array.from({ length: last + 1 }, (_, mm) => mm).filter((mm) => perMm >= 3 || mm % 5 === 0);
  const ticks = marks.map((mm) => `M${numberText(x(mm))} ${numberText(y)}v${mm % 5 === 0 ? 7 : 4}`).join("");
  const numbered = marks.filter((mm) => mm % (perMm < 24 ? 5 : 1) === 0);
  return [
    element("path", {
      "data-part": "ruler",
      d: `M${numberText(x(0))} ${numberText(y)}H${numberText(x(mostMm))}${ticks}`,
      ...{ stroke: theme.quiet, "stroke-width": 1, fill: "none" },
    }),
    ...numbered.map((mm) =>
      labelNode({ text: `${mm}`, x: x(mm), y: y + 19, size: 11.5, fill: theme.quiet, anchor: "middle" }),
    ),
  ];
}
