import { type ImagePoint, mm, type PlanePoint } from "../units.ts";

/** Millimetres in the plane of the tooth that one pixel stands for, along a row of pixels and down a column. */
export interface MmPerPx {
  /** Between neighbouring columns: the step to the right. */
  readonly column: number;
  /** Between neighbouring rows: the step down. */
  readonly row: number;
}

/**
 * The places in the plane of the tooth that points of an image stand for.
 * Takes image points in any number and order, and the film's scale. Gives as many points, in mm, in the same order;
 * the image's (0,0) stays (0,0).
 * @source plane geometry; docs/methods/calibrate C2
 */
export function pointsInPlane(points: readonly ImagePoint[], scale: MmPerPx): PlanePoint[] {
  return points.map(({ column, row }) => ({ x: mm(column * scale.column), y: mm(row * scale.row) }));
}
