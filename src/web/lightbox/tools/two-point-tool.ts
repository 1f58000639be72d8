import type { ImagePoint } from "../../../core/units.ts";
import { pixelsBetween } from "../kernels/film-point.ts";
import { stay, step, type ToolEvent, type ToolStep, type ToolWorld, type TwoPointName } from "./tool-step.ts";

/** A known length, a distance or a wall: two places, by a drag or by two presses. */
export interface TwoPointState {
  readonly tool: TwoPointName;
  readonly from?: ImagePoint;
  readonly to?: ImagePoint;
}

/** The tool before its first place. */
export const twoPointAtRest = (tool: TwoPointState["tool"]): TwoPointState => ({ tool });

/** The tool after an event. */
export function stepTwoPoint(state: TwoPointState, event: ToolEvent, world: ToolWorld): ToolStep<TwoPointState> {
  const rest = twoPointAtRest(state.tool);
  switch (event.is) {
    case "pressed":
      return state.from === undefined
        ? stay({ ...rest, from: event.at, to: event.at })
        : finished(state, event.at, world);
    case "moved":
      return stay(state.from === undefined ? state : { ...state, to: event.at });
    case "released":
      // A release near the press is the end of a click: the second place is still to come.
      return isNear(state.from, event.at, world) ? stay(state) : finished(state, event.at, world);
    case "ended":
      return state.from === undefined
        ? stay({ ...rest, from: event.at, to: event.at })
        : finished(state, event.at, world);
    case "takenBack":
    case "cancelled":
      return stay(rest);
    case "pathsFound":
      return stay(state);
  }
}

const isNear = (from: ImagePoint | undefined, at: ImagePoint, { samePlacePx }: ToolWorld): boolean =>
  from === undefined || pixelsBetween(from, at) < samePlacePx;

function finished(state: TwoPointState, at: ImagePoint, world: ToolWorld): ToolStep<TwoPointState> {
  const { from } = state;
  if (from === undefined || isNear(from, at, world)) return stay(state);
  return step(twoPointAtRest(state.tool), { do: "measured", as: state.tool, from, to: at });
}
