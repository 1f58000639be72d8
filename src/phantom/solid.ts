/**
 * A solid as the distance to its surface: below 0 inside, above 0 outside, in mm, true near the surface and only
 * an estimate farther away.
 */
export type Solid = (x: number, y: number, z: number) => number;

/** The union of two distances with a rounded fillet about as wide as `roundingMm`. */
export function smoothUnion(a: number, b: number, roundingMm: number): number {
  const overlap = Math.max(0, roundingMm - Math.abs(a - b));
  return Math.min(a, b) - (overlap * overlap) / (4 * roundingMm);
}

/** What two distances have in common, with an edge rounded about as wide as `roundingMm`. */
export const smoothIntersection = (a: number, b: number, roundingMm: number): number =>
  -smoothUnion(-a, -b, roundingMm);

/** The part of a voxel (0..1) that lies inside a surface at this distance from its middle. */
export const coverage = (distance: number, voxelMm: number): number => {
  const part = 0.5 - distance / voxelMm;
  return Math.min(1, Math.max(0, part));
};

/** Rises smoothly from 0 at `from` to 1 at `to`. */
export function smoothStep(from: number, to: number, value: number): number {
  const t = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

/** Distance to an ellipsoid about the origin (k(k-1)/|grad|, first order at the surface). */
export function ellipsoidDistance(
  qx: number,
  qy: number,
  qz: number,
  axes: { a: number; b: number; c: number },
): number {
  const x = qx / axes.a;
  const y = qy / axes.b;
  const z = qz / axes.c;
  const k = Math.sqrt(x * x + y * y + z * z);
  if (k < 1e-6) return -Math.min(axes.a, axes.b, axes.c);
  const gx = x / axes.a;
  const gy = y / axes.b;
  const gz = z / axes.c;
  return (k * (k - 1)) / Math.sqrt(gx * gx + gy * gy + gz * gz);
}

/** A box with rounded edges between two corners. */
export function roundedBox(
  from: readonly [number, number, number],
  to: readonly [number, number, number],
  roundingMm: number,
): Solid {
  const middle = [0, 1, 2].map((axis) => ((from[axis] ?? 0) + (to[axis] ?? 0)) / 2);
  const reach = [0, 1, 2].map((axis) => Math.abs((to[axis] ?? 0) - (from[axis] ?? 0)) / 2 - roundingMm);
  const [mx = 0, my = 0, mz = 0] = middle;
  const [rx = 0, ry = 0, rz = 0] = reach;
  return (x, y, z) => {
    const qx = Math.abs(x - mx) - rx;
    const qy = Math.abs(y - my) - ry;
    const qz = Math.abs(z - mz) - rz;
    const outside = Math.hypot(Math.max(qx, 0), Math.max(qy, 0), Math.max(qz, 0));
    return outside + Math.min(Math.max(qx, qy, qz), 0) - roundingMm;
  };
}
