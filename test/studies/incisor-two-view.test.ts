import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { calibrateTopic } from "../../src/core/radiograph/calibrate-topic.ts";
import { traceTopic } from "../../src/core/radiograph/trace-topic.ts";
import { twoViewTopic } from "../../src/core/radiograph/two-view-topic.ts";
import { answer } from "../../src/core/topic.ts";
import { decodeFilm } from "../../src/imaging/decode-film.ts";
import { ridge, ridgeCost } from "../../src/imaging/ridge.ts";
import { seededRandom } from "../../src/phantom/seeded-random.ts";
import { type FilmSpot, incisorFilm, incisorMissing, sharedData } from "../journeys/incisor-films.ts";
import { along, axesOf, centreOf, readTriangleMesh, type Spot } from "../journeys/triangle-mesh.ts";

/** The tooth leans so far across the films: its canal is nearly straight, and would hold no depth to find otherwise. */
const leanDeg = 15;

/** The axes in which the incisor's films are thrown: x across a straight film, y along its ray, z to the apex. */
function toothAxes(folder: string) {
  const [dentine, enamel] = ["dentine", "enamel_outer_open"].map((name) =>
    readTriangleMesh(join(folder, `${name}.ply`)),
  );
  if (dentine === undefined || enamel === undefined) throw new Error("a mesh is missing");
  const [long] = axesOf(dentine.corners);
  const [, wide, deep] = axesOf([...dentine.corners, ...enamel.corners]);
  const centre = centreOf(dentine.corners);
  const down = along(centreOf(enamel.corners), long) > along(centre, long) ? 1 : -1;
  const lean = (leanDeg * Math.PI) / 180;
  return (spot: Spot): Spot => {
    const from: Spot = [spot[0] - centre[0], spot[1] - centre[1], spot[2] - centre[2]];
    const [upright, height] = [along(from, deep), down * along(from, long)];
    const y = upright * Math.cos(lean) + height * Math.sin(lean);
    return [along(from, wide), y, upright * Math.sin(lean) - height * Math.cos(lean)];
  };
}

/** The centroid of the area in which a closed surface is cut at a height z: a sum over the cut triangles (Green). */
function sliceCentroid(corners: readonly Spot[], triangles: readonly (readonly number[])[], z: number): Spot {
  let [area, x, y] = [0, 0, 0];
  for (const triangle of triangles) {
    const spots = triangle.flatMap((index) => corners[index] ?? []) as number[];
    const [a, b, c] = [spots.slice(0, 3), spots.slice(3, 6), spots.slice(6, 9)];
    const ends = [
      [a, b],
      [b, c],
      [c, a],
    ].flatMap(([p = [], q = []]) => {
      const [pz = 0, qz = 0] = [p[2], q[2]];
      if (pz > z === qz > z) return [];
      const share = (z - pz) / (qz - pz);
      const at = (axis: number): number => (p[axis] ?? 0) + share * ((q[axis] ?? 0) - (p[axis] ?? 0));
      return [{ x: at(0), y: at(1), falls: pz > z }];
    });
    const from = ends.find(({ falls }) => falls);
    const to = ends.find(({ falls }) => !falls);
    if (from === undefined || to === undefined) continue;
    const turn = from.x * to.y - to.x * from.y;
    area += turn / 2;
    x += ((from.x + to.x) * turn) / 6;
    y += ((from.y + to.y) * turn) / 6;
  }
  return [x / area, y / area, z];
}

/** A film as a person works on it: the scale from the rod, the canal by its line between two marks, each click off by a pixel. */
function worked(angleDeg: number, seed: number) {
  const film = incisorFilm(angleDeg, leanDeg);
  const random = seededRandom(seed);
  const click = ([u, v]: FilmSpot): [number, number] => [u + random.normal(), v + random.normal()];
  const { from, to, lengthMm } = film.rod;
  const scale = answer(calibrateTopic, { known: [{ lengthMm, from: click(from), to: click(to) }] });
  const pixels = decodeFilm(film.png, "incisor.png");
  return { film, scale, pixels, click };
}

describe(`a real incisor on two films${incisorMissing === undefined ? "" : `, skipped: ${incisorMissing}`}`, () => {
  it.skipIf(incisorMissing)(
    "gives the centreline of its pulp within 0.3 mm over the middle 80 per cent",
    async () => {
      const folder = join(sharedData, "incisor_meshes_gpl2");
      const place = toothAxes(folder);
      const pulp = readTriangleMesh(join(folder, "pulp.ply"));
      const corners = pulp.corners.map(place);
      const films = [worked(0, 1), worked(25, 2)];
      const views = await Promise.all(
        films.map(async ({ film, scale, pixels, click }, index) => {
          const { columns, rows } = film;
          const cost = ridgeCost(ridge(await pixels, { line: "dark" }));
          const [first, last] = [film.course[0], film.course.at(-1)];
          if (first === undefined || last === undefined) throw new Error("the film has a course");
          const { points } = answer(traceTopic, { ...{ cost, columns, rows }, from: click(first), to: click(last) });
          const { column, row } = scale.mmPerPx;
          return {
            horizontalAngleDeg: 25 * index,
            points: points.map(([u, v]): [number, number] => [u * column, v * row]),
          };
        }),
      );
      const found = answer(twoViewTopic, { views, sigmaMm: 0.05 });
      const course = found.course ?? [];
      // The first point of the traces is where the mesh is cut at the height of the canal's upper mark.
      const heights = corners.map(([, , z]) => z);
      const [apex, roof] = [Math.max(...heights), Math.min(...heights)];
      const orifice = sliceCentroid(corners, pulp.triangles, apex - 0.62 * (apex - roof));
      const misses = course.map(([x, y, z]) => {
        const truth = sliceCentroid(corners, pulp.triangles, orifice[2] + z);
        return {
          inSpace: Math.hypot(x + orifice[0] - truth[0], y + orifice[1] - truth[1]),
          withoutDepth: Math.hypot(x + orifice[0] - truth[0], orifice[1] - truth[1]),
        };
      });
      const middle = misses.slice(6, 54);
      expect(middle).toHaveLength(48);
      expect(Math.max(...middle.map(({ inSpace }) => inSpace))).toBeLessThan(0.3);
      // The straight film alone, without depth, is farther off: the test would notice a depth of the wrong sign.
      expect(Math.max(...middle.map(({ withoutDepth }) => withoutDepth))).toBeGreaterThan(0.3);
    },
    240_000,
  );
});
