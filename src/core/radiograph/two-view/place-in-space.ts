import { type Vector, vector } from "../../geometry/vector.ts";
import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import type { Camera, FilmPlace } from "./camera.ts";

/** A place in space that films show, and how far it misses them. */
export interface PlaceInSpace {
  readonly place: Vector;
  /** Sum of squared distances on the films, in mm2. */
  readonly squares: number;
  /** Standard deviation of x, y and z for a standard deviation of 1 mm on the films; infinite where they fix no place. */
  readonly spread: Vector;
}

/** What one film shows of a place, and how that film maps space. */
export interface Seen {
  readonly camera: Camera;
  readonly at: FilmPlace;
}

/**
 * The place in space that two or more films show, by least squares (Gauss and Newton).
 * Takes films under at least two angles, and a start near the place.
 * @source plane geometry, docs/methods/two-view.md C5
 */
export function placeInSpace(seen: readonly Seen[], start: Vector): PlaceInSpace {
  let place = start;
  let normal = normalOf(seen, place);
  for (let round = 0; round < 12; round++) {
    const lower = cholesky(normal.information, 3);
    if (lower === undefined) break;
    const step = solveCholesky(lower, normal.gradient);
    place = vector(place.x + (step[0] ?? 0), place.y + (step[1] ?? 0), place.z + (step[2] ?? 0));
    normal = normalOf(seen, place);
    if (Math.hypot(...step) < 1e-10) break;
  }
  return { place, squares: normal.squares, spread: spreadOf(normal.information) };
}

const nudge = 1e-4;

function normalOf(seen: readonly Seen[], place: Vector) {
  const information = new Float64Array(9);
  const gradient = new Float64Array(3);
  let squares = 0;
  for (const { camera, at } of seen) {
    const here = camera(place);
    const slopes = [
      camera({ ...place, x: place.x + nudge }),
      camera({ ...place, y: place.y + nudge }),
      camera({ ...place, z: place.z + nudge }),
    ].map(({ u, v }) => ({ u: (u - here.u) / nudge, v: (v - here.v) / nudge }));
    const left = { u: at.u - here.u, v: at.v - here.v };
    squares += left.u ** 2 + left.v ** 2;
    slopes.forEach((row, r) => {
      gradient[r] = (gradient[r] ?? 0) + row.u * left.u + row.v * left.v;
      slopes.forEach((column, c) => {
        information[3 * r + c] = (information[3 * r + c] ?? 0) + row.u * column.u + row.v * column.v;
      });
    });
  }
  return { information, gradient, squares };
}

function spreadOf(information: Float64Array): Vector {
  const lower = cholesky(information, 3);
  if (lower === undefined) return vector(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
  const [x = 0, y = 0, z = 0] = [0, 1, 2].map((axis) => {
    const one = new Float64Array(3);
    one[axis] = 1;
    return Math.sqrt(solveCholesky(lower, one)[axis] ?? 0);
  });
  return vector(x, y, z);
}
