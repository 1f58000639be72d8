import { type ImagePoint, type Px, px } from "../../../core/units.ts";

/** A place on a film, in pixels of that film. */
export const filmPoint = (column: number, row: number): ImagePoint => ({ column: px(column), row: px(row) });

/** A place as the record writes it: [to the right, down]. */
export const pairOf = ({ column, row }: ImagePoint): [number, number] => [rounded(column), rounded(row)];

/** A place as the record wrote it. */
export const pointOf = ([column, row]: readonly [number, number]): ImagePoint => filmPoint(column, row);

/** How far two places of one film lie apart, in its pixels. */
export const pixelsBetween = (a: ImagePoint, b: ImagePoint): Px => px(Math.hypot(a.column - b.column, a.row - b.row));

/** The place a fraction of the way from one place to another. */
export const pointBetween = (a: ImagePoint, b: ImagePoint, fraction: number): ImagePoint =>
  filmPoint(a.column + (b.column - a.column) * fraction, a.row + (b.row - a.row) * fraction);

/** Whether two places are the same. */
export const isSamePoint = (a: ImagePoint, b: ImagePoint): boolean => a.column === b.column && a.row === b.row;

/** The mean of some places, at least one. */
export function meanPoint(points: readonly ImagePoint[]): ImagePoint {
  const columns = points.reduce((sum, { column }) => sum + column, 0);
  const rows = points.reduce((sum, { row }) => sum + row, 0);
  return filmPoint(columns / points.length, rows / points.length);
}

/** The size of a film in pixels. */
export interface FilmSize {
  readonly columns: number;
  readonly rows: number;
}

/** The place brought inside the film; (0,0) is the centre of the first pixel. */
export const inFilm = ({ column, row }: ImagePoint, { columns, rows }: FilmSize): ImagePoint =>
  filmPoint(Math.min(Math.max(column, 0), columns - 1), Math.min(Math.max(row, 0), rows - 1));

/** A hundredth of a pixel is finer than any hand; more digits would only make the record longer. */
const rounded = (value: number): number => Math.round(value * 100) / 100;
