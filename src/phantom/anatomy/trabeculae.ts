import type { VoxelGrid } from "../exposure/voxel-field.ts";
import { seededRandom } from "../seeded-random.ts";
import { smoothNoise } from "../smooth-noise.ts";
import { between, type ToothPoint } from "../tooth-point.ts";

/** A net of struts: nodes on a shaken lattice, joined to their neighbours. */
export interface TrabecularNet {
  /** Mean distance of nodes along each axis. */
  readonly spacingMm: { readonly x: number; readonly y: number; readonly z: number };
  /** Chance that a node is joined to its next neighbour along each axis. */
  readonly joins: { readonly x: number; readonly y: number; readonly z: number };
  /** Radius of a strut in its thin middle. */
  readonly radiusMm: number;
  /** How much deeper a strut is from lingual to buccal than it is wide: 1 a rod, 8 a small plate seen on its edge. */
  readonly depth: number;
  readonly seed: number;
}

interface Strut {
  readonly from: ToothPoint;
  readonly to: ToothPoint;
  readonly radius: number;
}

const shake = 0.42;

/** The node of a lattice place, shaken; the same for the same seed whatever the order of asking. */
function nodeAt(net: TrabecularNet, grid: VoxelGrid, at: readonly [number, number, number]): ToothPoint {
  const [i, j, k] = at;
  const random = seededRandom(net.seed + i * 73856093 + j * 19349663 + k * 83492791);
  const shaken = (index: number, spacing: number): number => (index + (random.uniform() * 2 - 1) * shake) * spacing;
  return {
    x: grid.from.x + shaken(i + (k % 2) * 0.5, net.spacingMm.x),
    y: grid.from.y + shaken(j, net.spacingMm.y),
    z: grid.from.z + shaken(k, net.spacingMm.z),
  };
}

const neighbours = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [1, 0, 1],
  [-1, 0, 1],
  [0, 1, 1],
  [1, 1, 0],
] as const;

/** The struts of a net, each as two pieces that meet a little off the straight line. */
function strutsOf(net: TrabecularNet, grid: VoxelGrid, inBone: (at: ToothPoint) => boolean): Strut[] {
  const count = (axis: "x" | "y" | "z"): number =>
    Math.ceil((grid.count[axis] * grid.stepMm[axis]) / net.spacingMm[axis]) + 1;
  const random = seededRandom(net.seed);
  const struts: Strut[] = [];
  for (let k = 0; k < count("z"); k++)
    for (let j = 0; j < count("y"); j++)
      for (let i = 0; i < count("x"); i++) {
        const from = nodeAt(net, grid, [i, j, k]);
        const density = smoothNoise(from.x / 3.1, from.y / 3.1, from.z / 3.1, net.seed + 5);
        for (const [di, dj, dk] of neighbours) {
          const along = di !== 0 && dk !== 0 ? 0.35 : dj !== 0 && (di !== 0 || dk !== 0) ? 0.2 : 1;
          const chance =
            Math.max(di === 0 ? 0 : net.joins.x, dj === 0 ? 0 : net.joins.y, dk === 0 ? 0 : net.joins.z) * along;
          if (random.uniform() > chance * (1 + 0.45 * density)) continue;
          const to = nodeAt(net, grid, [i + di, j + dj, k + dk]);
          const radius = net.radiusMm * (0.65 + 0.7 * random.uniform()) * (1 + 0.25 * density);
          const straight = between(from, to, 0.5);
          const bend = (): number => random.normal() * 0.09;
          const middle = { x: straight.x + bend(), y: straight.y + bend(), z: straight.z + bend() };
          if (!inBone(middle)) continue;
          struts.push({ from, to: middle, radius }, { from: to, to: middle, radius });
        }
      }
  return struts;
}

/** Fills the voxels of one piece of strut, thicker at its node (`from`) than in its middle (`to`). */
function fillStrut(strut: Strut, grid: VoxelGrid, filled: { depth: number; net: Uint8Array }): void {
  const thick = strut.radius * 1.7;
  const { depth, net } = filled;
  const reach = (axis: "x" | "y" | "z"): number => (axis === "y" ? thick * depth : thick);
  const low = (axis: "x" | "y" | "z"): number =>
    Math.max(
      0,
      Math.floor((Math.min(strut.from[axis], strut.to[axis]) - reach(axis) - grid.from[axis]) / grid.stepMm[axis]),
    );
  const high = (axis: "x" | "y" | "z"): number =>
    Math.min(
      grid.count[axis] - 1,
      Math.ceil((Math.max(strut.from[axis], strut.to[axis]) + reach(axis) - grid.from[axis]) / grid.stepMm[axis]),
    );
  const [lx, hx, ly, hy, lz, hz] = [low("x"), high("x"), low("y"), high("y"), low("z"), high("z")];
  const ax = strut.to.x - strut.from.x;
  const ay = (strut.to.y - strut.from.y) / depth;
  const az = strut.to.z - strut.from.z;
  const square = Math.max(1e-9, ax * ax + ay * ay + az * az);
  const edge = grid.stepMm.x * 1.2;
  for (let j = ly; j <= hy; j++) {
    const py = (grid.from.y + j * grid.stepMm.y - strut.from.y) / depth;
    for (let k = lz; k <= hz; k++) {
      const pz = grid.from.z + k * grid.stepMm.z - strut.from.z;
      const row = (j * grid.count.z + k) * grid.count.x;
      for (let i = lx; i <= hx; i++) {
        const px = grid.from.x + i * grid.stepMm.x - strut.from.x;
        const t = Math.min(1, Math.max(0, (px * ax + py * ay + pz * az) / square));
        const qx = px - ax * t;
        const qy = py - ay * t;
        const qz = pz - az * t;
        const radius = strut.radius * (1 + 0.7 * (1 - t) * (1 - t));
        const part = 0.5 - (Math.sqrt(qx * qx + qy * qy + qz * qz) - radius) / edge;
        if (part <= 0) continue;
        const value = part >= 1 ? 255 : Math.round(part * 255);
        if (value > (net[row + i] as number)) net[row + i] = value;
      }
    }
  }
}

/** How much of each voxel (0..255) belongs to a strut of one of the nets; struts are made only where there is bone. */
export function trabeculaeIn(
  grid: VoxelGrid,
  nets: readonly TrabecularNet[],
  inBone: (at: ToothPoint) => boolean,
): Uint8Array {
  const filled = new Uint8Array(grid.count.x * grid.count.y * grid.count.z);
  for (const net of nets)
    for (const strut of strutsOf(net, grid, inBone)) fillStrut(strut, grid, { depth: net.depth, net: filled });
  return filled;
}
