import type { CShape } from "../core/tooth/canal-root.ts";
import { type CanalState, isAwaited } from "./canal-state.ts";
import { element, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** The frame of a section: its middle, and the half widths of the outline; the sign of `across` says where mesial lies. */
export interface SectionFrame {
  readonly centre: Spot;
  /** Half of the mesiodistal width; negative where mesial is to the left. */
  readonly across: number;
  readonly down: number;
}

/** A place of the section in the drawing. */
export const placeIn = ({ centre, across, down }: SectionFrame, { x, y }: Spot): Spot => ({
  x: centre.x + x * across,
  y: centre.y + y * down,
});

/** The arc of a C that opens to the lingual, from its mesial end (0) over the buccal side to its distal end (1). */
export function cArc(share: number): Spot {
  const angle = ((38 - 256 * share) * Math.PI) / 180;
  return { x: 0.6 * Math.cos(angle), y: 0.58 * Math.sin(angle) - 0.02 };
}

/** The parts of the arc that each canal of a C-shaped section takes. */
export function cParts(form: CShape, canals: number): readonly (readonly { from: number; to: number }[])[] {
  if (canals === 1)
    return form === "C2"
      ? [
          [
            { from: 0, to: 0.6 },
            { from: 0.74, to: 1 },
          ],
        ]
      : [[{ from: 0, to: 1 }]];
  if (form === "C2") return [[{ from: 0, to: 0.6 }], [{ from: 0.74, to: 1 }]];
  const gap = 0.16;
  const length = (1 - gap * (canals - 1)) / canals;
  return Array.from({ length: canals }, (_, at) => [{ from: at * (length + gap), to: at * (length + gap) + length }]);
}

type Part = { readonly from: number; readonly to: number };

/** One canal of a C-shaped section in its state: ribbons with round ends. */
export function cShapedMark(
  state: CanalState,
  parts: readonly Part[],
  frame: SectionFrame,
  { theme, width }: { readonly theme: Theme; readonly width: number },
): SvgNode {
  const wall = Math.max(1, width * 0.12);
  const stroke = (part: Part, thick: number, colour: string, dash?: string): SvgNode =>
    element("path", {
      d: pathThrough(arcSpots(part, frame)),
      fill: "none",
      stroke: colour,
      "stroke-width": thick,
      "stroke-linecap": dash === undefined ? "round" : "butt",
      "stroke-dasharray": dash,
    });
  const nodes = parts.flatMap((part) => {
    if (isAwaited(state)) return [stroke(part, wall * 0.8, theme.quiet, `${wall} ${wall * 1.6}`)];
    if (state.state === "notFound") return [stroke(part, wall * 1.2, theme.accent, `${wall * 3} ${wall * 2.4}`)];
    if (state.state === "filled") return [stroke(part, width, theme.ink)];
    const hollow = [stroke(part, width, theme.ink), stroke(part, width - 2 * wall, theme.dentine)];
    return [...hollow, ...contents(state, part, { frame, theme, width, wall, stroke })];
  });
  return group({ "data-part": "orifice", "data-state": state.state }, nodes);
}

const arcSpots = ({ from, to }: Part, frame: SectionFrame): readonly Spot[] =>
  Array.from({ length: 33 }, (_, at) => placeIn(frame, cArc(from + ((to - from) * at) / 32)));

interface Brush {
  readonly frame: SectionFrame;
  readonly theme: Theme;
  readonly width: number;
  readonly wall: number;
  readonly stroke: (part: Part, thick: number, colour: string, dash?: string) => SvgNode;
}

function contents(state: CanalState, part: Part, { frame, theme, width, wall, stroke }: Brush): readonly SvgNode[] {
  const middle = (part.from + part.to) / 2;
  switch (state.state) {
    case "negotiated":
      return [stroke(part, wall * 1.4, theme.ink)];
    case "shaped":
      return [stroke({ from: middle, to: part.to }, width, theme.ink)];
    case "medicated":
      return [stroke(part, width - 2 * wall, theme.ink, `${wall * 1.1} ${wall * 1.9}`)];
    case "blocked":
      return [bar(frame, middle, width, theme)];
    default:
      return [];
  }
}

function bar(frame: SectionFrame, share: number, width: number, theme: Theme): SvgNode {
  const at = placeIn(frame, cArc(share));
  const next = placeIn(frame, cArc(share + 0.01));
  const length = Math.hypot(next.x - at.x, next.y - at.y);
  const normal = { x: (-(next.y - at.y) / length) * width, y: ((next.x - at.x) / length) * width };
  return element("line", {
    x1: at.x - normal.x,
    y1: at.y - normal.y,
    x2: at.x + normal.x,
    y2: at.y + normal.y,
    stroke: theme.accent,
    "stroke-width": width * 0.45,
  });
}
