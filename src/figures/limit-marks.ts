import { element, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** How a value stands to a limit. */
export type Standing = "below" | "at" | "above" | "dependsOnRate";

/** The words of each. */
export const standingWords: Readonly<Record<Standing, string>> = {
  below: "below",
  at: "at the limit",
  above: "above",
  dependsOnRate: "depends on the rate",
};

/** Told apart by shape: a ring below, a full diamond at or above, a half filled square where the rate decides. */
export function standingMark(
  standing: Standing,
  at: { readonly x: number; readonly y: number },
  theme: Theme,
): SvgNode[] {
  const { x, y } = at;
  if (standing === "below")
    return [
      element("circle", {
        "data-part": standing,
        cx: x,
        cy: y,
        r: 5,
        fill: theme.surface,
        stroke: theme.ink,
        "stroke-width": 1.8,
      }),
    ];
  if (standing === "dependsOnRate")
    return [
      element("rect", {
        "data-part": standing,
        ...{ x: x - 5, y: y - 5, width: 10, height: 10, fill: theme.surface },
        ...{ stroke: theme.accent, "stroke-width": 1.8 },
      }),
      element("rect", { x, y: y - 5, width: 5, height: 10, fill: theme.accent }),
    ];
  const corners = [
    { x, y: y - 7 },
    { x: x + 7, y },
    { x, y: y + 7 },
    { x: x - 7, y },
  ];
  return [element("path", { "data-part": standing, d: pathThrough(corners, true), fill: theme.accent })];
}

/** An axis in powers of ten. */
export interface LogAxis {
  readonly x: (value: number) => number;
  /** The powers of ten on it. */
  readonly ticks: readonly number[];
  readonly left: number;
  readonly right: number;
}

/** From the power of ten below all values to the one above them; what is 0 stands at its left end. */
export function logAxis(values: readonly number[], left: number, right: number): LogAxis {
  const above = values.filter((value) => value > 0);
  const low = Math.floor(Math.log10(Math.min(...above, 1e300)) + 1e-9);
  const high = Math.max(low + 1, Math.ceil(Math.log10(Math.max(...above, 1e-300)) - 1e-9));
  const from = above.length === 0 ? -2 : low;
  const to = above.length === 0 ? 1 : high;
  const x = (value: number): number =>
    value <= 0 ? left : left + ((right - left) * (Math.log10(value) - from)) / (to - from);
  const step = Math.ceil((to - from) / 7);
  const ticks = Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, at) => 10 ** (from + at * step));
  return { x, ticks, left, right };
}

/** A power of ten as it stands below an axis: `0.001`, `10`, `10^5`. */
export const powerText = (power: number): string =>
  power >= 1e5 || power < 1e-4
    ? `10^${Math.round(Math.log10(power))}`
    : power >= 1
      ? numberText(power)
      : String(Number(power.toPrecision(1)));
