import type { ImagePoint } from "../../../core/units.ts";
import {
  appended,
  type Course,
  type CourseSegment,
  completed,
  isComplete,
  segmentBetween,
  shortened,
  startsWanted,
} from "../kernels/course-segments.ts";
import { fairedCourse, innerAnchors } from "../kernels/faired-course.ts";
import { pixelsBetween } from "../kernels/film-point.ts";
import {
  type Pointing,
  type Polarity,
  stay,
  step,
  type ToolEvent,
  type ToolStep,
  type ToolWorld,
} from "./tool-step.ts";

/** A course being traced: what is marked so far, and the piece that follows the pointer. */
export interface TraceState {
  /** A fragment is followed as a course is, along bright lines, and has ended with its second place. */
  readonly tool: "trace" | "fragment";
  readonly polarity: Polarity;
  readonly course: Course;
  /** From the last anchor to the pointer; absent before the first anchor. */
  readonly ahead?: CourseSegment;
  readonly pointer?: ImagePoint;
  /** The person has ended the course; it is recorded as soon as its last path is known. */
  readonly ending: boolean;
}

const noCourse: Course = { anchors: [], segments: [] };

/** The tool before its first place is marked. */
export const traceAtRest = (polarity: Polarity, tool: TraceState["tool"] = "trace"): TraceState => ({
  tool,
  polarity: tool === "fragment" ? "bright" : polarity,
  course: noCourse,
  ending: false,
});

/** Places from which paths are needed next, the one that the pointer waits for first. */
export function tracePathsWanted({ course, ending }: TraceState): ImagePoint[] {
  const last = course.anchors.at(-1);
  return [...(last === undefined || ending ? [] : [last]), ...startsWanted(course)];
}

/** The tool after an event: press to anchor, Enter or a double press to end, Backspace back one, Escape away. */
export function stepTrace(state: TraceState, event: ToolEvent, world: ToolWorld): ToolStep<TraceState> {
  if (state.ending && event.is !== "pathsFound" && event.is !== "cancelled") return stay(state);
  switch (event.is) {
    case "pressed":
      return event.twice ? ended(state, world) : pressed(anchored(state, event, world), world);
    case "moved":
      return stay(following(state, event, world));
    case "ended":
      return ended(anchored(state, event, world), world);
    case "takenBack":
      return stay(takenBack(state, world));
    case "cancelled":
      return stay(traceAtRest(state.polarity, state.tool));
    case "pathsFound":
      return found(state, world);
    case "released":
      return stay(state);
  }
}

const pressed = (state: TraceState, world: ToolWorld): ToolStep<TraceState> =>
  state.tool === "fragment" && state.course.anchors.length === 2 ? ended(state, world) : stay(state);

const drawnBy = ({ free }: Pointing): CourseSegment["drawn"] => (free ? "free" : "snapped");

function anchored(state: TraceState, pointing: Pointing, world: ToolWorld): TraceState {
  const last = state.course.anchors.at(-1);
  if (last !== undefined && pixelsBetween(last, pointing.at) < world.samePlacePx) return state;
  if (state.course.anchors.length >= mostAnchors) return state;
  const find = world.find(state.polarity);
  const course = appended(state.course, pointing.at, drawnBy(pointing), find);
  return following({ ...state, course }, pointing, world);
}

function following(state: TraceState, pointing: Pointing, world: ToolWorld): TraceState {
  const last = state.course.anchors.at(-1);
  if (last === undefined) return { ...state, pointer: pointing.at };
  const ahead = segmentBetween(last, pointing.at, drawnBy(pointing), world.find(state.polarity));
  return { ...state, ahead, pointer: pointing.at };
}

function ended(state: TraceState, world: ToolWorld): ToolStep<TraceState> {
  if (state.course.anchors.length < 2)
    return step(state, {
      do: "say",
      words: onePlace[state.tool],
    });
  const { ahead: _ahead, ...rest } = state;
  return found({ ...rest, ending: true }, world);
}

function takenBack(state: TraceState, world: ToolWorld): TraceState {
  const course = shortened(state.course);
  const { ahead: _ahead, ...rest } = state;
  if (course.anchors.length === 0 || state.pointer === undefined) return { ...rest, course };
  const pointing = { at: state.pointer, screen: { x: 0, y: 0 }, free: state.ahead?.drawn === "free" };
  return following({ ...rest, course }, pointing, world);
}

/** Fills in the paths that are known now; an ended course without gaps is handed over, if it is long enough to measure. */
function found(state: TraceState, world: ToolWorld): ToolStep<TraceState> {
  const find = world.find(state.polarity);
  const course = completed(state.course, find);
  if (!state.ending) return stay(withAhead({ ...state, course }, world));
  if (!isComplete(course)) return stay({ ...state, course });
  const { tool, polarity } = state;
  const rest = traceAtRest(polarity, tool);
  if (tool === "trace" && course.segments.reduce((sum, { points = [] }) => sum + points.length - 1, 1) < fewestPoints)
    return step(rest, { do: "say", words: tooShort });
  return step(rest, { do: "traced", as: tool, course: fairedCourse(course, innerAnchors(course)) });
}

function withAhead(state: TraceState, world: ToolWorld): TraceState {
  const last = state.course.anchors.at(-1);
  if (last === undefined || state.pointer === undefined || state.ahead === undefined) return state;
  return { ...state, ahead: segmentBetween(last, state.pointer, state.ahead.drawn, world.find(state.polarity)) };
}

const onePlace = {
  trace: "Cannot end the course: it has one place; mark the orifice first, then go on to the apex and end there",
  fragment: "Cannot end the fragment: it has one place; mark its top first, then its tip",
} as const;
/** The curvature of a course needs this many points (docs/methods/curvature). */
const fewestPoints = 4;
/** The record keeps no more anchors of one course. */
const mostAnchors = 60;
const tooShort =
  "Cannot record the course: it has fewer than 4 points, about 9 pixels; mark a longer one, or zoom in before tracing";
