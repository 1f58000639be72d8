import type { ImagePoint } from "../../../core/units.ts";
import { pixelsBetween } from "../kernels/film-point.ts";
import { type Pointing, stay, step, type ToolEvent, type ToolStep, type ToolWorld } from "./tool-step.ts";

/** Crown and root: cusp, level and apex, each with a press. */
export interface AxisState {
  readonly tool: "crownRoot";
  readonly places: readonly ImagePoint[];
  readonly pointer?: ImagePoint;
}

/** The tool before its first place. */
export const axisAtRest: AxisState = { tool: "crownRoot", places: [] };

/** The tool after an event: press or Enter for each of three places, Backspace back one, Escape away. */
export function stepAxis(state: AxisState, event: ToolEvent, world: ToolWorld): ToolStep<AxisState> {
  switch (event.is) {
    case "pressed":
    case "ended":
      return marked(state, event, world);
    case "moved":
      return stay({ ...state, pointer: event.at });
    case "takenBack":
      return stay({ ...state, places: state.places.slice(0, -1) });
    case "cancelled":
      return stay(axisAtRest);
    case "released":
    case "pathsFound":
      return stay(state);
  }
}

function marked(state: AxisState, { at }: Pointing, world: ToolWorld): ToolStep<AxisState> {
  const last = state.places.at(-1);
  if (last !== undefined && pixelsBetween(last, at) < world.samePlacePx) return stay(state);
  const [crown, level, apex] = [...state.places, at];
  if (crown === undefined || level === undefined || apex === undefined)
    return stay({ ...state, places: [...state.places, at], pointer: at });
  return step(axisAtRest, { do: "parted", crown, level, apex });
}
