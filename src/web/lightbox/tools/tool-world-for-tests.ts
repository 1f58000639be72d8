import type { ImagePoint } from "../../../core/units.ts";
import type { PathFinder } from "../kernels/course-segments.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import { hitAt } from "../kernels/nearest-on-marks.ts";
import type { Pointing, ToolEvent, ToolWorld } from "./tool-step.ts";

/** Finds nothing: the ridge picture or the tree is not there yet. */
export const notYet: PathFinder = () => undefined;
/** A way around a corner with points enough to be recorded. */
const aroundCorner: PathFinder = (from, to) => [
  from,
  filmPoint(to.column, from.row),
  filmPoint(to.column, (from.row + to.row) / 2),
  to,
];

/** What a tool sees in a test: no marks, paths around corners, a 12-bit film. */
export function worldWith(others: Partial<ToolWorld> & { readonly marks?: readonly Mark[] } = {}): ToolWorld {
  const marks = others.marks ?? [];
  return {
    find: () => aroundCorner,
    polarity: "dark",
    marks,
    chosen: undefined,
    hit: (at) => hitAt(marks, at, 6, others.chosen),
    window: { centre: 2000, width: 1000, invert: false },
    bitsStored: 12,
    samePlacePx: 3,
    ...others,
  };
}

const pointing = (at: ImagePoint, free: boolean): Pointing => ({ at, screen: { x: at.column, y: at.row }, free });
/** Events at a place of the film, as the mouse or the crosshair sends them. */
export const pressAt = (column: number, row: number, free = false): ToolEvent => ({
  is: "pressed",
  twice: false,
  ...pointing(filmPoint(column, row), free),
});
export const pressTwiceAt = (column: number, row: number): ToolEvent => ({
  is: "pressed",
  twice: true,
  ...pointing(filmPoint(column, row), false),
});
export const moveTo = (column: number, row: number, free = false): ToolEvent => ({
  is: "moved",
  ...pointing(filmPoint(column, row), free),
});
export const releaseAt = (column: number, row: number): ToolEvent => ({
  is: "released",
  ...pointing(filmPoint(column, row), false),
});
export const endAt = (column: number, row: number): ToolEvent => ({
  is: "ended",
  ...pointing(filmPoint(column, row), false),
});

/** A tool after several events, with all that it asked for on the way. */
export function after<State>(
  start: State,
  events: readonly ToolEvent[],
  stepOf: (state: State, event: ToolEvent) => { state: State; effects: readonly unknown[] },
): { state: State; effects: unknown[] } {
  return events.reduce<{ state: State; effects: unknown[] }>(
    ({ state, effects }, event) => {
      const next = stepOf(state, event);
      return { state: next.state, effects: [...effects, ...next.effects] };
    },
    { state: start, effects: [] },
  );
}
