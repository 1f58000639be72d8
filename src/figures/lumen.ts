import type { StretchStyle } from "./canal-course.ts";
import { element, numberText, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** A sample of a canal: its middle and its width there. */
interface LumenSample extends Spot {
  readonly width: number;
}

/** A stretch of canal to be painted. */
export interface Lumen {
  readonly samples: readonly LumenSample[];
  readonly style: StretchStyle;
}

const wall = 1.4;

/**
 * Stretches of canal painted so that walls vanish where they run into each other: first every body, then every lumen,
 * then what fills it.
 */
export function lumenNodes(lumens: readonly Lumen[], theme: Theme): readonly SvgNode[] {
  const bodied = lumens.filter(({ style }) => style === "open" || style === "dressed" || style === "full");
  const hollow = bodied.filter(({ style }) => style !== "full");
  const lines = lumens.filter(({ style }) => style === "missing" || style === "supposed" || style === "passed");
  return [
    ...lines.map(({ samples, style }) => lineNode(samples, style, theme)),
    ...bodied.map(({ samples }) => bodyNode(samples, 0, theme.ink)),
    ...hollow.map(({ samples }) => bodyNode(samples, wall, theme.dentine)),
    ...hollow.filter(({ style }) => style === "dressed").map(({ samples }) => hatchNode(samples, theme.ink)),
  ];
}

function lineNode(samples: readonly Spot[], style: StretchStyle, theme: Theme): SvgNode {
  const passed = style === "passed";
  return element("path", {
    d: pathThrough(samples),
    fill: "none",
    stroke: style === "missing" ? theme.accent : passed ? theme.ink : theme.quiet,
    "stroke-width": passed ? 2.4 : 1.5,
    "stroke-dasharray": passed ? undefined : style === "missing" ? "4 4" : "1.5 4",
    "stroke-linecap": passed ? "round" : "butt",
  });
}

/** The body of a stretch, drawn in by the wall at its sides. Canals run down the page, so their width is level. */
function bodyNode(samples: readonly LumenSample[], inset: number, fill: string): SvgNode {
  const half = ({ width }: LumenSample): number => Math.max(0.4, width / 2 - inset);
  const left = samples.map((sample) => ({ x: sample.x - half(sample), y: sample.y }));
  const right = samples.map((sample) => ({ x: sample.x + half(sample), y: sample.y }));
  return element("path", { d: pathThrough([...left, ...right.reverse()], true), fill });
}

const hatchStep = 5;
/** Half the height that a stroke climbs on its way across. */
const steepest = 4;

/** Slanting strokes across a stretch at even steps. */
function hatchNode(samples: readonly LumenSample[], stroke: string): SvgNode {
  const first = samples[0]?.y ?? 0;
  let next = hatchStep;
  const strokes = samples.flatMap(({ x, y, width }) => {
    if (Math.abs(y - first) < next || width < 3) return [];
    next += hatchStep;
    const half = width / 2 - 0.6;
    const climb = Math.min(steepest, half * 0.7);
    const ends = [x - half, y + climb, x + half, y - climb].map(numberText);
    return [`M${ends[0]} ${ends[1]}L${ends[2]} ${ends[3]}`];
  });
  return element("path", { d: strokes.join(""), fill: "none", stroke, "stroke-width": 1.5 });
}
