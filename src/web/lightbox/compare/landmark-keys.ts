import { type ImagePoint, px } from "../../../core/units.ts";
import { crosshairMoved, isArrow } from "../kernels/crosshair-motion.ts";
import { toScreen } from "../kernels/film-placement.ts";
import { inFilm, pointOf } from "../kernels/film-point.ts";
import type { FilmView } from "../view/use-film-view.ts";
import type { Side } from "./comparison.ts";
import type { LandmarkUse } from "./use-landmarks.ts";

/** One of the two panes. */
export interface LandmarkPane {
  readonly side: Side;
  readonly view: FilmView;
  readonly use: LandmarkUse;
}

/** A key as it is pressed. */
export type Press = Pick<KeyboardEvent, "key" | "shiftKey" | "altKey" | "ctrlKey" | "metaKey">;

/** How near a press has to come to a landmark to take hold of it, px of the screen. */
const reach = 12;
/** The same on the film as it lies in its pane. */
export const reachOn = ({ placing }: FilmView) => px(reach / (placing?.placement.zoom ?? 1));

const zooms: Readonly<Record<string, number>> = { "+": 1.25, "=": 1.25, "-": 0.8, _: 0.8 };

/** What a key does in a pane of landmarks; false for a key that is not the pane's. */
export function landmarkKey(pane: LandmarkPane, press: Press): boolean {
  const { view, use } = pane;
  if (press.ctrlKey || press.metaKey || view.placing === undefined) return false;
  if (isArrow(press.key)) return done(arrow(pane, press));
  const factor = zooms[press.key];
  if (factor !== undefined) return done(view.placing.zoom(factor));
  switch (press.key) {
    case "0":
      return done(view.placing.fit());
    case " ":
      return done(pressHere(pane));
    case "Escape":
    case "Backspace":
      return done(use.send({ is: "takenBack" }));
    case "Delete":
      return use.work.chosen === undefined ? false : done(use.takeOff(use.work.chosen));
    case "n":
    case "N":
      return done(nextLandmark(pane, press.shiftKey ? -1 : 1));
    default:
      return false;
  }
}

const done = (_: unknown): true => true;

/** Where the keyboard points; the middle of the pane before it has pointed anywhere. */
export function crosshairOf({ side, view, use }: LandmarkPane) {
  return use.crosshairs[side] ?? inFilm(view.placing?.placement.centre ?? pointOf([0, 0]), view.film.body);
}

function arrow(pane: LandmarkPane, press: Press): void {
  const at = movedCrosshair(pane, press);
  if (at !== undefined) pane.use.send({ is: "moved", side: pane.side, at });
}

/** Moves the crosshair and keeps it in sight. Gives where it is now; undefined where no film lies in the pane. */
export function movedCrosshair(pane: LandmarkPane, { key, shiftKey, altKey }: Press): ImagePoint | undefined {
  const { side, view, use } = pane;
  if (view.placing === undefined) return undefined;
  const held = { shift: shiftKey, alt: altKey };
  const at = crosshairMoved(crosshairOf(pane), { key, held }, view.placing.placement, view.film.body);
  use.setCrosshair(side, at);
  keepInSight(pane, at);
  return at;
}

/** Space marks a place at the crosshair, takes hold of a landmark there, or lets go of the one in the hand. */
function pressHere(pane: LandmarkPane): void {
  const { side, view, use } = pane;
  const at = crosshairOf(pane);
  use.setCrosshair(side, at);
  if (use.work.held?.side === side) {
    use.send({ is: "released" });
    return;
  }
  use.send({ is: "pressed", side, at, reachPx: reachOn(view) });
  const takes = use.landmarks.some((one) => {
    const away = pointOf(one[side]);
    return Math.hypot(away.column - at.column, away.row - at.row) <= reachOn(view);
  });
  if (!takes) use.send({ is: "released" });
}

/** Goes to the next landmark with the crosshair on it, so that Space can take hold of it. */
function nextLandmark(pane: LandmarkPane, way: 1 | -1): void {
  const { side, use } = pane;
  const count = use.landmarks.length;
  if (count === 0) return;
  const index = ((use.work.chosen ?? (way === 1 ? -1 : count)) + way + count) % count;
  const landmark = use.landmarks[index];
  if (landmark === undefined) return;
  use.send({ is: "chosen", index });
  use.setCrosshair(side, pointOf(landmark[side]));
  keepInSight(pane, pointOf(landmark[side]));
}

const margin = 24;

/** Moves the film under a crosshair that would leave the pane. */
export function keepInSight({ view: { placing } }: LandmarkPane, at: ReturnType<typeof pointOf>): void {
  if (placing === undefined) return;
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const over = (place: number, size: number) => Math.min(0, size - margin - place) + Math.max(0, margin - place);
  const by = { x: over(x, placing.pane.width), y: over(y, placing.pane.height) };
  if (by.x !== 0 || by.y !== 0) placing.push(by);
}
