import type { ImagePoint } from "../../../core/units.ts";
import type { Course, PathFinder } from "../kernels/course-segments.ts";
import type { ScreenPoint } from "../kernels/film-placement.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { Mark, MarkBody } from "../kernels/mark-shape.ts";
import type { Hit } from "../kernels/nearest-on-marks.ts";

/** Where the person points, with the mouse or with the crosshair. */
export interface Pointing {
  readonly at: ImagePoint;
  readonly screen: ScreenPoint;
  /** Shift is held: straight, without following the ridge. */
  readonly free: boolean;
}

/** What reaches a tool; the keyboard's Space, Enter, Backspace and Escape come as the same events as the mouse's. */
export type ToolEvent =
  | (Pointing & { readonly is: "pressed"; readonly twice: boolean })
  | (Pointing & { readonly is: "moved" })
  | (Pointing & { readonly is: "released" })
  | (Pointing & { readonly is: "ended" })
  | { readonly is: "takenBack" }
  | { readonly is: "cancelled" }
  | { readonly is: "pathsFound" };

/** Tools that take two places. */
export type TwoPointName = "known" | "distance" | "wall";
/** Tools that take one place. */
export type SpotName = "spot" | "apex" | "fillingEnd" | "level";

/** What a tool asks to be done; nothing has happened to the record before it asks. */
export type ToolEffect =
  | { readonly do: "traced"; readonly as: "trace" | "fragment"; readonly course: Course }
  | { readonly do: "measured"; readonly as: TwoPointName; readonly from: ImagePoint; readonly to: ImagePoint }
  | { readonly do: "parted"; readonly crown: ImagePoint; readonly level: ImagePoint; readonly apex: ImagePoint }
  | { readonly do: "outlined"; readonly points: readonly ImagePoint[] }
  | { readonly do: "spotted"; readonly as: SpotName; readonly at: ImagePoint }
  | { readonly do: "reshaped"; readonly mark: Mark; readonly body: MarkBody }
  | { readonly do: "chosen"; readonly markId: string | undefined; readonly handle: number | undefined }
  | { readonly do: "pushed"; readonly by: ScreenPoint }
  | { readonly do: "windowed"; readonly window: GreyWindow }
  | { readonly do: "say"; readonly words: string };

/** What a tool may look at. */
export interface ToolWorld {
  /** Finds a path over the ridge picture, from either of its ends; undefined while it is not known. */
  readonly find: (polarity: Polarity) => PathFinder;
  readonly polarity: Polarity;
  readonly marks: readonly Mark[];
  readonly chosen: string | undefined;
  readonly hit: (at: ImagePoint) => Hit | undefined;
  readonly window: GreyWindow;
  readonly bitsStored: number;
  /** How far apart two presses of one place may be, in pixels of the film. */
  readonly samePlacePx: number;
}

/** Whether a course follows dark lines (a canal) or bright ones (a filling, an instrument). */
export type Polarity = "dark" | "bright";

/** A tool after an event: its new state and what it asks for. */
export interface ToolStep<State> {
  readonly state: State;
  readonly effects: readonly ToolEffect[];
}

/** A step that asks for nothing. */
export const stay = <State>(state: State): ToolStep<State> => ({ state, effects: [] });

/** A step with what it asks for. */
export const step = <State>(state: State, ...effects: readonly ToolEffect[]): ToolStep<State> => ({ state, effects });
