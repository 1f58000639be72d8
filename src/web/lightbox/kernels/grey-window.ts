import type { ScreenPoint } from "./film-placement.ts";

/** Which stored values become which grey: the value shown as middle grey, and how many values reach from black to white. */
export interface GreyWindow {
  readonly centre: number;
  readonly width: number;
  /** Black and white changed places, as a view. */
  readonly invert: boolean;
}

/** Pixels of the screen that make a window e times as wide; about a third of a pane. */
const pixelsForWidth = 240;
/** Pixels of the screen that shift the centre by one width. */
const pixelsForCentre = 400;

/**
 * The window after a drag: to the right it grows wider (softer), to the left narrower (harder); upward the picture
 * grows brighter. Takes the window at the drag's start, the step on the screen, and the bits that a sample has.
 */
export function draggedWindow(start: GreyWindow, step: ScreenPoint, bitsStored: number): GreyWindow {
  const values = 2 ** bitsStored;
  const width = within(start.width * Math.exp(step.x / pixelsForWidth), 1, 4 * values);
  const brighter = (step.y * start.width) / pixelsForCentre;
  const centre = within(start.centre + (start.invert ? -brighter : brighter), -values, 2 * values);
  return { centre, width, invert: start.invert };
}

/** A window counted from the one that a film opens with, so that films of other depth and exposure can have the like of it. */
export interface RelativeWindow {
  /** In widths of the film's own window. */
  readonly shift: number;
  /** Times the width of the film's own window. */
  readonly stretch: number;
  readonly invert: boolean;
}

/** A window as seen from the one that its film opens with. */
export const relativeTo = (own: GreyWindow, { centre, width, invert }: GreyWindow): RelativeWindow => ({
  shift: (centre - own.centre) / own.width,
  stretch: width / own.width,
  invert,
});

/** The like of a window for a film that opens with its own. */
export const windowLike = ({ shift, stretch, invert }: RelativeWindow, own: GreyWindow): GreyWindow => ({
  centre: own.centre + shift * own.width,
  width: Math.max(1, stretch * own.width),
  invert,
});

/** The window as words for those who can't see it. */
export const windowText = ({ centre, width, invert }: GreyWindow): string =>
  `width ${Math.round(width)}, centre ${Math.round(centre)}${invert ? ", black and white exchanged" : ""}`;

const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
