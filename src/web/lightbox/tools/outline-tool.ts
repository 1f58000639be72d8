import type { ImagePoint } from "../../../core/units.ts";
import { pixelsBetween } from "../kernels/film-point.ts";
import { type Pointing, stay, step, type ToolEvent, type ToolStep, type ToolWorld } from "./tool-step.ts";

/** An outline being drawn: corner by corner with presses, or in one sweep while the button is held. */
export interface OutlineState {
  readonly tool: "outline";
  readonly points: readonly ImagePoint[];
  readonly pointer?: ImagePoint;
  readonly sweeping: boolean;
}

/** The tool before its first corner. */
export const outlineAtRest: OutlineState = { tool: "outline", points: [], sweeping: false };

/** Places of a sweep lie this far apart, in widths of {@link ToolWorld.samePlacePx}. */
const sweepStep = 1.5;
/** The record keeps no more corners of one outline. */
const mostPoints = 2_000;

/** All that the tool looks at. */
type OutlineWorld = Pick<ToolWorld, "samePlacePx">;

/** The tool after an event: it ends with Enter, a double press, a press on the first corner, or a sweep back to it. */
export function stepOutline(state: OutlineState, event: ToolEvent, world: OutlineWorld): ToolStep<OutlineState> {
  switch (event.is) {
    case "pressed":
      if (event.twice || closes(state, event.at, world)) return ended(state);
      return stay({ ...withPoint(state, event.at, world.samePlacePx), sweeping: true });
    case "moved":
      return stay(moved(state, event, world));
    case "released":
      return state.sweeping && closes(state, event.at, world) ? ended(state) : stay({ ...state, sweeping: false });
    case "ended":
      return ended(withPoint(state, event.at, world.samePlacePx));
    case "takenBack":
      return stay({ ...state, points: state.points.slice(0, -1) });
    case "cancelled":
      return stay(outlineAtRest);
    case "pathsFound":
      return stay(state);
  }
}

function moved(state: OutlineState, { at }: Pointing, { samePlacePx }: OutlineWorld): OutlineState {
  const following = { ...state, pointer: at };
  return state.sweeping ? withPoint(following, at, samePlacePx * sweepStep) : following;
}

function withPoint(state: OutlineState, at: ImagePoint, apartPx: number): OutlineState {
  const last = state.points.at(-1);
  if (state.points.length >= mostPoints || (last !== undefined && pixelsBetween(last, at) < apartPx)) return state;
  return { ...state, points: [...state.points, at] };
}

function closes({ points }: OutlineState, at: ImagePoint, { samePlacePx }: OutlineWorld): boolean {
  const first = points[0];
  return points.length >= 3 && first !== undefined && pixelsBetween(first, at) < 2 * samePlacePx;
}

function ended(state: OutlineState): ToolStep<OutlineState> {
  if (state.points.length < 3)
    return step(
      { ...state, sweeping: false },
      { do: "say", words: "Cannot close the outline: it has fewer than 3 corners; add more, or leave with Escape" },
    );
  return step(outlineAtRest, { do: "outlined", points: state.points });
}
