import type { ImagePoint } from "../../../core/units.ts";
import type { FilmSize } from "./film-point.ts";

/** A part of a picture, in whole pixels of it. */
export interface CropBox {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** The smallest side that still is a film and not a slip of the hand. */
export const smallestCropPx = 24;

/** The whole of a picture. */
export const wholeOf = ({ columns, rows }: FilmSize): CropBox => ({ column: 0, row: 0, columns, rows });

/** Whether a box leaves nothing out. */
export const isWhole = (box: CropBox, film: FilmSize): boolean =>
  box.column === 0 && box.row === 0 && box.columns === film.columns && box.rows === film.rows;

/** The box between two opposite corners, cut to the picture; undefined where a side is too short to be meant. */
export function boxBetween(a: ImagePoint, b: ImagePoint, film: FilmSize): CropBox | undefined {
  const [left, right] = spanOf(a.column, b.column, film.columns);
  const [top, bottom] = spanOf(a.row, b.row, film.rows);
  const box = { column: left, row: top, columns: right - left, rows: bottom - top };
  return box.columns >= smallestCropPx && box.rows >= smallestCropPx ? box : undefined;
}

/** The box pushed by a step in whole pixels, stopped at the picture's edge. */
export function movedBox(box: CropBox, step: { columns: number; rows: number }, film: FilmSize): CropBox {
  const column = within(Math.round(box.column + step.columns), 0, film.columns - box.columns);
  const row = within(Math.round(box.row + step.rows), 0, film.rows - box.rows);
  return { ...box, column, row };
}

/** The box made larger or smaller at its right and lower side, stopped at the picture's edge and at the least side. */
export function resizedBox(box: CropBox, step: { columns: number; rows: number }, film: FilmSize): CropBox {
  const columns = within(Math.round(box.columns + step.columns), smallestCropPx, film.columns - box.column);
  const rows = within(Math.round(box.rows + step.rows), smallestCropPx, film.rows - box.row);
  return { ...box, columns, rows };
}

/** A corner of a box, counted from the upper left clockwise. */
export type Corner = 0 | 1 | 2 | 3;

/** The corner that stays while another is dragged. */
export function oppositeCorner(box: CropBox, corner: Corner): { column: number; row: number } {
  const atLeft = corner === 1 || corner === 2;
  const atTop = corner === 2 || corner === 3;
  return { column: atLeft ? box.column : box.column + box.columns, row: atTop ? box.row : box.row + box.rows };
}

function spanOf(a: number, b: number, size: number): [number, number] {
  return [within(Math.round(Math.min(a, b)), 0, size), within(Math.round(Math.max(a, b)), 0, size)];
}

const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
