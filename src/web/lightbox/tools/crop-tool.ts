import type { ImagePoint } from "../../../core/units.ts";
import { boxBetween, type Corner, type CropBox, movedBox, oppositeCorner, resizedBox } from "../kernels/crop-box.ts";
import { crosshairStepPx, type HeldKeys } from "../kernels/crosshair-motion.ts";
import { type FilmSize, filmPoint, pixelsBetween } from "../kernels/film-point.ts";

/** The part of a picture being chosen, and what the hand does to it. */
export interface CropState {
  readonly box?: CropBox;
  readonly drag?:
    | { readonly is: "corner"; readonly across: ImagePoint }
    | { readonly is: "box"; readonly from: ImagePoint; readonly start: CropBox };
}

/** What reaches the crop. Places are counted from the picture's upper left edge. */
export type CropEvent =
  | { readonly is: "pressed" | "moved"; readonly at: ImagePoint }
  | { readonly is: "released" }
  | { readonly is: "arrow"; readonly columns: number; readonly rows: number; readonly held: HeldKeys }
  | { readonly is: "set"; readonly box: CropBox | undefined };

/** The picture, and how near to a corner a press takes hold of it. */
export interface CropWorld {
  readonly picture: FilmSize;
  readonly nearPx: number;
}

/** The crop after an event: a press on a corner or inside takes hold, anywhere else it begins a new box. */
export function stepCrop(state: CropState, event: CropEvent, world: CropWorld): CropState {
  switch (event.is) {
    case "pressed":
      return pressed(state, event.at, world);
    case "moved":
      return moved(state, event.at, world);
    case "released":
      return withBox(state.box);
    case "arrow":
      return arrow(state, event, world);
    case "set":
      return withBox(event.box);
  }
}

const withBox = (box: CropBox | undefined): CropState => (box === undefined ? {} : { box });

const corners: readonly Corner[] = [0, 1, 2, 3];

function pressed({ box }: CropState, at: ImagePoint, { nearPx }: CropWorld): CropState {
  if (box === undefined) return { drag: { is: "corner", across: at } };
  const corner = corners.find((one) => pixelsBetween(at, cornerOf(box, one)) <= nearPx);
  if (corner !== undefined) return { box, drag: { is: "corner", across: acrossFrom(box, corner) } };
  if (isInside(box, at)) return { box, drag: { is: "box", from: at, start: box } };
  return { box, drag: { is: "corner", across: at } };
}

function moved(state: CropState, at: ImagePoint, { picture }: CropWorld): CropState {
  const { drag } = state;
  if (drag === undefined) return state;
  if (drag.is === "box") {
    const step = { columns: at.column - drag.from.column, rows: at.row - drag.from.row };
    return { drag, box: movedBox(drag.start, step, picture) };
  }
  const box = boxBetween(drag.across, at, picture) ?? state.box;
  return box === undefined ? { drag } : { drag, box };
}

/** Arrows move the box; with Shift they move its right and lower side. Alt makes ten pixels of one. */
function arrow(
  { box }: CropState,
  { columns, rows, held }: CropEvent & { is: "arrow" },
  { picture }: CropWorld,
): CropState {
  if (box === undefined) return {};
  const far = crosshairStepPx({ shift: held.alt, alt: false });
  const step = { columns: columns * far, rows: rows * far };
  return { box: held.shift ? resizedBox(box, step, picture) : movedBox(box, step, picture) };
}

const acrossFrom = (box: CropBox, corner: Corner): ImagePoint => {
  const { column, row } = oppositeCorner(box, corner);
  return filmPoint(column, row);
};
const cornerOf = (box: CropBox, corner: Corner): ImagePoint => acrossFrom(box, opposite[corner]);
const opposite = [2, 3, 0, 1] as const;

const isInside = ({ column, row, columns, rows }: CropBox, at: ImagePoint): boolean =>
  at.column >= column && at.column <= column + columns && at.row >= row && at.row <= row + rows;
