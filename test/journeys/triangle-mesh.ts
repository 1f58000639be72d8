import { readFileSync } from "node:fs";

/** A point in space, in mm. */
export type Spot = readonly [x: number, y: number, z: number];

/** A surface of triangles. */
export interface TriangleMesh {
  readonly corners: readonly Spot[];
  readonly triangles: readonly (readonly [number, number, number])[];
}

const cornerBytes = 12;
const triangleBytes = 13;

/** Reads a binary PLY file of float corners and three-cornered faces. */
export function readTriangleMesh(file: string): TriangleMesh {
  const bytes = readFileSync(file);
  const start = bytes.indexOf("end_header\n") + "end_header\n".length;
  const header = bytes.subarray(0, start).toString("latin1");
  const countOf = (what: string): number => Number(new RegExp(`element ${what} (\\d+)`).exec(header)?.[1]);
  const faces = start + countOf("vertex") * cornerBytes;
  const corners = Array.from({ length: countOf("vertex") }, (_, index): Spot => {
    const at = start + index * cornerBytes;
    return [bytes.readFloatLE(at), bytes.readFloatLE(at + 4), bytes.readFloatLE(at + 8)];
  });
  const triangles = Array.from({ length: countOf("face") }, (_, index) => {
    const at = faces + index * triangleBytes + 1;
    return [bytes.readInt32LE(at), bytes.readInt32LE(at + 4), bytes.readInt32LE(at + 8)] as const;
  });
  return { corners, triangles };
}

/** Three directions at right angles, by how far the corners spread along them, widest first. */
export function axesOf(corners: readonly Spot[]): readonly [Spot, Spot, Spot] {
  const centre = centreOf(corners);
  const spread = (a: number, b: number): number =>
    corners.reduce((sum, spot) => sum + ((spot[a] ?? 0) - (centre[a] ?? 0)) * ((spot[b] ?? 0) - (centre[b] ?? 0)), 0);
  const rows = [0, 1, 2].map((a) => [0, 1, 2].map((b) => spread(a, b)));
  const first = strongest(rows, []);
  const second = strongest(rows, [first]);
  return [first, second, cross(first, second)];
}

/** The middle of points. */
export function centreOf(spots: readonly Spot[]): Spot {
  const sum = spots.reduce<Spot>((held, spot) => [held[0] + spot[0], held[1] + spot[1], held[2] + spot[2]], [0, 0, 0]);
  return [sum[0] / spots.length, sum[1] / spots.length, sum[2] / spots.length];
}

/** How far a point goes along a direction. */
export const along = (spot: Spot, way: Spot): number => spot[0] * way[0] + spot[1] * way[1] + spot[2] * way[2];

/** Power iteration, kept at right angles to the directions found before. */
function strongest(rows: readonly (readonly number[])[], others: readonly Spot[]): Spot {
  let way: Spot = [0.6, 0.5, 0.4];
  for (let round = 0; round < 200; round += 1) {
    const [x = 0, y = 0, z = 0] = rows.map(
      (row) => (row[0] ?? 0) * way[0] + (row[1] ?? 0) * way[1] + (row[2] ?? 0) * way[2],
    );
    way = unit(others.reduce<Spot>(without, [x, y, z]));
  }
  return way;
}

function without(spot: Spot, way: Spot): Spot {
  const part = along(spot, way);
  return [spot[0] - part * way[0], spot[1] - part * way[1], spot[2] - part * way[2]];
}

function unit(spot: Spot): Spot {
  const length = Math.hypot(...spot);
  return [spot[0] / length, spot[1] / length, spot[2] / length];
}

const cross = (a: Spot, b: Spot): Spot => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
