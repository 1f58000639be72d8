import { useRef } from "react";
import type { ImagePoint } from "../../../core/units.ts";
import { toFilm } from "../kernels/film-placement.ts";
import { inFilm } from "../kernels/film-point.ts";
import { samePlaceOn } from "./hard-part-keys.ts";
import { type LandmarkPane, reachOn } from "./landmark-keys.ts";
import type { HardPartUse } from "./use-hard-parts.ts";

type PointerOnPane = React.PointerEvent<HTMLDivElement>;

/** Press, drag and let go, for landmarks or an outline; the middle button or Shift moves the film. */
export function useLandmarkPointer(pane: LandmarkPane, hard: HardPartUse) {
  const latest = useRef({ pane, hand: landmarkHand(pane) });
  latest.current = { pane, hand: hard.isOn ? outlineHand(pane, hard) : landmarkHand(pane) };
  const pushing = useRef<{ x: number; y: number } | undefined>(undefined);
  const placeOf = (event: React.MouseEvent): ImagePoint | undefined => {
    const { view } = latest.current.pane;
    if (view.placing === undefined) return undefined;
    return inFilm(toFilm(view.placing.placement, view.placing.pane, view.pane.screenOf(event)), view.film.body);
  };
  return {
    // A press gives the focus by itself.
    onPointerDown: (event: PointerOnPane) => {
      const at = placeOf(event);
      if (at === undefined || (event.button !== 0 && event.button !== 1)) return;
      event.currentTarget.focus({ preventScroll: true });
      event.currentTarget.setPointerCapture(event.pointerId);
      const { side, view, use } = latest.current.pane;
      use.setCrosshair(side, undefined);
      if (event.button === 1 || event.shiftKey) pushing.current = view.pane.screenOf(event);
      else latest.current.hand.press(at);
    },
    onPointerMove: (event: PointerOnPane) => {
      const at = placeOf(event);
      const from = pushing.current;
      if (at === undefined) return;
      if (from === undefined) return latest.current.hand.move(at, event.buttons !== 0);
      const { view } = latest.current.pane;
      const to = view.pane.screenOf(event);
      pushing.current = to;
      view.placing?.push({ x: to.x - from.x, y: to.y - from.y });
    },
    onPointerUp: (event: PointerOnPane) => {
      const at = placeOf(event);
      if (pushing.current === undefined && at !== undefined) latest.current.hand.letGo(at);
      pushing.current = undefined;
    },
    onPointerCancel: () => {
      pushing.current = undefined;
      latest.current.hand.cancel();
    },
    onDoubleClick: (event: React.MouseEvent) => {
      const at = placeOf(event);
      if (at !== undefined) latest.current.hand.twice(at);
    },
  };
}

/** What presses and moves of the pointer do. */
interface Hand {
  readonly press: (at: ImagePoint) => void;
  readonly move: (at: ImagePoint, isHeld: boolean) => void;
  readonly letGo: (at: ImagePoint) => void;
  readonly twice: (at: ImagePoint) => void;
  readonly cancel: () => void;
}

const nothing = (): void => undefined;

const landmarkHand = ({ side, view, use }: LandmarkPane): Hand => ({
  press: (at) => use.send({ is: "pressed", side, at, reachPx: reachOn(view) }),
  move: (at, isHeld) => isHeld && use.send({ is: "moved", side, at }),
  letGo: () => use.send({ is: "released" }),
  twice: nothing,
  cancel: () => use.send({ is: "takenBack" }),
});

/** Parts are outlined on the first film alone; on the second nothing is marked meanwhile. */
function outlineHand(pane: LandmarkPane, hard: HardPartUse): Hand {
  if (pane.side === "after") return { press: nothing, move: nothing, letGo: nothing, twice: nothing, cancel: nothing };
  const send = (event: Parameters<HardPartUse["send"]>[0]) => hard.send(event, samePlaceOn(pane));
  const screen = { x: 0, y: 0 };
  return {
    press: (at) => send({ is: "pressed", twice: false, at, screen, free: false }),
    move: (at) => send({ is: "moved", at, screen, free: false }),
    letGo: (at) => send({ is: "released", at, screen, free: false }),
    // A double press on the first corner has closed the outline already.
    twice: (at) => hard.drawing.points.length > 0 && send({ is: "ended", at, screen, free: false }),
    cancel: () => send({ is: "cancelled" }),
  };
}
