import { useEffect } from "react";
import type { LightBox } from "./light-box.ts";

/** Goes back to the film when the asking is over, so that the keyboard goes on from there. */
export function useFilmAfterwards(box: LightBox): void {
  const pane = box.pane.element;
  useEffect(() => () => pane.current?.focus({ preventScroll: true }), [pane]);
}
