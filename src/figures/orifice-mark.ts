import { type CanalState, isAwaited } from "./canal-state.ts";
import { element, group, numberText, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** A round orifice in its state. Every state has a shape of its own, so that it can be read without colour. */
export function orificeMark(state: CanalState, { x, y }: Spot, radius: number, theme: Theme): SvgNode {
  const line = Math.max(1, radius * 0.2);
  const ring = (stroke: string, more: Record<string, string | number> = {}) =>
    element("circle", {
      cx: x,
      cy: y,
      r: radius - line / 2,
      fill: theme.dentine,
      stroke,
      "stroke-width": line,
      ...more,
    });
  return group({ "data-part": "orifice", "data-state": state.state }, [
    ...inner(state, { x, y }, radius, { theme, line, ring }),
  ]);
}

interface Pen {
  readonly theme: Theme;
  readonly line: number;
  readonly ring: (stroke: string, more?: Record<string, string | number>) => SvgNode;
}

function inner(state: CanalState, { x, y }: Spot, radius: number, pen: Pen): readonly SvgNode[] {
  const { theme, ring, line } = pen;
  const dot = (r: number, fill: string) => element("circle", { cx: x, cy: y, r, fill });
  switch (state.state) {
    case "notFound": {
      const dash = (Math.PI * 2 * (radius - line / 2)) / 16;
      if (isAwaited(state)) return [ring(theme.quiet, { "stroke-width": line * 0.75, "stroke-dasharray": dots(dash) })];
      return [ring(theme.accent, { "stroke-dasharray": `${numberText(dash * 1.1)} ${numberText(dash * 0.9)}` })];
    }
    case "located":
      return [ring(theme.ink)];
    case "negotiated":
      return [ring(theme.ink), dot(radius * 0.32, theme.ink)];
    case "shaped":
      return [ring(theme.ink), halfDisc({ x, y }, radius - line / 2, theme.ink)];
    case "medicated":
      return [ring(theme.ink), hatch({ x, y }, radius - line, theme.ink)];
    case "filled":
      return [dot(radius, theme.ink)];
    case "blocked":
      return [ring(theme.accent), bar({ x, y }, radius, theme.accent)];
  }
}

/** Short strokes with as much between them, closer together than those of a canal that was not found. */
const dots = (step: number): string => `${numberText(step * 0.5)} ${numberText(step * 0.5)}`;

function halfDisc({ x, y }: Spot, radius: number, fill: string): SvgNode {
  const d = `M${numberText(x - radius)} ${numberText(y)}A${numberText(radius)} ${numberText(radius)} 0 0 0 ${numberText(x + radius)} ${numberText(y)}Z`;
  return element("path", { d, fill });
}

/** Three slanting strokes, each as long as the circle lets it be. */
function hatch({ x, y }: Spot, radius: number, stroke: string): SvgNode {
  const strokes = [-0.55, 0, 0.55].map((share) => {
    const half = radius * Math.sqrt(1 - share * share) * Math.SQRT1_2;
    const off = share * radius * Math.SQRT1_2;
    const ends = [x + off - half, y + off + half, x + off + half, y + off - half].map(numberText);
    return `M${ends[0]} ${ends[1]}L${ends[2]} ${ends[3]}`;
  });
  return element("path", { d: strokes.join(""), fill: "none", stroke, "stroke-width": Math.max(1, radius * 0.24) });
}

/** A bar right across, longer than the orifice is wide. */
function bar({ x, y }: Spot, radius: number, fill: string): SvgNode {
  const half = radius * 1.3;
  const thick = radius * 0.52;
  return element("rect", { x: x - half, y: y - thick / 2, width: 2 * half, height: thick, fill });
}
