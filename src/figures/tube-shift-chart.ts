import { type Axes, axesOf, plotted } from "./graph-axes.ts";
import { element, type Figure, figureOf, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, rimmedLabel, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** What a further film under an angle would tell. */
export interface ShiftCandidate {
  /** 0 straight on, above 0 with the tube moved to mesial. */
  readonly angleDeg: number;
  /** Half of the 95 % interval that is expected of what is looked for. */
  readonly halfWidthDeg: number;
  readonly settles: boolean;
}

/** Which tube shift serves: what each would tell, the films at hand, the shift to choose, and where neighbours lie over. */
export interface TubeShiftChart {
  /** From distal to mesial. */
  readonly candidates: readonly ShiftCandidate[];
  readonly atHandDeg: readonly number[];
  readonly recommendedDeg?: number | undefined;
  /** From which angle on a neighbour lies over the root, to which side. */
  readonly overlaps?: readonly { readonly fromDeg: number; readonly towards: "mesial" | "distal" }[] | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 400, height: 220 } as const;
const plot = { left: 38, right: 388, top: 44, bottom: 176 } as const;
const reachDeg = 40;

/** A chart from the tube's shift to how well a bend out of the film would be known; a full disc settles it, a ring does not. */
export function tubeShiftChart(given: TubeShiftChart): Figure {
  const theme = themes[given.theme];
  const axes = axesOf({
    plot,
    least: { across: -reachDeg },
    most: { across: reachDeg, up: Math.max(10, ...given.candidates.map(({ halfWidthDeg }) => halfWidthDeg)) },
    words: { up: "± ° out of the film, expected", across: "tube from mesial, °" },
  });
  const nodes = [
    ...(given.overlaps ?? []).map((overlap) => overlapNode(overlap, axes, theme)),
    ...plotted(axes, theme),
    labelNode({ text: "from distal, °", x: plot.left, y: plot.bottom + 33, size: 11.5, fill: theme.quiet }),
    ...given.atHandDeg.flatMap((angle) => atHandNodes(angle, axes, theme)),
    ...curveNodes(given.candidates, axes, theme),
    ...given.candidates.map((candidate) => dot(candidate, axes, theme)),
    ...recommendedNodes(given, axes, theme),
  ];
  return figureOf(view, given.widthPx, alternativeOf(given), nodes);
}

/** Neighbours lie over the root from an angle on: the ground is hatched there. */
function overlapNode(
  { fromDeg, towards }: { fromDeg: number; towards: "mesial" | "distal" },
  { x }: Axes,
  theme: Theme,
): SvgNode {
  const [from, to] = towards === "mesial" ? [x(fromDeg), x(reachDeg)] : [x(-reachDeg), x(-fromDeg)];
  return element("rect", {
    "data-part": "overlap",
    ...{ x: from, y: plot.top, width: Math.max(0, to - from), height: plot.bottom - plot.top },
    ...{ fill: theme.ink, "fill-opacity": 0.07 },
  });
}

function atHandNodes(angle: number, { x }: Axes, theme: Theme): readonly SvgNode[] {
  const at = x(angle);
  return [
    element("path", {
      d: pathThrough([
        { x: at, y: plot.top - 4 },
        { x: at, y: plot.bottom },
      ]),
      ...{ fill: "none", stroke: theme.quiet, "stroke-width": 1, "stroke-dasharray": "2 3" },
    }),
    labelNode({ text: "at hand", x: at, y: plot.top - 8, size: 11, fill: theme.quiet, anchor: "middle" }),
  ];
}

/** Neighbours by more than this are not joined: a film at hand lies between. */
const stepDeg = 5.5;

function curveNodes(candidates: readonly ShiftCandidate[], { x, y }: Axes, theme: Theme): readonly SvgNode[] {
  return candidates.slice(1).flatMap((to, at) => {
    const from = candidates[at];
    if (from === undefined || to.angleDeg - from.angleDeg > stepDeg) return [];
    const spots = [from, to].map(({ angleDeg, halfWidthDeg }) => ({ x: x(angleDeg), y: y(halfWidthDeg) }));
    return [element("path", { d: pathThrough(spots), fill: "none", stroke: theme.course, "stroke-width": 1.6 })];
  });
}

const dot = ({ angleDeg, halfWidthDeg, settles }: ShiftCandidate, { x, y }: Axes, theme: Theme): SvgNode =>
  element("circle", {
    "data-part": settles ? "settles" : "open",
    ...{ cx: x(angleDeg), cy: y(halfWidthDeg), r: 3.6, fill: settles ? theme.course : theme.surface },
    ...{ stroke: theme.course, "stroke-width": 1.4 },
  });

function recommendedNodes(
  { candidates, recommendedDeg }: TubeShiftChart,
  { x, y }: Axes,
  theme: Theme,
): readonly SvgNode[] {
  const found = candidates.find(({ angleDeg }) => angleDeg === recommendedDeg);
  if (found === undefined) return [];
  const at = { x: x(found.angleDeg), y: y(found.halfWidthDeg) };
  const text = shiftWords(found.angleDeg);
  const width = textWidth(text, 12.5, "semibold");
  // The curve falls away from straight on: above the outer side there is room.
  const outward = found.angleDeg < 0 ? Math.max(plot.left, at.x - 8 - width) : Math.min(plot.right - width, at.x + 8);
  return [
    element("circle", {
      "data-part": "recommended",
      ...{ cx: at.x, cy: at.y, r: 7, fill: "none", stroke: theme.accent, "stroke-width": 2 },
    }),
    ...rimmedLabel({
      ...{ text, x: outward, y: at.y - 9, size: 12.5, fill: theme.accent },
      ...{ weight: "semibold", halo: theme.surface },
    }),
  ];
}

const shiftWords = (angleDeg: number): string =>
  angleDeg === 0 ? "straight on" : `${Math.abs(angleDeg)}° from ${angleDeg > 0 ? "mesial" : "distal"}`;

function alternativeOf({ candidates, atHandDeg, recommendedDeg }: TubeShiftChart): string {
  const said = candidates.map(
    ({ angleDeg, halfWidthDeg, settles }) =>
      `${shiftWords(angleDeg)}: ±${halfWidthDeg.toFixed(0)}°${settles ? ", settles it" : ""}`,
  );
  const chosen =
    recommendedDeg === undefined ? "No shift settles it" : `The least that settles it is ${shiftWords(recommendedDeg)}`;
  return `Which tube shift would show the hidden bend. ${chosen}. Films at hand: ${atHandDeg.map(shiftWords).join(", ")}. Expected by shift: ${said.join("; ")}.`;
}
