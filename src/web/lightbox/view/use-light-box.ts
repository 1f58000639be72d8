import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { straightCourse } from "../../../core/geometry/course-of-path.ts";
import type { ImagePoint } from "../../../core/units.ts";
import type { FilmLook } from "../../../imaging/looked-at.ts";
import { newPartId } from "../../record/new-part-id.ts";
import { filmViewed, markMade } from "../kernels/film-gestures.ts";
import type { ScreenPoint } from "../kernels/film-placement.ts";
import { type GreyWindow, windowLike } from "../kernels/grey-window.ts";
import type { Mark, MarkBody } from "../kernels/mark-shape.ts";
import { hitAt } from "../kernels/nearest-on-marks.ts";
import { usualSight } from "../kernels/sight.ts";
import { markInHand } from "../tools/move-tool.ts";
import type { Polarity, ToolWorld } from "../tools/tool-step.ts";
import { isMarking } from "../tools/tools.ts";
import { carryOut } from "./effects-on-film.ts";
import type { Asking, Choice, LightBox, LightBoxOptions, LikeShown, PlaceOnCourse } from "./light-box.ts";
import { PointedPlace } from "./pointed-place.ts";
import type { FilmPixelsState } from "./use-film-pixels.ts";
import { useFilmRidge } from "./use-film-ridge.ts";
import { useFilmView } from "./use-film-view.ts";
import { type ToolUse, useTool } from "./use-tool.ts";

/** Presses within this many pixels of the screen are of one place; things this near are under the pointer. */
const nearOnScreen = 7;
const samePlaceOnScreen = 4;

const noMarks: readonly Mark[] = [];
/** Lines are looked for on the film in hand alone: it takes time and memory. */
const notInHand: FilmPixelsState = { is: "loading" };

/** Holds a film on the light box. */
export function useLightBox(options: LightBoxOptions): LightBox {
  const { film, presentedOn, record, say, sight = usualSight, isInHand = true } = options;
  const marks = sight.marks ? options.marks : noMarks;
  const [pointed] = useState(() => new PointedPlace());
  const view = useFilmView(film, options);
  const { pixels, placing, orientation, window: recorded } = view;
  const [polarity, follow] = useState<Polarity>("dark");
  const [chosen, choose] = useState<Choice | undefined>(() => firstCourse(options.marks));
  const [crosshair, setCrosshair] = useState<ImagePoint>();
  const [place, setPlace] = useState<PlaceOnCourse>();
  const [asking, setAsking] = useState<Asking>();
  const [trial, tryLook] = useState<FilmLook>();
  const on = { film, presentedOn };
  const sendLater = useRef<ToolUse["send"]>(() => undefined);
  const ridge = useFilmRidge(isInHand ? pixels : notInHand, polarity, {
    found: () => sendLater.current({ is: "pathsFound" }),
    failed: say,
  });

  const make = (body: MarkBody) => {
    const id = newPartId("mark");
    record(markMade(id, body, on));
    choose({ markId: id });
  };
  const show: LightBox["show"] = (as, did) => {
    tryLook(undefined);
    record(filmViewed(on, { window: recorded, look: view.look, orientation, ...as }, did));
  };
  const acts = { ...on, ...{ record, say, show, polarity, make, choose, ask: setAsking } };
  const zoom = placing?.placement.zoom ?? 1;
  const world = (): ToolWorld => ({
    find: (line) => (ridge.failed ? straightCourse : (ridge.ridge?.paths.finder(line) ?? (() => undefined))),
    ...{ polarity, marks, chosen: chosen?.markId, window: recorded, bitsStored: film.body.bitsStored },
    hit: (at) => hitAt(marks, at, nearOnScreen / zoom, chosen?.markId),
    samePlacePx: samePlaceOnScreen / zoom,
  });
  const push = (by: ScreenPoint) => placing?.push(by);
  const tool = useTool(world, (effect) => carryOut(effect, { ...acts, push }), ridge.want);
  sendLater.current = tool.send;
  const answer = (body: MarkBody | undefined) => {
    setAsking(undefined);
    if (body === undefined) return;
    make(body);
    tool.take("move", polarity);
    setCrosshair(undefined);
  };
  const dragged = tool.state.tool === "window" ? tool.state.drag : undefined;
  useLeftover(asking, make);

  return {
    ...options,
    ...view,
    ...{ sight, isInHand, pointed },
    ...{ tool, polarity, chosen, choose },
    ...{ ridge: ridge.state, followsNothing: ridge.failed },
    ...{ crosshair, setCrosshair, place, setPlace, asking, show, tryLook },
    window: dragged?.now ?? likeWindow(options.like, pixels) ?? recorded,
    look: trial ?? options.like?.look ?? view.look,
    isMoving: trial !== undefined || dragged !== undefined,
    shown: useMemo(() => withHand(marks, tool.state), [marks, tool.state]),
    take: useCallback(
      (name) => {
        tool.take(name, polarity);
        if (!isMarking(name)) setCrosshair(undefined);
      },
      [tool.take, polarity],
    ),
    follow: useCallback(
      (line) => {
        follow(line);
        if (tool.state.tool === "trace") tool.take("trace", line);
      },
      [tool.take, tool.state.tool],
    ),
    answer,
    askAgain: setAsking,
    passOver: () => answer(asking?.what === "owner" ? asking.body : undefined),
  };
}

function likeWindow(like: LikeShown | undefined, pixels: FilmPixelsState): GreyWindow | undefined {
  return like && pixels.is === "open" ? windowLike(like.window, pixels.film.window) : undefined;
}

/** What is chosen when a film is laid on the box: its first course, so that its length stands there at once. */
function firstCourse(marks: readonly Mark[]): Choice | undefined {
  const course = marks.find(({ body }) => body.shape === "trace");
  return course && { markId: course.id };
}

function withHand(marks: readonly Mark[], state: ToolUse["state"]): readonly Mark[] {
  const hand = state.tool === "move" ? markInHand(state) : undefined;
  return hand === undefined
    ? marks
    : marks.map((mark) => (mark.id === hand.markId ? { ...mark, body: hand.body } : mark));
}

/** A mark that still waits for its name when the person goes elsewhere is recorded without one: no gesture is lost. */
function useLeftover(asking: Asking | undefined, make: (body: MarkBody) => void): void {
  const latest = useRef({ asking, make });
  latest.current = { asking, make };
  useEffect(
    () => () => {
      const { asking: left, make: keep } = latest.current;
      if (left?.what === "owner") keep(left.body);
    },
    [],
  );
}
