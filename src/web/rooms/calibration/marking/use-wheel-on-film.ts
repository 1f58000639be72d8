import { useEffect, useRef } from "react";
import type { MarkingFilm } from "./use-marking-film.ts";

/** Makes the film larger or smaller with the wheel, at the pointer; the page itself does not scroll under it. */
export function useWheelOnFilm(film: MarkingFilm): void {
  const latest = useRef(film);
  latest.current = film;
  const { element } = film.pane;
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
