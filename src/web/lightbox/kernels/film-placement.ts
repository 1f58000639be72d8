import { type ImagePoint, px } from "../../../core/units.ts";
import { type FilmSize, filmPoint, inFilm } from "./film-point.ts";

/** A place or a step on the screen in its pixels, from the upper left corner of the pane that shows the film. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** The size of the pane that shows the film, in pixels of the screen. */
export interface PaneSize {
  readonly width: number;
  readonly height: number;
}

/** How the film is held: mirrored first, then turned clockwise. */
export interface FilmOrientation {
  /** 0 to 3. */
  readonly quarterTurns: number;
  readonly mirrored: boolean;
}

/** How a film lies in its pane: which of its places is in the middle, how large, and how it is held. */
export interface FilmPlacement {
  /** Pixels of the screen for one pixel of the film. */
  readonly zoom: number;
  readonly centre: ImagePoint;
  readonly orientation: FilmOrientation;
}

/** Numbers a to f as SVG and CSS write a transform: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const largestZoom = 32;
const smallestZoom = 0.02;
const cosines = [1, 0, -1, 0] as const;
const sines = [0, 1, 0, -1] as const;

/** The turning and mirroring alone, as the four numbers of a matrix without size or place. */
function orientationMatrix({ quarterTurns, mirrored }: FilmOrientation): readonly [number, number, number, number] {
  const turns = ((quarterTurns % 4) + 4) % 4;
  const cosine = cosines[turns] ?? 1;
  const sine = sines[turns] ?? 0;
  const side = mirrored ? -1 : 1;
  return [cosine * side, sine * side, -sine, cosine];
}

/** The matrix that takes places of the film to places of the pane. */
export function placementMatrix({ zoom, centre, orientation }: FilmPlacement, pane: PaneSize): Matrix {
  const [across, over, under, down] = orientationMatrix(orientation);
  const [a, b, c, d] = [across * zoom, over * zoom, under * zoom, down * zoom];
  const e = pane.width / 2 - a * centre.column - c * centre.row;
  const f = pane.height / 2 - b * centre.column - d * centre.row;
  return [a, b, c, d, e, f];
}

/** Where a place of the film is on the screen. */
export function toScreen(placement: FilmPlacement, pane: PaneSize, { column, row }: ImagePoint): ScreenPoint {
  const [a, b, c, d, e, f] = placementMatrix(placement, pane);
  return { x: a * column + c * row + e, y: b * column + d * row + f };
}

/** Which place of the film is at a place of the screen; it may lie outside the film. */
export function toFilm(placement: FilmPlacement, pane: PaneSize, at: ScreenPoint): ImagePoint {
  const step = filmStep(placement, { x: at.x - pane.width / 2, y: at.y - pane.height / 2 });
  return filmPoint(placement.centre.column + step.column, placement.centre.row + step.row);
}

/** A step on the screen as a step on the film. */
export function filmStep({ zoom, orientation }: FilmPlacement, { x, y }: ScreenPoint): ImagePoint {
  // The inverse of a turn with or without a mirror is its transpose.
  const [a, b, c, d] = orientationMatrix(orientation);
  return filmPoint((a * x + b * y) / zoom, (c * x + d * y) / zoom);
}

/** A step on the film as it is seen on the screen, before any zoom; the other way round than {@link filmStep}. */
export function seenStep(orientation: FilmOrientation, { column, row }: { column: number; row: number }): ScreenPoint {
  const [a, b, c, d] = orientationMatrix(orientation);
  return { x: a * column + c * row, y: b * column + d * row };
}

/** The whole film in the pane, as large as it goes with a little air around it. */
export function fitted(film: FilmSize, pane: PaneSize, orientation: FilmOrientation): FilmPlacement {
  const lying = orientation.quarterTurns % 2 !== 0;
  const [across, down] = lying ? [film.rows, film.columns] : [film.columns, film.rows];
  const zoom = Math.min((pane.width - 2 * air) / across, (pane.height - 2 * air) / down);
  return { zoom: zoomWithin(zoom), centre: middleOf(film), orientation };
}

/** Larger or smaller by a factor while the place of the film under a place of the screen stays there. */
export function zoomedAt(
  placement: FilmPlacement,
  pane: PaneSize,
  zooming: { at: ScreenPoint; factor: number },
): FilmPlacement {
  const { at, factor } = zooming;
  const under = toFilm(placement, pane, at);
  const larger = { ...placement, zoom: zoomWithin(placement.zoom * factor) };
  const step = filmStep(larger, { x: at.x - pane.width / 2, y: at.y - pane.height / 2 });
  return { ...larger, centre: filmPoint(under.column - step.column, under.row - step.row) };
}

/** The film pushed by a step on the screen; its middle never leaves the pane so that it can't get lost. */
export function panned(placement: FilmPlacement, film: FilmSize, by: ScreenPoint): FilmPlacement {
  const step = filmStep(placement, by);
  const centre = { column: px(placement.centre.column - step.column), row: px(placement.centre.row - step.row) };
  return { ...placement, centre: inFilm(centre, film) };
}

/** The film held another way around the same middle. */
export const heldAs = (placement: FilmPlacement, orientation: FilmOrientation): FilmPlacement => ({
  ...placement,
  orientation,
});

/**
 * The orientation after a quarter turn clockwise or a mirroring, both as seen on the screen: a film that is already
 * turned is mirrored left to right as it is seen, which in its own axes may be top to bottom.
 */
export function reoriented(now: FilmOrientation, as: "turned" | "mirrored"): FilmOrientation {
  if (as === "turned") return { ...now, quarterTurns: (now.quarterTurns + 1) % 4 };
  return { quarterTurns: (4 - now.quarterTurns) % 4, mirrored: !now.mirrored };
}

const air = 16;
/** The middle of a film. */
export const middleOf = ({ columns, rows }: FilmSize): ImagePoint => filmPoint((columns - 1) / 2, (rows - 1) / 2);
/** A zoom kept within its limits. */
export const zoomWithin = (zoom: number): number => Math.min(Math.max(zoom, smallestZoom), largestZoom);
