import type { ImagePoint } from "../../../core/units.ts";
import {
  type FilmOrientation,
  type FilmPlacement,
  filmStep,
  fitted,
  heldAs,
  middleOf,
  type PaneSize,
  seenStep,
  zoomWithin,
} from "./film-placement.ts";
import { type FilmSize, filmPoint, inFilm } from "./film-point.ts";

/** Millimetres that a pixel of a film covers, across and down. */
export interface MmPerPx {
  readonly column: number;
  readonly row: number;
}

/** A film in a pane: how large both are, how the film is held, and its scale where it has one. */
export interface FramedFilm {
  readonly film: FilmSize;
  readonly pane: PaneSize;
  readonly orientation: FilmOrientation;
  readonly mmPerPx?: MmPerPx | undefined;
  /** What lies to the right as the film is held; absent where it is not known. */
  readonly toRight?: "mesial" | "distal" | undefined;
}

/** The panes that are on the screen, by id. */
export type FramedFilms = Readonly<Record<string, FramedFilm>>;

/**
 * The measure that linked films have in common. Sizes are in millimetres where every film has a scale, else in shares of
 * the film (of its width and height as seen, and of the size at which it is whole). Where every film says which way it
 * runs, across is counted to distal, so that a film seen reversed keeps to the same place of the tooth; else to the right
 * of a film that is not mirrored.
 */
interface Measure {
  readonly unit: "mm" | "share";
  readonly across: "toDistal" | "asSeen";
}

/** What all linked panes look at. */
interface SharedView {
  readonly measure: Measure;
  /** Pixels of the screen for a millimetre, or times the size at which the film is whole. */
  readonly size: number;
  /** The place in the middle of the pane, from the film's anchor. */
  readonly across: number;
  readonly down: number;
}

/** How the films of several panes lie: each by itself, or all together. */
export interface PaneGroup {
  readonly linked: boolean;
  /** Absent while the linked films are shown whole. */
  readonly view?: SharedView | undefined;
  /** The places that linked films have in common where it is not their middle. */
  readonly anchors: Readonly<Record<string, ImagePoint>>;
  /** Where the films lie that were moved by themselves. */
  readonly own: Readonly<Record<string, FilmPlacement>>;
}

/** Panes whose films are shown whole. */
export const wholeGroup = (linked: boolean): PaneGroup => ({ linked, anchors: {}, own: {} });

/** How the film of a pane lies now; undefined for a pane that is not on the screen. */
export function placementIn(group: PaneGroup, id: string, panes: FramedFilms): FilmPlacement | undefined {
  const framed = panes[id];
  if (framed === undefined) return undefined;
  if (group.linked) return placementOf(viewOf(group, panes), framed, group.anchors[id]);
  const own = group.own[id];
  // A quarter turn needs another size to fit, so it starts anew.
  const isTurned = own?.orientation.quarterTurns !== framed.orientation.quarterTurns;
  if (own === undefined || isTurned) return fitted(framed.film, framed.pane, framed.orientation);
  return heldAs(own, framed.orientation);
}

/** The group after the film of one pane was moved; linked films go with it. */
export function movedIn(
  group: PaneGroup,
  id: string,
  panes: FramedFilms,
  next: (now: FilmPlacement) => FilmPlacement,
): PaneGroup {
  const [framed, now] = [panes[id], placementIn(group, id, panes)];
  if (framed === undefined || now === undefined) return group;
  const placement = next(now);
  if (!group.linked) return { ...group, own: { ...group.own, [id]: placement } };
  return { ...group, view: sharedView(placement, framed, { measure: measureOf(panes), anchor: group.anchors[id] }) };
}

/** The group after a film, or all that are linked, was shown whole. */
export function wholeIn(group: PaneGroup, id: string): PaneGroup {
  if (group.linked) return wholeGroup(true);
  const { [id]: _, ...own } = group.own;
  return { ...group, own };
}

/** Links all panes: from now on they move together from where each lies, at the size that the given pane has. */
export function linkedTo(group: PaneGroup, id: string, panes: FramedFilms): PaneGroup {
  const [framed, now] = [panes[id], placementIn(group, id, panes)];
  if (group.linked || framed === undefined || now === undefined) return { ...group, linked: true };
  const view = sharedView(now, framed, { measure: measureOf(panes) });
  const others = Object.entries(panes).filter(([other]) => other !== id);
  const anchors = others.map(([other, theirs]) => {
    const centre = placementIn(group, other, panes)?.centre ?? middleOf(theirs.film);
    return [other, anchorFor(view, theirs, centre)] as const;
  });
  return { linked: true, view, anchors: Object.fromEntries(anchors), own: {} };
}

/** Lets every pane go by itself from where its film lies. */
export function unlinked(group: PaneGroup, panes: FramedFilms): PaneGroup {
  const own = Object.keys(panes).flatMap((id) => {
    const placement = placementIn(group, id, panes);
    return placement === undefined ? [] : [[id, placement] as const];
  });
  return { linked: false, anchors: {}, own: Object.fromEntries(own) };
}

function measureOf(panes: FramedFilms): Measure {
  const films = Object.values(panes);
  return {
    unit: films.every(({ mmPerPx }) => mmPerPx !== undefined) ? "mm" : "share",
    across: films.every(({ toRight }) => toRight !== undefined) ? "toDistal" : "asSeen",
  };
}

/** What is looked at now. A view in a measure that the films no longer have in common is given up for the whole films. */
function viewOf({ view }: PaneGroup, panes: FramedFilms): SharedView {
  const measure = measureOf(panes);
  if (view?.measure.unit === measure.unit && view.measure.across === measure.across) return view;
  const sizes = Object.values(panes).map((framed) => {
    const { zoom } = fitted(framed.film, framed.pane, framed.orientation);
    return zoom / pixelIn(measure, framed).zoom;
  });
  return { measure, size: Math.min(...sizes), across: 0, down: 0 };
}

/** What a pixel of the film is in a measure, its sign across, and the zoom at which the size is 1. */
function pixelIn({ unit, across }: Measure, { film, pane, orientation, mmPerPx, toRight }: FramedFilm) {
  const isReversed = across === "toDistal" ? toRight === "mesial" : orientation.mirrored;
  const side = isReversed ? -1 : 1;
  if (unit === "mm" && mmPerPx !== undefined)
    return { ...mmPerPx, side, zoom: Math.sqrt(mmPerPx.column * mmPerPx.row) };
  return { column: 1 / film.columns, row: 1 / film.rows, side, zoom: fitted(film, pane, orientation).zoom };
}

function placementOf(view: SharedView, framed: FramedFilm, anchor = middleOf(framed.film)): FilmPlacement {
  const { orientation, film } = framed;
  const step = stepOf(view, framed);
  return {
    zoom: zoomWithin(view.size * pixelIn(view.measure, framed).zoom),
    centre: inFilm(filmPoint(anchor.column + step.column, anchor.row + step.row), film),
    orientation,
  };
}

function sharedView(
  { zoom, centre }: FilmPlacement,
  framed: FramedFilm,
  { measure, anchor = middleOf(framed.film) }: { measure: Measure; anchor?: ImagePoint | undefined },
): SharedView {
  const pixel = pixelIn(measure, framed);
  const step = {
    column: (centre.column - anchor.column) * pixel.column,
    row: (centre.row - anchor.row) * pixel.row,
  };
  const { x, y } = seenStep(framed.orientation, step);
  return { measure, size: zoom / pixel.zoom, across: pixel.side * x, down: y };
}

/** The step from a film's anchor to its place in the middle of the pane, in its pixels. */
function stepOf({ measure, across, down }: SharedView, framed: FramedFilm): ImagePoint {
  const pixel = pixelIn(measure, framed);
  const seen = { x: pixel.side * across, y: down };
  const step = filmStep({ zoom: 1, centre: filmPoint(0, 0), orientation: framed.orientation }, seen);
  return filmPoint(step.column / pixel.column, step.row / pixel.row);
}

function anchorFor(view: SharedView, framed: FramedFilm, centre: ImagePoint): ImagePoint {
  const step = stepOf(view, framed);
  return filmPoint(centre.column - step.column, centre.row - step.row);
}
