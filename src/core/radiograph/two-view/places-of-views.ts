import { vector } from "../../geometry/vector.ts";
import { faultAt } from "../../refusal.ts";
import type { FilmPlace, PointSource } from "./camera.ts";
import { cameraOf } from "./camera.ts";
import { matchByLevel } from "./match-by-level.ts";
import { parallelInverse } from "./parallel-inverse.ts";
import { type PlaceInSpace, placeInSpace } from "./place-in-space.ts";
import type { Views } from "./view.ts";

/** A place farther off or less sure than this is none. */
const mostMm = 10_000;

/** The places in space that the paired points of all films show, one by one, from orifice to foramen. */
export function placesOfViews(films: Views): PlaceInSpace[] {
  const { views, byIndex } = films;
  const [first] = views;
  if (first === undefined) throw new RangeError("there are views");
  const most = Math.max(...views.map(({ points }) => points.length));
  const paired = byIndex
    ? first.points.map((_, index) => views.flatMap(({ points }) => points[index] ?? []))
    : matchByLevel(views, most);
  return paired.map((seen) => placeOfViews(films, seen));
}

/**
 * The place in space of one thing that every film shows, by least squares from the closed form of the two films farthest apart.
 * @throws Refusal `input.impossible` where the films' geometry can't be true of any place.
 * @source docs/methods/two-view.md C5
 */
export function placeOfViews(films: Omit<Views, "byIndex">, seen: readonly FilmPlace[]): PlaceInSpace {
  const { views, receptor, source, centralRay } = films;
  const order = views.map((_, index) => index).sort((a, b) => (views[a]?.angle ?? 0) - (views[b]?.angle ?? 0));
  const sight = (index: number | undefined) => ({ angle: views[index ?? 0]?.angle ?? 0, u: seen[index ?? 0]?.u ?? 0 });
  const { x, y } = parallelInverse(sight(order[0]), sight(order.at(-1)), receptor);
  const z = seen.reduce((sum, { v }) => sum + v, 0) / seen.length;
  const tube: PointSource | undefined = source && { ...source, centralRayMm: centralRay.mm };
  const looks = views.flatMap(({ angle, tilt }, index) => {
    const at = seen[index];
    const exposure = { receptor, angle, tilt };
    return at === undefined
      ? []
      : [{ at, camera: cameraOf(tube === undefined ? exposure : { ...exposure, source: tube }) }];
  });
  const found = placeInSpace(looks, vector(x, y, z));
  if (Math.hypot(found.spread.x, found.spread.y, found.spread.z, found.place.y) < mostMm) return found;
  throw faultAt(
    "views",
    "show no common place in space: check that the points are in mm, the angles, and the geometry",
  );
}
