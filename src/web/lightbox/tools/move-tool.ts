import type { ImagePoint } from "../../../core/units.ts";
import {
  type Course,
  completed,
  courseOf,
  isComplete,
  pointsOfCourse,
  startsWanted,
  withAnchorAt,
  withAnchorIn,
} from "../kernels/course-segments.ts";
import { fairedCourse } from "../kernels/faired-course.ts";
import type { ScreenPoint } from "../kernels/film-placement.ts";
import { pairOf, pointOf } from "../kernels/film-point.ts";
import {
  type FollowedBody,
  isFollowed,
  type Mark,
  type MarkBody,
  polarityOf,
  withHandleAt,
} from "../kernels/mark-shape.ts";
import { type Pointing, stay, step, type ToolEvent, type ToolStep, type ToolWorld } from "./tool-step.ts";

/** A followed line with one of its anchors in the hand. */
interface HeldAnchor {
  readonly is: "anchor";
  readonly mark: Mark;
  readonly body: FollowedBody;
  readonly handle: number;
  readonly course: Course;
  readonly moved: boolean;
  /** Let go; recorded as soon as its paths are known. */
  readonly settling: boolean;
}
/** Any other mark with one of its places in the hand. */
interface HeldPlace {
  readonly is: "place";
  readonly mark: Mark;
  readonly handle: number;
  readonly body: MarkBody;
  readonly moved: boolean;
}

/** Moving the film, choosing marks, and moving their places. */
export interface MoveState {
  readonly tool: "move";
  readonly held?: HeldAnchor | HeldPlace | { readonly is: "film"; readonly last: ScreenPoint; readonly moved: boolean };
}

/** The tool with nothing in the hand. */
export const moveAtRest: MoveState = { tool: "move" };

/** Places from which paths are needed while an anchor is in the hand: its fixed neighbours. */
export function movePathsWanted({ held }: MoveState): ImagePoint[] {
  if (held?.is !== "anchor") return [];
  if (held.settling) return startsWanted(held.course);
  const { segments, anchors } = held.course;
  return [held.handle - 1, held.handle].flatMap((segment) => {
    const neighbour = anchors[segment < held.handle ? segment : segment + 1];
    return segments[segment]?.drawn === "snapped" && neighbour !== undefined ? [neighbour] : [];
  });
}

/** The mark in the hand as it would be recorded now, for drawing. */
export function markInHand({ held }: MoveState): { markId: string; body: MarkBody } | undefined {
  if (held === undefined || held.is === "film") return undefined;
  return { markId: held.mark.id, body: held.is === "anchor" ? tracedBody(held.body, held.course) : held.body };
}

/** A followed mark with another course. */
export const tracedBody = (body: FollowedBody, course: Course): FollowedBody => ({
  ...body,
  anchors: course.anchors.map(pairOf),
  points: pointsOfCourse(course).map(pairOf),
});

/** The course that a mark holds, cut at its anchors. */
export const courseOfMark = (body: FollowedBody): Course =>
  courseOf(body.anchors.map(pointOf), body.points.map(pointOf));

/** The tool after an event. */
export function stepMove(state: MoveState, event: ToolEvent, world: ToolWorld): ToolStep<MoveState> {
  switch (event.is) {
    case "pressed":
      return pressed(event, world);
    case "moved":
      return moved(state, event, world);
    case "released":
    case "ended":
      return released(state, world);
    case "pathsFound":
      return settled(state, world);
    case "cancelled":
      return state.held === undefined
        ? step(state, { do: "chosen", markId: undefined, handle: undefined })
        : stay(moveAtRest);
    case "takenBack":
      return stay(state);
  }
}

function pressed(event: Pointing & { twice: boolean }, world: ToolWorld): ToolStep<MoveState> {
  const hit = world.hit(event.at);
  const mark = world.marks.find(({ id }) => id === hit?.markId);
  if (hit === undefined || mark === undefined)
    return stay({ tool: "move", held: { is: "film", last: event.screen, moved: false } });
  if (hit.on === "handle")
    return step(holding(mark, hit.handle), { do: "chosen", markId: mark.id, handle: hit.handle });
  if (event.twice && isFollowed(mark.body)) return anchorPutIn(mark, mark.body, hit.point);
  return step(moveAtRest, { do: "chosen", markId: mark.id, handle: undefined });
}

function holding(mark: Mark, handle: number): MoveState {
  const { body } = mark;
  if (!isFollowed(body)) return { tool: "move", held: { is: "place", mark, handle, body, moved: false } };
  const course = courseOfMark(body);
  return { tool: "move", held: { is: "anchor", mark, body, handle, course, moved: false, settling: false } };
}

/** A new anchor at one of a course's points; the course keeps its form until the anchor is moved. */
export function anchorPutIn(mark: Mark, body: FollowedBody, point: number): ToolStep<MoveState> {
  let first = 0;
  const course = courseOfMark(body);
  for (const [index, { points = [] }] of course.segments.entries()) {
    const last = first + points.length - 1;
    if (point <= last) {
      const more = withAnchorIn(course, index, point - first);
      if (more === course) break;
      const chosen = { do: "chosen", markId: mark.id, handle: index + 1 } as const;
      return step(moveAtRest, { do: "reshaped", mark, body: tracedBody(body, more) }, chosen);
    }
    first = last;
  }
  return step(moveAtRest, { do: "chosen", markId: mark.id, handle: undefined });
}

function moved(state: MoveState, event: Pointing, world: ToolWorld): ToolStep<MoveState> {
  const { held } = state;
  if (held === undefined || (held.is === "anchor" && held.settling)) return stay(state);
  if (held.is === "film") {
    const by = { x: event.screen.x - held.last.x, y: event.screen.y - held.last.y };
    return step({ tool: "move", held: { is: "film", last: event.screen, moved: true } }, { do: "pushed", by });
  }
  if (held.is === "place") {
    if (isFollowed(held.body)) return stay(state);
    return stay({ tool: "move", held: { ...held, body: withHandleAt(held.body, held.handle, event.at), moved: true } });
  }
  const course = withAnchorAt(held.course, held.handle, event.at, world.find(polarityOf(held.body)));
  return stay({ tool: "move", held: { ...held, course, moved: true } });
}

function released(state: MoveState, world: ToolWorld): ToolStep<MoveState> {
  const { held } = state;
  if (held === undefined) return stay(state);
  if (held.is === "film" && !held.moved)
    return step(moveAtRest, { do: "chosen", markId: undefined, handle: undefined });
  if (held.is === "film" || !held.moved) return stay(moveAtRest);
  if (held.is === "place") return step(moveAtRest, { do: "reshaped", mark: held.mark, body: held.body });
  return settled({ tool: "move", held: { ...held, settling: true } }, world);
}

function settled(state: MoveState, world: ToolWorld): ToolStep<MoveState> {
  const { held } = state;
  if (held?.is !== "anchor") return stay(state);
  const course = completed(held.course, world.find(polarityOf(held.body)));
  if (!held.settling || !isComplete(course)) return stay({ tool: "move", held: { ...held, course } });
  const fair = fairedCourse(course, [held.handle - 1, held.handle, held.handle + 1]);
  return step(moveAtRest, { do: "reshaped", mark: held.mark, body: tracedBody(held.body, fair) });
}
