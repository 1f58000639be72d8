import { existsSync } from "node:fs";
import { join } from "node:path";
import type { FilmPixels } from "../../src/imaging/film-pixels.ts";
import { greyPng } from "../../src/imaging/grey-png.ts";
import { filmToDicom } from "../../src/phantom/film-to-dicom.ts";
import { seededRandom } from "../../src/phantom/seeded-random.ts";
import { root } from "./canalog.ts";
import { along, axesOf, centreOf, readTriangleMesh, type Spot, type TriangleMesh } from "./triangle-mesh.ts";

/** Where data lies that is tried here and never becomes part of the project. */
export const sharedData = join(process.env.CANALOG_SHARED ?? join(root, "..", "shared"), "data");
const meshes = join(sharedData, "incisor_meshes_gpl2");

/** Why the films of the real incisor can't be made here; undefined where they can. */
export const incisorMissing = existsSync(join(meshes, "pulp.ply"))
  ? undefined
  : `the meshes of a real incisor are not at ${meshes}; set CANALOG_SHARED`;

/** A point of a film in pixels, [u to the right, v down]. */
export type FilmSpot = readonly [u: number, v: number];

/** A film of the real incisor whose canal is known. */
export interface IncisorFilm {
  readonly columns: number;
  readonly rows: number;
  /** 16-bit samples, dense is bright. */
  readonly samples: Uint16Array;
  readonly png: Uint8Array;
  readonly dicom: Uint8Array;
  readonly mmPerPx: number;
  /** The canal's course from orifice to apex, a point about each half millimetre. */
  readonly course: readonly FilmSpot[];
  /** Its length on this film. */
  readonly lengthMm: number;
  /** A metal rod beside the tooth whose length is known. */
  readonly rod: { readonly from: FilmSpot; readonly to: FilmSpot; readonly lengthMm: number };
}

const columns = 760;
const rows = 1_300;
const mmPerPx = 0.0225;
const rod = { lengthMm: 12, widthMm: 0.6, column: 90, row: 420 } as const;
/** What weakens the beam, per mm: dentine, enamel, steel; round figures of the order found at 60 kV. */
const perMm = { dentine: 0.11, enamel: 0.2, steel: 0.9 } as const;

/** The real incisor projected by parallel rays, turned about its long axis, and leaning to the palate with its apex, in degrees. */
export function incisorFilm(angleDeg: number, leanDeg = 0): IncisorFilm {
  const [dentine, enamel, pulp] = ["dentine", "enamel_outer_open", "pulp"].map((name) =>
    readTriangleMesh(join(meshes, `${name}.ply`)),
  );
  if (dentine === undefined || enamel === undefined || pulp === undefined) throw new Error("a mesh is missing");
  const view = viewOf(dentine, enamel, { angleDeg, leanDeg });
  const samples = exposed({
    dentine: pathsThrough(dentine, view),
    enamel: pathsThrough(enamel, view),
    pulp: pathsThrough(pulp, view),
  });
  const course = courseOf(pulp, view);
  const lengthMm = course.slice(1).reduce((sum, [u, v], index) => {
    const [u0 = u, v0 = v] = course[index] ?? [];
    return sum + Math.hypot(u - u0, v - v0) * mmPerPx;
  }, 0);
  const end = rod.row + rod.lengthMm / mmPerPx;
  return {
    ...{ columns, rows, samples, mmPerPx, course, lengthMm, png: pngOf(samples), dicom: dicomOf(samples) },
    rod: { from: [rod.column, rod.row], to: [rod.column, end], lengthMm: rod.lengthMm },
  };
}

/** Places a point of space on the film: [column, row, depth in mm along the ray]. */
type View = (spot: Spot) => readonly [number, number, number];

/** The tooth upright with its crown below, as an upper incisor hangs; at 0 degrees the beam goes from the lip to the palate. */
function viewOf(
  dentine: TriangleMesh,
  enamel: TriangleMesh,
  { angleDeg, leanDeg }: { angleDeg: number; leanDeg: number },
): View {
  const [long] = axesOf(dentine.corners);
  const centre = centreOf(dentine.corners);
  const down: Spot =
    along(centreOf(enamel.corners), long) > along(centre, long) ? long : [-long[0], -long[1], -long[2]];
  const [, wide, deep] = axesOf([...dentine.corners, ...enamel.corners]);
  const turn = (angleDeg * Math.PI) / 180;
  const lean = (leanDeg * Math.PI) / 180;
  const extents = dentine.corners.map((spot) => along(spot, down));
  const middle = (Math.min(...extents) + Math.max(...extents)) / 2;
  return (spot) => {
    const relative: Spot = [spot[0] - centre[0], spot[1] - centre[1], spot[2] - centre[2]];
    const [x, upright, height] = [along(relative, wide), along(relative, deep), along(spot, down) - middle];
    const y = upright * Math.cos(lean) + height * Math.sin(lean);
    return [
      columns / 2 + (x * Math.cos(turn) + y * Math.sin(turn)) / mmPerPx,
      rows / 2 + (height * Math.cos(lean) - upright * Math.sin(lean)) / mmPerPx,
      y * Math.cos(turn) - x * Math.sin(turn),
    ];
  };
}

/** How many mm of a surface's inside each pixel's ray goes through; a ray through an open edge takes the pixel's above it. */
function pathsThrough({ corners, triangles }: TriangleMesh, view: View): Float64Array {
  const placed = corners.map(view);
  const path = new Float64Array(columns * rows);
  const balance = new Int16Array(columns * rows);
  for (const [a, b, c] of triangles) {
    const [first, second, third] = [placed[a], placed[b], placed[c]];
    if (first === undefined || second === undefined || third === undefined) continue;
    const [[ax, ay, az], [bx, by, bz], [cx, cy, cz]] = [first, second, third];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area === 0) continue;
    const facing = Math.sign(area);
    for (let row = Math.ceil(Math.min(ay, by, cy)); row <= Math.max(ay, by, cy); row += 1)
      for (let column = Math.ceil(Math.min(ax, bx, cx)); column <= Math.max(ax, bx, cx); column += 1) {
        if (row < 0 || column < 0 || row >= rows || column >= columns) continue;
        const u = ((bx - column) * (cy - row) - (by - row) * (cx - column)) / area;
        const v = ((cx - column) * (ay - row) - (cy - row) * (ax - column)) / area;
        if (u < 0 || v < 0 || u + v > 1) continue;
        const at = row * columns + column;
        path[at] = (path[at] ?? 0) + facing * (u * az + v * bz + (1 - u - v) * cz);
        balance[at] = (balance[at] ?? 0) + facing;
      }
  }
  for (let at = 0; at < path.length; at += 1)
    path[at] = balance[at] === 0 ? Math.abs(path[at] ?? 0) : (path[at - columns] ?? 0);
  return path;
}

/** Beer and Lambert along each ray, a little noise, and 16 bits: what weakens more is brighter. */
function exposed(paths: Readonly<Record<"dentine" | "enamel" | "pulp", Float64Array>>): Uint16Array {
  const noise = seededRandom(26);
  return Uint16Array.from(paths.dentine, (dentine, at) => {
    const enamel = Math.max(0, (paths.enamel[at] ?? 0) - dentine);
    const [column, row] = [at % columns, Math.floor(at / columns)];
    const inRod =
      Math.abs(column - rod.column) <= rod.widthMm / 2 / mmPerPx &&
      row >= rod.row &&
      row <= rod.row + rod.lengthMm / mmPerPx;
    const weakened =
      0.25 +
      perMm.dentine * (dentine - (paths.pulp[at] ?? 0)) +
      perMm.enamel * enamel +
      (inRod ? perMm.steel * rod.widthMm : 0);
    const level = 1 - Math.exp(-weakened) + 0.004 * noise.normal();
    return Math.round(65_535 * Math.min(1, Math.max(0, level)));
  });
}

/** The middle of the pulp space slice by slice, from below the chamber to just before the foramen. */
function courseOf(pulp: TriangleMesh, view: View): FilmSpot[] {
  const placed = pulp.corners.map(view);
  const heights = placed.map(([, v]) => v);
  const [apex, roof] = [Math.min(...heights), Math.max(...heights)];
  const [from, to] = [apex + 0.62 * (roof - apex), apex + 0.02 * (roof - apex)];
  const step = 0.5 / mmPerPx;
  const levels = Array.from({ length: Math.floor((from - to) / step) + 1 }, (_, index) => from - index * step);
  return levels.map((level) => {
    const slice = placed.filter(([, v]) => Math.abs(v - level) < step / 2);
    const us = slice.map(([u]) => u);
    return [(Math.min(...us) + Math.max(...us)) / 2, level];
  });
}

function pngOf(samples: Uint16Array): Uint8Array {
  const bytes = new Uint8Array(samples.length * 2);
  samples.forEach((sample, at) => {
    bytes[2 * at] = sample >> 8;
    bytes[2 * at + 1] = sample & 0xff;
  });
  return greyPng({ columns, rows, depth: 16, bytes });
}

function dicomOf(samples: Uint16Array): Uint8Array {
  const film: FilmPixels = {
    ...{ columns, rows, bitsStored: 16, samples, photometric: "MONOCHROME2" },
    technical: {
      ...{ sourceFormat: "dicom", wasColour: false, lossy: false },
      ...{ detectorSpacingMm: [mmPerPx, mmPerPx], magnification: 1 },
    },
  };
  return filmToDicom(film, { name: "incisor", date: "20260210", number: 1, laterality: "R", arch: "upper" });
}
