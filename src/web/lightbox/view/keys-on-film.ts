import type { ImagePoint } from "../../../core/units.ts";
import { type PathFinder, withoutAnchor } from "../kernels/course-segments.ts";
import { crosshairMoved, isArrow, pushOf } from "../kernels/crosshair-motion.ts";
import { markReshaped, markTakenOff } from "../kernels/film-gestures.ts";
import { toScreen } from "../kernels/film-placement.ts";
import { inFilm, pointOf } from "../kernels/film-point.ts";
import { handlesOf, lineOf, type Mark } from "../kernels/mark-shape.ts";
import { nearestOnLine } from "../kernels/nearest-on-marks.ts";
import { anchorPutIn, courseOfMark, tracedBody } from "../tools/move-tool.ts";
import type { Pointing } from "../tools/tool-step.ts";
import { isBusy, isMarking } from "../tools/tools.ts";
import type { LightBox } from "./light-box.ts";

type Press = Pick<KeyboardEvent, "key" | "shiftKey" | "altKey" | "ctrlKey" | "metaKey">;

/** What a key does while the film has the focus; false for a key that is not the film's. */
export function keyOnFilm(box: LightBox, press: Press): boolean {
  if (press.ctrlKey || press.metaKey || box.placing === undefined) return false;
  if (isArrow(press.key)) return arrow(box, press);
  const zooms: Readonly<Record<string, number>> = { "+": 1.25, "=": 1.25, "-": 0.8, _: 0.8 };
  const factor = zooms[press.key];
  if (factor !== undefined) return done(box.placing.zoom(factor));
  if (!box.sight.marks && onMarks.includes(press.key)) return false;
  switch (press.key) {
    case "0":
      return done(box.placing.fit());
    case "Enter":
      return enter(box, press.shiftKey);
    case "Backspace":
      return isBusy(box.tool.state) ? done(box.tool.send({ is: "takenBack" })) : box.sight.marks && takeOff(box);
    case "Delete":
      return takeOff(box);
    case "Escape":
      return stepBack(box);
    case "n":
    case "N":
      return nextHandle(box, press.shiftKey ? -1 : 1);
    case "x":
      return putAnchor(box);
    default:
      return false;
  }
}

/** Keys that act on the chosen mark; nothing is done to marks that are hidden. */
const onMarks: readonly string[] = ["Delete", "n", "N", "x"];

/** What Space does when it is let go without having moved the film: it presses where the crosshair is. */
export function spaceOnFilm(box: LightBox, free: boolean): void {
  const pointing = atCrosshair(box, free);
  const { state, send } = box.tool;
  const inHand = state.tool === "move" && state.held !== undefined;
  if (pointing === undefined) showCrosshair(box);
  else if (inHand) send({ is: "released", ...pointing });
  else {
    send({ is: "pressed", twice: false, ...pointing });
    if (isMarking(state.tool)) send({ is: "released", ...pointing });
  }
}

const done = (_: unknown): true => true;

function arrow(box: LightBox, press: Press): true {
  const { placing, tool } = box;
  const held = { shift: press.shiftKey, alt: press.altKey };
  if (placing === undefined) return true;
  if (box.crosshair === undefined && !isMarking(tool.state.tool)) return done(placing.push(pushOf(press.key, held)));
  const from = box.crosshair ?? startOf(box);
  const at = crosshairMoved(from, { key: press.key, held }, placing.placement, box.film.body);
  box.setCrosshair(at);
  keepInSight(box, at);
  return done(tool.send({ is: "moved", at, screen: toScreen(placing.placement, placing.pane, at), free: false }));
}

/** Moves the film under a crosshair that would leave the pane. */
function keepInSight({ placing }: LightBox, at: ImagePoint): void {
  if (placing === undefined) return;
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const { width, height } = placing.pane;
  const over = (place: number, size: number) => Math.min(0, size - margin - place) + Math.max(0, margin - place);
  const by = { x: over(x, width), y: over(y, height) };
  if (by.x !== 0 || by.y !== 0) placing.push(by);
}
const margin = 24;

const startOf = ({ placing, film }: LightBox): ImagePoint =>
  inFilm(placing?.placement.centre ?? pointOf([0, 0]), film.body);

function showCrosshair(box: LightBox): void {
  if (isMarking(box.tool.state.tool)) box.setCrosshair(startOf(box));
}

function atCrosshair({ crosshair, placing }: LightBox, free: boolean): Pointing | undefined {
  if (crosshair === undefined || placing === undefined) return undefined;
  return { at: crosshair, screen: toScreen(placing.placement, placing.pane, crosshair), free };
}

/** Enter ends a gesture at the crosshair, or where the mouse last was: the line already leads there. */
function enter(box: LightBox, free: boolean): boolean {
  const pointing = atCrosshair(box, free) ?? atPointer(box, free);
  return done(pointing === undefined ? showCrosshair(box) : box.tool.send({ is: "ended", ...pointing }));
}

function atPointer({ tool: { state } }: LightBox, free: boolean): Pointing | undefined {
  const at = "pointer" in state ? state.pointer : "to" in state ? state.to : undefined;
  return at && { at, screen: { x: 0, y: 0 }, free };
}

/** Escape leaves the gesture, then the crosshair and the tool, then the chosen mark; after that it is not the film's. */
function stepBack(box: LightBox): boolean {
  const { state, send } = box.tool;
  if (isBusy(state)) send({ is: "cancelled" });
  else if (state.tool !== "move") box.take("move");
  else if (box.crosshair !== undefined) box.setCrosshair(undefined);
  else if (box.chosen !== undefined) box.choose(undefined);
  else return false;
  return true;
}

const chosenMark = ({ marks, chosen }: LightBox): Mark | undefined => marks.find(({ id }) => id === chosen?.markId);

/** Takes the chosen anchor out of its course, or the chosen mark off the film. */
function takeOff(box: LightBox): boolean {
  const mark = chosenMark(box);
  if (mark === undefined) return false;
  const { body } = mark;
  const handle = box.chosen?.handle;
  if (handle !== undefined && body.shape === "trace" && body.anchors.length > 2) {
    const course = withoutAnchor(courseOfMark(body), handle, joining(body.points.map(pointOf)));
    box.record(markReshaped(mark, tracedBody(body, course), box));
    box.choose({ markId: mark.id });
    return true;
  }
  box.record(markTakenOff(mark, box));
  box.choose(undefined);
  return true;
}

/** Without its anchor a course keeps the way it had: the points between the two neighbours. */
function joining(points: readonly ImagePoint[]): PathFinder {
  return (from, to) => {
    const [start, end] = [nearestOnLine(points, from)?.point ?? 0, nearestOnLine(points, to)?.point ?? 0];
    return [from, ...points.slice(start + 1, end), to];
  };
}

/** Goes from one place of the chosen mark to the next with the crosshair on it, so that Space can take hold of it. */
function nextHandle(box: LightBox, way: 1 | -1): boolean {
  const mark = chosenMark(box) ?? box.marks[0];
  if (mark === undefined || isMarking(box.tool.state.tool)) return false;
  const handles = handlesOf(mark.body);
  const before = box.chosen?.handle ?? (way === 1 ? -1 : handles.length);
  const handle = (before + way + handles.length) % handles.length;
  box.choose({ markId: mark.id, handle });
  const at = handles[handle];
  if (at !== undefined) box.setCrosshair(at);
  return true;
}

/** Puts an anchor into the chosen course where the crosshair or the pointer names a place on it. */
function putAnchor(box: LightBox): boolean {
  const mark = chosenMark(box);
  if (mark?.body.shape !== "trace") return false;
  const line = lineOf(mark.body);
  const point = box.place === undefined ? undefined : Math.round(box.place.share * (line.length - 1));
  const near = point ?? (box.crosshair && nearestOnLine(line, box.crosshair)?.point);
  if (near === undefined) return false;
  for (const effect of anchorPutIn(mark, mark.body, near).effects) {
    if (effect.do === "reshaped") box.record(markReshaped(effect.mark, effect.body, box));
    if (effect.do === "chosen" && effect.markId !== undefined && effect.handle !== undefined)
      box.choose({ markId: effect.markId, handle: effect.handle });
  }
  return true;
}
