import { type Solid, smoothUnion } from "../solid.ts";
import type { Cusp } from "./crown.ts";

/** What a pulp chamber is made from. */
export interface ChamberShape {
  readonly halfMesiodistal: number;
  readonly halfBuccolingual: number;
  readonly middle: { readonly x: number; readonly y: number };
  /** z of the roof, without the horns. */
  readonly roofZ: number;
  /** z of the floor. */
  readonly floorZ: number;
  /** How far the horns rise over the roof, 0 for none. */
  readonly hornMm: number;
}

interface Horn {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  /** At its foot. */
  readonly radius: number;
}

/** Distance to a horn: a cone that leans outwards and thins as it rises. */
function hornDistance(horn: Horn, shape: ChamberShape, at: { x: number; y: number; z: number }): number {
  const rise = Math.min(1, Math.max(0, (shape.roofZ + 0.5 - at.z) / (shape.hornMm + 0.5)));
  const qx = at.x - horn.x - horn.dx * rise;
  const qy = at.y - horn.y - horn.dy * rise;
  const qz = at.z - (shape.roofZ + 0.5 - rise * (shape.hornMm + 0.5));
  return Math.sqrt(qx * qx + qy * qy + qz * qz) - horn.radius * (1 - 0.72 * rise);
}

/** The chamber as a solid: a rounded box whose floor bulges up, with a horn towards each cusp. */
export function pulpChamberOf(shape: ChamberShape, cusps: readonly Cusp[]): Solid {
  const halfHeight = (shape.floorZ - shape.roofZ) / 2;
  const middleZ = (shape.floorZ + shape.roofZ) / 2;
  const { halfMesiodistal: a, halfBuccolingual: b } = shape;
  /** One root: the chamber narrows into its canal instead of having a floor. */
  const slender = a < 1.6;
  const horns = cusps.map((cusp) => ({
    x: shape.middle.x + Math.sign(cusp.x) * Math.min(Math.abs(cusp.x) * 0.6, a * 0.62),
    y: shape.middle.y + Math.sign(cusp.y) * Math.min(Math.abs(cusp.y) * 0.6, b * 0.62),
    dx: Math.sign(cusp.x) * 0.25,
    dy: Math.sign(cusp.y) * 0.25,
    radius: slender ? 0.34 : 0.58,
  }));
  return (x, y, z) => {
    const px = (x - shape.middle.x) / a;
    const py = (y - shape.middle.y) / b;
    const bulge = (slender ? 0 : 0.55) * Math.max(0, 1 - px * px - py * py);
    const pz = (z + bulge - middleZ) / halfHeight;
    if (Math.abs(px) > 2.5 || Math.abs(py) > 2.5 || Math.abs(pz) > 3.5) return 3;
    const narrowing = 1 - (slender ? 0 : 0.28) * Math.max(-1, Math.min(1, pz));
    const power = slender ? 2 : 2.4;
    const k =
      (Math.abs(px * narrowing) ** power + Math.abs(py * narrowing) ** power + Math.abs(pz) ** power) ** (1 / power);
    let distance = (k - 1) * Math.min(a, b, halfHeight);
    for (const horn of horns)
      distance = smoothUnion(distance, hornDistance(horn, shape, { x, y, z }), slender ? 0.4 : 1.1);
    return distance;
  };
}
