import { faultAt, Refusal } from "../../refusal.ts";
import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { type ImagePoint, px } from "../../units.ts";
import { after, areaScaleAt, type Homography, mapped, reversed, scaled } from "./homography.ts";

/** One place that a person found on both films. */
export interface Landmark {
  readonly before: ImagePoint;
  readonly after: ImagePoint;
}

/** Below this share of the largest, a pivot says that the landmarks do not fix the map. */
const thinnest = 1e-7;

/**
 * The projective map that takes the landmarks of one film to those of the other, by least squares.
 * Takes at least 4 landmarks. Gives the map; exact for 4. Both films' places are moved and scaled first, to a mean of 0
 * and a mean distance of sqrt(2), because the sums are badly conditioned in pixels.
 * @throws Refusal `input.impossible` where the landmarks lie (nearly) in line, or one film is the other's mirror image.
 * @source R. Hartley, A. Zisserman, Multiple view geometry in computer vision, 2nd ed. 2003, 4.1 and 4.4 (memory);
 * docs/methods/compare-films C1
 */
export function homographyOfLandmarks(landmarks: readonly Landmark[]): Homography {
  const from = normaliserOf(landmarks.map((one) => one.before));
  const to = normaliserOf(landmarks.map((one) => one.after));
  const pairs = landmarks.map((one) => ({ before: mapped(from, one.before), after: mapped(to, one.after) }));
  const solution = solved(pairs);
  if (solution === undefined)
    throw faultAt("landmarks", "lie nearly in line, which fixes no map; mark at least 4 of which no 3 are in line");
  const map = scaled(after(reversed(to), after(solution, from)));
  if (landmarks.some((one) => !(areaScaleAt(map, one.before) > 0)))
    throw faultAt("landmarks", "turn the film over or fold it; look for two that are exchanged, or mirror one film");
  return map;
}

function normaliserOf(places: readonly ImagePoint[]): Homography {
  const mean = (axis: keyof ImagePoint) => places.reduce((sum, place) => sum + place[axis], 0) / places.length;
  const [column, row] = [mean("column"), mean("row")];
  const away = places.reduce((sum, one) => sum + Math.hypot(one.column - column, one.row - row), 0) / places.length;
  if (away === 0) throw new Refusal("input.impossible", "Cannot compare the films: all landmarks are one place");
  const k = Math.SQRT2 / away;
  return [k, 0, -k * column, 0, k, -k * row, 0, 0, 1];
}

/** The eight free numbers of the map, its last being 1: two equations for each landmark. */
function solved(pairs: readonly Landmark[]): Homography | undefined {
  const normal = new Float64Array(64);
  const right = new Float64Array(8);
  for (const { before, after: target } of pairs) {
    const { column: x, row: y } = before;
    addEquation(normal, right, [x, y, 1, 0, 0, 0, -target.column * x, -target.column * y], target.column);
    addEquation(normal, right, [0, 0, 0, x, y, 1, -target.row * x, -target.row * y], target.row);
  }
  const lower = cholesky(normal, 8);
  if (lower === undefined) return undefined;
  const pivots = Array.from({ length: 8 }, (_, index) => (lower[index * 9] ?? 0) ** 2);
  if (Math.min(...pivots) < thinnest * Math.max(...pivots)) return undefined;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = solveCholesky(lower, right);
  return [a, b, c, d, e, f, g, h, 1];
}

function addEquation(normal: Float64Array, right: Float64Array, terms: readonly number[], value: number): void {
  const size = terms.length;
  terms.forEach((one, row) => {
    right[row] = (right[row] ?? 0) + one * value;
    terms.forEach((other, column) => {
      normal[row * size + column] = (normal[row * size + column] ?? 0) + one * other;
    });
  });
}

/** How far a map leaves landmarks from their mates: the root mean square, px of the second film. */
export function landmarkResidual(map: Homography, landmarks: readonly Landmark[]): number {
  const squares = landmarks.reduce((sum, one) => {
    const at = mapped(map, one.before);
    return sum + (at.column - one.after.column) ** 2 + (at.row - one.after.row) ** 2;
  }, 0);
  return Math.sqrt(squares / landmarks.length);
}

/** A place from two numbers. */
export const placeAt = (column: number, row: number): ImagePoint => ({ column: px(column), row: px(row) });
