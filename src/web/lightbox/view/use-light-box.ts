import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { ImagePoint } from "../../../core/units.ts";
import type { Gesture } from "../../../record/change.ts";
import { newPartId } from "../../record/new-part-id.ts";
import type { Course } from "../kernels/course-segments.ts";
import { filmViewed, markMade, markReshaped, traceBody } from "../kernels/film-gestures.ts";
import type { Film } from "../kernels/film-name.ts";
import type { FilmOrientation } from "../kernels/film-placement.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { Mark, MarkBody } from "../kernels/mark-shape.ts";
import { hitAt } from "../kernels/nearest-on-marks.ts";
import { markInHand } from "../tools/move-tool.ts";
import type { Polarity, ToolEffect, ToolWorld } from "../tools/tool-step.ts";
import { isMarking, type ToolName } from "../tools/tools.ts";
import type { RidgeState } from "../workers/film-ridge.ts";
import { type FilmPixelsState, useFilmPixels } from "./use-film-pixels.ts";
import { useFilmRidge } from "./use-film-ridge.ts";
import { type Pane, usePane } from "./use-pane.ts";
import { type PlacementUse, usePlacement } from "./use-placement.ts";
import { type ToolUse, useTool } from "./use-tool.ts";

/** A mark that is chosen, and which of its places. */
export interface Choice {
  readonly markId: string;
  readonly handle?: number;
}
/** A place on a course, as the share of its way from the orifice. */
export interface PlaceOnCourse {
  readonly markId: string;
  readonly share: number;
}
/** What is marked but waits for a word before it is recorded. */
export type Asking =
  | { readonly what: "canal"; readonly course: Course; readonly polarity: Polarity }
  | { readonly what: "length"; readonly from: ImagePoint; readonly to: ImagePoint };

/** What the light box is given: a film, its marks, and where finished gestures go. */
export interface LightBoxOptions {
  readonly film: Film;
  readonly presentedOn: string;
  readonly marks: readonly Mark[];
  readonly record: (gesture: Gesture) => void;
  readonly say: (words: string) => void;
}

/** Everything that the light box knows and does while a film lies on it. */
export interface LightBox extends LightBoxOptions {
  readonly pixels: FilmPixelsState;
  readonly ridge: RidgeState;
  readonly pane: Pane;
  readonly placing: PlacementUse | undefined;
  readonly window: GreyWindow;
  readonly orientation: FilmOrientation;
  readonly tool: ToolUse;
  readonly take: (tool: ToolName) => void;
  readonly polarity: Polarity;
  readonly follow: (polarity: Polarity) => void;
  readonly chosen: Choice | undefined;
  readonly choose: (choice: Choice | undefined) => void;
  readonly crosshair: ImagePoint | undefined;
  readonly setCrosshair: (at: ImagePoint | undefined) => void;
  readonly place: PlaceOnCourse | undefined;
  readonly setPlace: (place: PlaceOnCourse | undefined) => void;
  readonly asking: Asking | undefined;
  readonly answer: (body: MarkBody | undefined) => void;
  /** Leaves the question: a course is recorded without a name, a length without millimetres is not recorded. */
  readonly passOver: () => void;
  readonly look: (
    as: Partial<{ window: GreyWindow; orientation: FilmOrientation }>,
    did: Parameters<typeof filmViewed>[2],
  ) => void;
  /** What is marked, the mark in the hand as it is now. */
  readonly shown: readonly Mark[];
}

/** Presses within this many pixels of the screen are of one place; things this near are under the pointer. */
const nearOnScreen = 7;
const samePlaceOnScreen = 4;

/** Holds a film on the light box. */
export function useLightBox(options: LightBoxOptions): LightBox {
  const { film, presentedOn, marks, record, say } = options;
  const pixels = useFilmPixels(film.body.hash);
  const pane = usePane();
  const orientation = useOrientation(film);
  const placing = usePlacement(film.body, pane.size, orientation);
  const recorded = useRecordedWindow(film, pixels);
  const [polarity, follow] = useState<Polarity>("dark");
  const [chosen, choose] = useState<Choice | undefined>(() => firstCourse(marks));
  const [crosshair, setCrosshair] = useState<ImagePoint>();
  const [place, setPlace] = useState<PlaceOnCourse>();
  const [asking, setAsking] = useState<Asking>();
  const on = { film, presentedOn };
  const sendLater = useRef<ToolUse["send"]>(() => undefined);
  const ridge = useFilmRidge(pixels, polarity, { found: () => sendLater.current({ is: "pathsFound" }), failed: say });

  const make = (body: MarkBody) => {
    const id = newPartId("mark");
    record(markMade(id, body, on));
    choose({ markId: id });
  };
  const look: LightBox["look"] = (as, did) =>
    record(filmViewed(on, { window: as.window ?? recorded, orientation: as.orientation ?? orientation }, did));
  const carryOut = (effect: ToolEffect) => {
    switch (effect.do) {
      case "traced":
        return setAsking({ what: "canal", course: effect.course, polarity });
      case "measured":
        if (tool.state.tool === "known") return setAsking({ what: "length", from: effect.from, to: effect.to });
        return make({ shape: "distance", film: film.id, what: "", from: pair(effect.from), to: pair(effect.to) });
      case "outlined":
        return make({ shape: "outline", film: film.id, what: "", points: effect.points.map(pair) });
      case "spotted":
        return make({ shape: "spot", film: film.id, what: "", at: pair(effect.at) });
      case "reshaped":
        return record(markReshaped(effect.mark, effect.body, on));
      case "chosen":
        return choose(effect.markId === undefined ? undefined : choiceOf(effect.markId, effect.handle));
      case "pushed":
        return placing?.push(effect.by);
      case "windowed":
        return look({ window: effect.window }, "Window set");
      case "say":
        return say(effect.words);
    }
  };
  const zoom = placing?.placement.zoom ?? 1;
  const world = (): ToolWorld => ({
    find: (line) => ridge.ridge?.paths.finder(line) ?? (() => undefined),
    ...{ polarity, marks, chosen: chosen?.markId, window: recorded, bitsStored: film.body.bitsStored },
    hit: (at) => hitAt(marks, at, nearOnScreen / zoom, chosen?.markId),
    samePlacePx: samePlaceOnScreen / zoom,
  });
  const tool = useTool(world, carryOut, ridge.want);
  sendLater.current = tool.send;
  const answer = (body: MarkBody | undefined) => {
    setAsking(undefined);
    if (body === undefined) return;
    make(body);
    tool.take("move", polarity);
    setCrosshair(undefined);
  };
  useLeftover(asking, film.id, make);

  return {
    ...options,
    ...{ pixels, ridge: ridge.state, pane, placing, orientation, tool, polarity, chosen, choose },
    ...{ crosshair, setCrosshair, place, setPlace, asking, look },
    window: tool.state.tool === "window" && tool.state.drag !== undefined ? tool.state.drag.now : recorded,
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
    passOver: () => answer(asking?.what === "canal" ? traceBody(film.id, asking.course, asking.polarity) : undefined),
  };
}

const pair = ({ column, row }: ImagePoint): [number, number] => [column, row];
const choiceOf = (markId: string, handle: number | undefined): Choice =>
  handle === undefined ? { markId } : { markId, handle };

/** What is chosen when a film is laid on the box: its first course, so that its length stands there at once. */
function firstCourse(marks: readonly Mark[]): Choice | undefined {
  const course = marks.find(({ body }) => body.shape === "trace");
  return course && { markId: course.id };
}

function useOrientation(film: Film): FilmOrientation {
  const { quarterTurns = 0, mirrored = false } = film.body.view ?? {};
  return useMemo(() => ({ quarterTurns, mirrored }), [quarterTurns, mirrored]);
}

function useRecordedWindow({ body }: Film, pixels: FilmPixelsState): GreyWindow {
  const { view } = body;
  return useMemo(() => {
    if (view !== undefined) return { centre: view.windowCentre, width: view.windowWidth, invert: view.invert };
    return pixels.is === "open" ? pixels.film.window : { centre: 0, width: 1, invert: false };
  }, [view, pixels]);
}

function withHand(marks: readonly Mark[], state: ToolUse["state"]): readonly Mark[] {
  const hand = state.tool === "move" ? markInHand(state) : undefined;
  return hand === undefined
    ? marks
    : marks.map((mark) => (mark.id === hand.markId ? { ...mark, body: hand.body } : mark));
}

/** A course that still waits for its name when the person goes elsewhere is recorded without one: no gesture is lost. */
function useLeftover(asking: Asking | undefined, filmId: string, make: (body: MarkBody) => void): void {
  const latest = useRef({ asking, make });
  latest.current = { asking, make };
  useEffect(
    () => () => {
      const { asking: left, make: keep } = latest.current;
      if (left?.what === "canal") keep(traceBody(filmId, left.course, left.polarity));
    },
    [filmId],
  );
}
