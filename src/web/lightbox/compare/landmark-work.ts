import { type ImagePoint, type Px, px } from "../../../core/units.ts";
import { isSamePoint, pixelsBetween, pointOf } from "../kernels/film-point.ts";
import type { Landmark, Side } from "./comparison.ts";

/** What the hand is doing with landmarks, and which one is chosen. */
export interface LandmarkWork {
  /** A place marked on one film that waits for its mate on the other. */
  readonly waiting?: { readonly side: Side; readonly at: ImagePoint } | undefined;
  /** A place that is pressed and not let go. */
  readonly pressed?: { readonly side: Side; readonly at: ImagePoint } | undefined;
  /** A landmark in the hand. */
  readonly held?: { readonly index: number; readonly side: Side; readonly at: ImagePoint } | undefined;
  readonly chosen?: number | undefined;
}

/** What happens to a pane. `reachPx` is how near a press has to come to a landmark to take hold of it, px of the film. */
export type LandmarkEvent =
  | { readonly is: "pressed"; readonly side: Side; readonly at: ImagePoint; readonly reachPx: Px }
  | { readonly is: "moved"; readonly side: Side; readonly at: ImagePoint }
  | { readonly is: "released" }
  | { readonly is: "takenBack" }
  | { readonly is: "chosen"; readonly index: number | undefined };

/** What is to be recorded after an event. */
export type LandmarkEffect =
  | { readonly do: "add"; readonly places: Readonly<Record<Side, ImagePoint>> }
  | { readonly do: "move"; readonly index: number; readonly side: Side; readonly at: ImagePoint };

/** The work and what is to be recorded, after an event. */
export interface LandmarkStep {
  readonly work: LandmarkWork;
  readonly effect?: LandmarkEffect;
}

/** Nothing in the hand. */
export const noLandmarkWork: LandmarkWork = {};

/**
 * One step of marking landmarks: a press takes hold of a landmark or marks a place, letting go on the second film makes
 * the pair. Takes the work so far, what happened, and the landmarks that stand.
 */
export function landmarkStep(work: LandmarkWork, event: LandmarkEvent, landmarks: readonly Landmark[]): LandmarkStep {
  switch (event.is) {
    case "pressed":
      return { work: pressedAt(work, event, landmarks) };
    case "moved":
      return { work: movedTo(work, event) };
    case "released":
      return letGo(work, landmarks);
    case "takenBack":
      return { work: takenBack(work) };
    case "chosen":
      return { work: { ...work, chosen: event.index } };
  }
}

function pressedAt(
  work: LandmarkWork,
  { side, at, reachPx }: Extract<LandmarkEvent, { is: "pressed" }>,
  landmarks: readonly Landmark[],
): LandmarkWork {
  const index = nearest(landmarks, side, at, reachPx);
  if (index === undefined) return { ...work, held: undefined, pressed: { side, at } };
  const own = landmarks[index];
  return {
    ...work,
    pressed: undefined,
    chosen: index,
    held: { index, side, at: own === undefined ? at : pointOf(own[side]) },
  };
}

/** The landmark nearest to a place of a film, within reach. */
function nearest(landmarks: readonly Landmark[], side: Side, at: ImagePoint, reachPx: Px): number | undefined {
  const away = landmarks.map((one) => pixelsBetween(pointOf(one[side]), at));
  const least = px(Math.min(...away));
  return least <= reachPx ? away.indexOf(least) : undefined;
}

function movedTo(work: LandmarkWork, { side, at }: Extract<LandmarkEvent, { is: "moved" }>): LandmarkWork {
  if (work.held?.side === side) return { ...work, held: { ...work.held, at } };
  return work.pressed?.side === side ? { ...work, pressed: { side, at } } : work;
}

function letGo(work: LandmarkWork, landmarks: readonly Landmark[]): LandmarkStep {
  const { held, pressed, waiting } = work;
  if (held !== undefined) {
    const before = landmarks[held.index];
    const stays = before === undefined || isSamePoint(pointOf(before[held.side]), held.at);
    const rest = { ...work, held: undefined };
    return stays ? { work: rest } : { work: rest, effect: { do: "move", ...held } };
  }
  if (pressed === undefined) return { work };
  if (waiting === undefined || waiting.side === pressed.side) return { work: { waiting: pressed } };
  const places =
    pressed.side === "after" ? { before: waiting.at, after: pressed.at } : { before: pressed.at, after: waiting.at };
  return { work: { chosen: landmarks.length }, effect: { do: "add", places } };
}

/** What is in the hand goes first, then the place that waits, then the choice. */
function takenBack({ waiting, pressed, held, chosen }: LandmarkWork): LandmarkWork {
  if (held !== undefined || pressed !== undefined) return { waiting, chosen };
  return waiting === undefined ? {} : { chosen };
}

/** The landmarks as the hand has them now: the held one where it is held. */
export const shownLandmarks = (landmarks: readonly Landmark[], { held }: LandmarkWork): readonly Landmark[] =>
  held === undefined
    ? landmarks
    : landmarks.map((one, index) =>
        index === held.index ? { ...one, [held.side]: [held.at.column, held.at.row] } : one,
      );
