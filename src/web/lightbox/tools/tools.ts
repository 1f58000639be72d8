import type { ImagePoint } from "../../../core/units.ts";
import { polarityOf } from "../kernels/mark-shape.ts";
import { type MoveState, moveAtRest, movePathsWanted, stepMove } from "./move-tool.ts";
import { type OutlineState, outlineAtRest, stepOutline } from "./outline-tool.ts";
import { type Polarity, stay, step, type ToolEvent, type ToolStep, type ToolWorld } from "./tool-step.ts";
import { stepTrace, type TraceState, traceAtRest, tracePathsWanted } from "./trace-tool.ts";
import { stepTwoPoint, type TwoPointState, twoPointAtRest } from "./two-point-tool.ts";
import { stepWindow, type WindowState, windowAtRest } from "./window-tool.ts";

/** A spot needs no steps: a press is the whole gesture. */
interface SpotState {
  readonly tool: "spot";
}

/** The tool in the hand and how far it is. */
export type ToolState = MoveState | WindowState | TraceState | TwoPointState | SpotState | OutlineState;
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
      return traceAtRest(polarity);
    case "known":
    case "distance":
      return twoPointAtRest(tool);
    case "spot":
      return { tool };
    case "outline":
      return outlineAtRest;
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
      return stepTrace(state, event, world);
    case "known":
    case "distance":
      return stepTwoPoint(state, event, world);
    case "spot":
      return event.is === "pressed" || event.is === "ended"
        ? step(state, { do: "spotted", at: event.at })
        : stay(state);
    case "outline":
      return stepOutline(state, event, world);
  }
}

/** Where paths over the ridge picture should begin next, and along which lines. */
export function pathsWanted(state: ToolState): readonly { from: ImagePoint; polarity: Polarity }[] {
  if (state.tool === "trace") return tracePathsWanted(state).map((from) => ({ from, polarity: state.polarity }));
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
      return state.course.anchors.length > 0;
    case "known":
    case "distance":
      return state.from !== undefined;
    case "outline":
      return state.points.length > 0;
    case "spot":
      return false;
  }
}
