import { useEffect, useRef } from "react";
import { distancesAlong } from "../../../core/geometry/course-of-path.ts";
import { toFilm } from "../kernels/film-placement.ts";
import { inFilm } from "../kernels/film-point.ts";
import { lineOf } from "../kernels/mark-shape.ts";
import { nearestOnLine } from "../kernels/nearest-on-marks.ts";
import type { Pointing } from "../tools/tool-step.ts";
import type { LightBox } from "./light-box.ts";
import type { FilmView } from "./use-film-view.ts";

type PointerLike = Pick<React.PointerEvent, "clientX" | "clientY" | "shiftKey">;

/** Two presses within this time and place are a double press. */
const twiceWithin = { milliseconds: 380, pixels: 6 } as const;

/** Takes the mouse, pen or finger to the tool in the hand; with Space or the middle button it moves the film instead. */
export function usePointing(box: LightBox) {
  const pushing = useRef<{ x: number; y: number } | undefined>(undefined);
  const pressed = useRef({ at: 0, x: 0, y: 0 });
  const space = useRef({ held: false, used: false });
  const latest = useRef(box);
  latest.current = box;

  const pointingAt = (event: PointerLike): Pointing | undefined => {
    const { placing, pane, film } = latest.current;
    if (placing === undefined) return undefined;
    const screen = pane.screenOf(event);
    const at = inFilm(toFilm(placing.placement, placing.pane, screen), film.body);
    return { at, screen, free: event.shiftKey };
  };
  return {
    pointingAt,
    space,
    onPointerDown: (event: React.PointerEvent<HTMLDivElement>) => {
      const pointing = pointingAt(event);
      if (pointing === undefined || (event.button !== 0 && event.button !== 1)) return;
      event.currentTarget.focus({ preventScroll: true });
      event.currentTarget.setPointerCapture(event.pointerId);
      latest.current.setCrosshair(undefined);
      // A question that is passed over by going on with the film is answered: nothing that was marked is lost.
      if (latest.current.asking !== undefined) return latest.current.passOver();
      if (event.button === 1 || space.current.held) {
        space.current.used = true;
        pushing.current = pointing.screen;
        return;
      }
      const twice = isTwice(pressed.current, event);
      pressed.current = { at: twice ? 0 : event.timeStamp, x: event.clientX, y: event.clientY };
      latest.current.tool.send({ is: "pressed", twice, ...pointing });
    },
    onPointerMove: (event: React.PointerEvent<HTMLDivElement>) => {
      const pointing = pointingAt(event);
      if (pointing === undefined) return;
      const { placing, tool, crosshair, setCrosshair, pointed } = latest.current;
      pointed.set(pointing);
      if (pushing.current !== undefined) {
        placing?.push({ x: pointing.screen.x - pushing.current.x, y: pointing.screen.y - pushing.current.y });
        pushing.current = pointing.screen;
        return;
      }
      if (crosshair !== undefined) setCrosshair(undefined);
      tool.send({ is: "moved", ...pointing });
      if (tool.state.tool === "move" && tool.state.held === undefined) hover(latest.current, pointing);
    },
    onPointerUp: (event: React.PointerEvent<HTMLDivElement>) => {
      const pointing = pointingAt(event);
      if (pushing.current !== undefined) pushing.current = undefined;
      else if (pointing !== undefined) latest.current.tool.send({ is: "released", ...pointing });
    },
    onPointerLeave: () => {
      latest.current.setPlace(undefined);
      latest.current.pointed.set(undefined);
    },
  };
}

function isTwice(before: { at: number; x: number; y: number }, event: React.PointerEvent): boolean {
  const near = Math.hypot(event.clientX - before.x, event.clientY - before.y) <= twiceWithin.pixels;
  return near && event.timeStamp - before.at <= twiceWithin.milliseconds;
}

/** How far from a course, in pixels of the screen, the pointer still names a place on it. */
const besideCourse = 24;

/** Names the place on the chosen course that the pointer is beside. */
function hover({ marks, chosen, placing, place, setPlace }: LightBox, { at }: Pointing): void {
  const mark = marks.find(({ id }) => id === chosen?.markId);
  if (mark?.body.shape !== "trace" || placing === undefined) return;
  const line = lineOf(mark.body);
  const nearest = nearestOnLine(line, at);
  if (nearest === undefined || nearest.distancePx * placing.placement.zoom > besideCourse) {
    if (place !== undefined) setPlace(undefined);
    return;
  }
  const along = distancesAlong(line);
  setPlace({ markId: mark.id, share: (along[nearest.point] ?? 0) / (along.at(-1) || 1) });
}

/** Zooms with the wheel at the pointer; the page itself does not scroll under the film. */
export function useWheelZoom(view: Pick<FilmView, "pane" | "placing">): void {
  const latest = useRef(view);
  latest.current = view;
  const { element } = view.pane;
  useEffect(() => {
    const pane = element.current;
    if (pane === null) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 30 : 1;
      const { placing, pane: held } = latest.current;
      placing?.zoom(Math.exp(-event.deltaY * lines * (event.ctrlKey ? 0.01 : 0.0015)), held.screenOf(event));
    };
    pane.addEventListener("wheel", turn, { passive: false });
    return () => pane.removeEventListener("wheel", turn);
  }, [element]);
}
