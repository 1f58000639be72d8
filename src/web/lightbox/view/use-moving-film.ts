import { type ComponentProps, useRef } from "react";
import { isArrow, pushOf } from "../kernels/crosshair-motion.ts";
import { useWheelZoom } from "./pointing.ts";
import type { FilmView } from "./use-film-view.ts";

type Stage = Pick<
  ComponentProps<"div">,
  "onPointerDown" | "onPointerMove" | "onPointerUp" | "onPointerCancel" | "onKeyDown"
> & { readonly tabIndex: 0; readonly "data-tool": "move" };

const zooms: Readonly<Record<string, number>> = { "+": 1.25, "=": 1.25, "-": 0.8, _: 0.8 };

/** What moves a film that is only looked at: drag, wheel, arrows, + and -, 0 for the whole film. */
export function useMovingFilm(view: Pick<FilmView, "pane" | "placing">): Stage {
  const latest = useRef(view);
  latest.current = view;
  const held = useRef<{ x: number; y: number } | undefined>(undefined);
  useWheelZoom(view);
  const letGo = () => {
    held.current = undefined;
  };
  return {
    tabIndex: 0,
    "data-tool": "move",
    onPointerDown: (event) => {
      if (event.button !== 0 && event.button !== 1) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = latest.current.pane.screenOf(event);
    },
    onPointerMove: (event) => {
      const from = held.current;
      if (from === undefined) return;
      const to = latest.current.pane.screenOf(event);
      held.current = to;
      latest.current.placing?.push({ x: to.x - from.x, y: to.y - from.y });
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
    onKeyDown: (event) => {
      if (event.target === event.currentTarget && moveByKey(latest.current, event)) event.preventDefault();
    },
  };
}

function moveByKey({ placing }: Pick<FilmView, "placing">, press: React.KeyboardEvent): boolean {
  if (placing === undefined || press.ctrlKey || press.metaKey) return false;
  const factor = zooms[press.key];
  if (isArrow(press.key)) placing.push(pushOf(press.key, { shift: press.shiftKey, alt: press.altKey }));
  else if (factor !== undefined) placing.zoom(factor);
  else if (press.key === "0") placing.fit();
  else return false;
  return true;
}
