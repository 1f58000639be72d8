import type { ImagePoint } from "../../../core/units.ts";
import { polarityOf } from "../kernels/mark-shape.ts";
import { type AxisState, axisAtRest, stepAxis } from "./axis-tool.ts";
import { type MoveState, moveAtRest, movePathsWanted, stepMove } from "./move-tool.ts";
import { type OutlineState, outlineAtRest, stepOutline } from "./outline-tool.ts";
import {
  type Polarity,
  type SpotName,
  stay,
  step,
  type ToolEvent,
  type ToolStep,
  type ToolWorld,
} from "./tool-step.ts";
import { stepTrace, type TraceState, traceAtRest, tracePathsWanted } from "./trace-tool.ts";
import { stepTwoPoint, type TwoPointState, twoPointAtRest } from "./two-point-tool.ts";
import { stepWindow, type WindowState, windowAtRest } from "./window-tool.ts";

/** A spot needs no steps: a press is the whole gesture. */
interface SpotState {
  readonly tool: SpotName;
}

/** The tool in the hand and how far it is. */
export type ToolState = MoveState | WindowState | TraceState | TwoPointState | SpotState | OutlineState | AxisState;
/** The name of a tool. */
export type ToolName = ToolState["tool"];

/** The tools in the order of their bar, each with its key and a word on what it does. */
export const tools: readonly { readonly tool: ToolName; readonly key: string; readonly says: string }[] = [
  { tool: "move", key: "v", says: "Move the film, choose and move marks" },
  { tool: "window", key: "w", says: "Window: drag across for contrast, up and down for brightness" },
  { tool: "known", key: "k", says: "Known length: two ends and its millimetres give the scale" },
  { tool: "trace", key: "t", says: "Trace a canal from orifice to apex" },
  { tool: "distance", key: "d", says: "Distance between two places" },
  { tool: "spot", key: "s", says: "Spot, as an apex" },
  { tool: "outline", key: "o", says: "Outline, as of a lesion" },
  { tool: "fragment", key: "5", says: "Fragment: its top, then its tip" },
  { tool: "fillingEnd", key: "6", says: "Where a filling ends: its distance to the apex" },
  { tool: "apex", key: "7", says: "Apex of a root" },
  { tool: "level", key: "8", says: "Level of a canal, as where a bend begins" },
  { tool: "wall", key: "9", says: "Wall of the root: its outer surface, then the edge of the canal" },
  { tool: "crownRoot", key: "3", says: "Crown and root: cusp, level, apex" },
];

/** Whether a tool marks something, so that the crosshair belongs on the film. */
export const isMarking = (tool: ToolName): boolean => tool !== "move" && tool !== "window";

/** A tool as it is taken into the hand. */
export function toolAtRest(tool: ToolName, polarity: Polarity): ToolState {
  switch (tool) {
    case "move":
      return moveAtRest;
    case "window":
      return windowAtRest;
    case "trace":
    case "fragment":
      return traceAtRest(polarity, tool);
    case "known":
    case "distance":
    case "wall":
      return twoPointAtRest(tool);
    case "spot":
    case "apex":
    case "fillingEnd":
    case "level":
      return { tool };
    case "outline":
      return outlineAtRest;
    case "crownRoot":
      return axisAtRest;
  }
}

/** The tool in the hand after an event. */
export function stepTool(state: ToolState, event: ToolEvent, world: ToolWorld): ToolStep<ToolState> {
  switch (state.tool) {
    case "move":
      return stepMove(state, event, world);
    case "window":
      return stepWindow(state, event, world);
    case "trace":
    case "fragment":
      return stepTrace(state, event, world);
    case "known":
    case "distance":
    case "wall":
      return stepTwoPoint(state, event, world);
    case "crownRoot":
      return stepAxis(state, event, world);
    case "spot":
    case "apex":
    case "fillingEnd":
    case "level":
      return event.is === "pressed" || event.is === "ended"
        ? step(state, { do: "spotted", as: state.tool, at: event.at })
        : stay(state);
    case "outline":
      return stepOutline(state, event, world);
  }
}

/** Where paths over the ridge picture should begin next, and along which lines. */
export function pathsWanted(state: ToolState): readonly { from: ImagePoint; polarity: Polarity }[] {
  if (state.tool === "trace" || state.tool === "fragment")
    return tracePathsWanted(state).map((from) => ({ from, polarity: state.polarity }));
  if (state.tool !== "move" || state.held?.is !== "anchor") return [];
  const polarity = polarityOf(state.held.body);
  return movePathsWanted(state).map((from) => ({ from, polarity }));
}

/** Whether a gesture has begun, so that Escape belongs to it. */
export function isBusy(state: ToolState): boolean {
  switch (state.tool) {
    case "move":
      return state.held !== undefined;
    case "window":
      return state.drag !== undefined;
    case "trace":
    case "fragment":
      return state.course.anchors.length > 0;
    case "known":
    case "distance":
    case "wall":
      return state.from !== undefined;
    case "outline":
      return state.points.length > 0;
    case "crownRoot":
      return state.places.length > 0;
    case "spot":
    case "apex":
    case "fillingEnd":
    case "level":
      return false;
  }
}
