import { type ImagePoint, px } from "../../units.ts";

/** A projective map of the plane as a 3 x 3 matrix, row by row. */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/** The map that leaves every place where it is. */
export const still: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** Where a map takes a place. @source plane geometry (projective map) */
export function mapped([a, b, c, d, e, f, g, h, i]: Homography, { column, row }: ImagePoint): ImagePoint {
  const depth = g * column + h * row + i;
  return { column: px((a * column + b * row + c) / depth), row: px((d * column + e * row + f) / depth) };
}

/** The map that does `first` and then `second`. */
export function after(second: Homography, first: Homography): Homography {
  const at = (row: number, column: number): number =>
    [0, 1, 2].reduce((sum, k) => sum + (second[3 * row + k] ?? 0) * (first[3 * k + column] ?? 0), 0);
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
}

/** The map that takes everything back; its scale is that of the adjugate, which a projective map does not feel. */
export const reversed = ([a, b, c, d, e, f, g, h, i]: Homography): Homography => [
  e * i - f * h,
  c * h - b * i,
  b * f - c * e,
  f * g - d * i,
  a * i - c * g,
  c * d - a * f,
  d * h - e * g,
  b * g - a * h,
  a * e - b * d,
];

/** The same map with its last number 1. */
export function scaled(map: Homography): Homography {
  const [a, b, c, d, e, f, g, h, i] = map;
  return [a / i, b / i, c / i, d / i, e / i, f / i, g / i, h / i, 1];
}

/** The same map between pictures of which both are `factor` times as large: 0.5 for half the size. */
export const resized = ([a, b, c, d, e, f, g, h, i]: Homography, factor: number): Homography => [
  a,
  b,
  c * factor,
  d,
  e,
  f * factor,
  g / factor,
  h / factor,
  i,
];

/**
 * How many times larger a map makes a small area at a place; below 0 where it turns it over.
 * @source plane geometry: determinant of the map's derivative, det H / depth cubed
 */
export function areaScaleAt(map: Homography, { column, row }: ImagePoint): number {
  const [a, b, c, d, e, f, g, h, i] = map;
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  return determinant / (g * column + h * row + i) ** 3;
}
