import type { Eye } from "./eye-in-space.ts";
import type { ToothPlace } from "./seen-from.ts";
import { element, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import type { Theme } from "./theme.ts";

/** The half width of a normal distribution's middle 95 %, in standard deviations. */
const middle95 = 1.96;

/** A course with the standard deviations of places along it, in order and at even steps, mm. */
export interface SpreadCourse {
  readonly course: readonly ToothPlace[];
  readonly spread?: readonly ToothPlace[] | undefined;
}

/** The band round a course in which 95 % of single places lie, as the eye sees it; nothing where no spread is given. */
export function bandAround({ course, spread }: SpreadCourse, eye: Eye, theme: Theme): readonly SvgNode[] {
  if (spread === undefined || spread.length === 0 || course.length < 2) return [];
  const spots = course.map(eye.spot);
  const sides = course.map((place, at) => {
    const share = at / (course.length - 1);
    const sigma = spread[Math.round(share * (spread.length - 1))] ?? [0, 0, 0];
    return sideOf(normalAt(spots, at), place, sigma, eye);
  });
  const shifted = (sign: 1 | -1): Spot[] =>
    spots.map(({ x, y }, at) => ({ x: x + sign * (sides[at]?.x ?? 0), y: y + sign * (sides[at]?.y ?? 0) }));
  return [
    element("path", {
      "data-part": "band",
      d: pathThrough([...shifted(1), ...shifted(-1).reverse()], true),
      fill: theme.course,
      "fill-opacity": 0.16,
      stroke: theme.course,
      "stroke-opacity": 0.35,
      "stroke-width": 0.8,
      "stroke-linejoin": "round",
    }),
  ];
}

/** How far the band reaches along a direction of the drawing: the ellipsoid of the three spreads, seen along it. */
function sideOf(normal: Spot, place: ToothPlace, sigma: ToothPlace, eye: Eye): Spot {
  const at = eye.spot(place);
  const [x, y, z] = place;
  const steps: readonly ToothPlace[] = [
    [x + 1, y, z],
    [x, y + 1, z],
    [x, y, z + 1],
  ];
  const reach = Math.hypot(
    ...steps.map(eye.spot).map((step, axis) => {
      const along = (step.x - at.x) * normal.x + (step.y - at.y) * normal.y;
      return along * (sigma[axis] ?? 0);
    }),
  );
  return { x: normal.x * reach * middle95, y: normal.y * reach * middle95 };
}

/** Square to the course in the drawing; where it runs at the eye, to the side. */
function normalAt(spots: readonly Spot[], at: number): Spot {
  const [before, after] = [spots[Math.max(0, at - 1)], spots[Math.min(spots.length - 1, at + 1)]];
  if (before === undefined || after === undefined) return { x: 1, y: 0 };
  const length = Math.hypot(after.x - before.x, after.y - before.y);
  return length < 1e-6 ? { x: 1, y: 0 } : { x: (after.y - before.y) / length, y: -(after.x - before.x) / length };
}
