import { isArrow } from "../kernels/crosshair-motion.ts";
import { toScreen } from "../kernels/film-placement.ts";
import { pointOf } from "../kernels/film-point.ts";
import type { Pointing } from "../tools/tool-step.ts";
import {
  crosshairOf,
  keepInSight,
  type LandmarkPane,
  landmarkKey,
  movedCrosshair,
  type Press,
} from "./landmark-keys.ts";
import type { HardPartUse } from "./use-hard-parts.ts";

/** Presses within this many pixels of the screen are of one place. */
const samePlaceOnScreen = 4;
/** The same on the film as it lies in its pane. */
export const samePlaceOn = ({ view: { placing } }: LandmarkPane): number =>
  samePlaceOnScreen / (placing?.placement.zoom ?? 1);

/** What a key does in the pane of the first film while hard parts are outlined; false for a key that is not the pane's. */
export function hardPartKey(pane: LandmarkPane, hard: HardPartUse, press: Press): boolean {
  if (press.ctrlKey || press.metaKey) return false;
  const send = (event: Parameters<HardPartUse["send"]>[0]): true => {
    hard.send(event, samePlaceOn(pane));
    return true;
  };
  if (isArrow(press.key)) {
    const at = movedCrosshair(pane, press);
    return at === undefined ? false : send({ is: "moved", ...pointingAt(pane, at) });
  }
  switch (press.key) {
    case " ":
      pane.use.setCrosshair(pane.side, crosshairOf(pane));
      send({ is: "pressed", twice: false, ...pointingAt(pane, crosshairOf(pane)) });
      return send({ is: "released", ...pointingAt(pane, crosshairOf(pane)) });
    case "Enter":
      return send({ is: "ended", ...pointingAt(pane, crosshairOf(pane)) });
    case "Backspace":
      return send({ is: "takenBack" });
    case "Escape":
      if (hard.drawing.points.length === 0) hard.turn(false);
      return send({ is: "cancelled" });
    case "Delete":
      if (hard.chosen !== undefined) hard.takeOff(hard.chosen);
      return hard.chosen !== undefined;
    case "n":
    case "N":
      return nextPart(pane, hard, press.shiftKey ? -1 : 1);
    default:
      return landmarkKey(pane, press);
  }
}

function pointingAt({ view: { placing } }: LandmarkPane, at: Pointing["at"]): Pointing {
  const screen = placing === undefined ? { x: 0, y: 0 } : toScreen(placing.placement, placing.pane, at);
  return { at, screen, free: false };
}

function nextPart(pane: LandmarkPane, { outlines, chosen, choose }: HardPartUse, way: 1 | -1): boolean {
  const count = outlines.length;
  if (count === 0) return false;
  const index = ((chosen ?? (way === 1 ? -1 : count)) + way + count) % count;
  const first = outlines[index]?.[0];
  choose(index);
  if (first !== undefined) keepInSight(pane, pointOf(first));
  return true;
}
