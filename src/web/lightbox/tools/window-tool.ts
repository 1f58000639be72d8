import type { ScreenPoint } from "../kernels/film-placement.ts";
import { draggedWindow, type GreyWindow } from "../kernels/grey-window.ts";
import { stay, step, type ToolEvent, type ToolStep, type ToolWorld } from "./tool-step.ts";

/** The grey window under the hand: where the drag began, with which window, and which it is now. */
export interface WindowState {
  readonly tool: "window";
  readonly drag?: { readonly from: ScreenPoint; readonly start: GreyWindow; readonly now: GreyWindow };
}

/** The tool while nothing is dragged. */
export const windowAtRest: WindowState = { tool: "window" };

/** The tool after an event: the film follows the drag, and only its end is a change. */
export function stepWindow(state: WindowState, event: ToolEvent, world: ToolWorld): ToolStep<WindowState> {
  const { drag } = state;
  switch (event.is) {
    case "pressed":
      return stay({ tool: "window", drag: { from: event.screen, start: world.window, now: world.window } });
    case "moved": {
      if (drag === undefined) return stay(state);
      const by = { x: event.screen.x - drag.from.x, y: event.screen.y - drag.from.y };
      return stay({ tool: "window", drag: { ...drag, now: draggedWindow(drag.start, by, world.bitsStored) } });
    }
    case "released":
      if (drag === undefined || drag.now === drag.start) return stay(windowAtRest);
      return step(windowAtRest, { do: "windowed", window: drag.now });
    case "cancelled":
      return stay(windowAtRest);
    default:
      return stay(state);
  }
}
