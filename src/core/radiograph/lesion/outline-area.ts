import { mm, type PlanePoint } from "../../units.ts";

/**
 * The area of a polygon in mm2, above 0 where x turns towards y on the way round and below 0 the other way.
 * @source plane geometry (Gauss's area formula); docs/methods/lesion C1
 */
export function areaOf(corners: readonly PlanePoint[]): number {
  return sumOf(corners, (here, next) => here.x * next.y - next.x * here.y) / 2;
}

/** The centre of a polygon's area. @source plane geometry; docs/methods/lesion C1 */
export function centreOf(corners: readonly PlanePoint[]): PlanePoint {
  const [first] = corners;
  if (first === undefined) return { x: mm(0), y: mm(0) };
  // Counted from a corner, so that an outline far from the origin keeps its digits.
  const near = corners.map(({ x, y }) => ({ x: mm(x - first.x), y: mm(y - first.y) }));
  const six = 6 * areaOf(near);
  const part = (axis: "x" | "y") =>
    sumOf(near, (here, next) => (here[axis] + next[axis]) * (here.x * next.y - next.x * here.y)) / six;
  return { x: mm(first.x + part("x")), y: mm(first.y + part("y")) };
}

/**
 * The standard deviation of a polygon's area in mm2 where each corner errs by itself, by `sigma` in each direction.
 * @source first-order propagation: moving a corner changes the area by half the line between its neighbours across it
 */
export function areaSigma(corners: readonly PlanePoint[], sigma: number): number {
  const pull = corners.reduce((sum, _, index) => {
    const before = corners.at(index - 1);
    const after = corners[(index + 1) % corners.length];
    if (before === undefined || after === undefined) return sum;
    return sum + ((after.x - before.x) ** 2 + (after.y - before.y) ** 2) / 4;
  }, 0);
  return sigma * Math.sqrt(pull);
}

function sumOf(corners: readonly PlanePoint[], of: (here: PlanePoint, next: PlanePoint) => number): number {
  return corners.reduce((sum, here, index) => sum + of(here, corners[(index + 1) % corners.length] ?? here), 0);
}
