import { dot, minus, mix, plus, unit, type Vector, vector } from "../../geometry/vector.ts";
import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";

/** How near a course in space comes to lying in one plane. */
export interface Planarity {
  /** Root mean square distance from the plane that fits best, in mm. */
  readonly rmsMm: number;
  /** Largest distance from it, in mm. */
  readonly largestMm: number;
  /** The direction at right angles to the plane, of length 1. */
  readonly normal: Vector;
}

/**
 * The plane that fits a course best, and how far the course leaves it.
 * Takes places of a smooth course, at least three. A straight course lies in many planes; one of them is given.
 * @source plane geometry, docs/methods/curvature.md C14
 */
export function planarityOf(places: readonly Vector[]): Planarity {
  const sum = places.reduce((total, place) => plus(total, place), vector(0, 0));
  const centre = mix(1 / places.length, sum, 0, sum);
  const offsets = places.map((place) => minus(place, centre));
  const normal = flattest(offsets);
  const distances = offsets.map((offset) => Math.abs(dot(offset, normal)));
  const squares = distances.reduce((total, distance) => total + distance * distance, 0);
  return { rmsMm: Math.sqrt(squares / places.length), largestMm: Math.max(...distances), normal };
}

/** The direction of least spread: inverse iteration on the matrix of second moments. */
function flattest(offsets: readonly Vector[]): Vector {
  const moments = new Float64Array(9);
  for (const { x, y, z } of offsets)
    [x, y, z].forEach((a, row) => {
      [x, y, z].forEach((b, column) => {
        moments[row * 3 + column] = (moments[row * 3 + column] ?? 0) + a * b;
      });
    });
  const size = (moments[0] ?? 0) + (moments[4] ?? 0) + (moments[8] ?? 0);
  for (const diagonal of [0, 4, 8]) moments[diagonal] = (moments[diagonal] ?? 0) + 1e-12 * (size || 1);
  const lower = cholesky(moments, 3);
  let normal = vector(0.48, 0.6, 0.64);
  if (lower === undefined) return normal;
  for (let round = 0; round < 60; round++) {
    const [x = 0, y = 0, z = 0] = solveCholesky(lower, [normal.x, normal.y, normal.z]);
    normal = unit(vector(x, y, z));
  }
  return normal;
}
