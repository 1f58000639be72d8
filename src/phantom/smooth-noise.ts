import { mixedBits } from "./seeded-random.ts";

/** A value from -1 to 1 at a corner of the whole-number lattice. */
function cornerValue(ix: number, iy: number, iz: number, seed: number): number {
  const key =
    Math.imul(ix, 0x1f123bb5) ^ Math.imul(iy, 0x5f356495) ^ Math.imul(iz, 0x2c1b3c6d) ^ Math.imul(seed, 0x297a2d39);
  return mixedBits(key) / 2147483648 - 1;
}

const eased = (t: number): number => t * t * (3 - 2 * t);
const mixed = (a: number, b: number, t: number): number => a + (b - a) * t;

/** A value from -1 to 1 that changes smoothly in space, about once in each unit of length; the same for the same seed. */
export function smoothNoise(x: number, y: number, z: number, seed: number): number {
  const ix = Math.floor(x);
  const iy = Math.floor(y);
  const iz = Math.floor(z);
  const tx = eased(x - ix);
  const ty = eased(y - iy);
  const tz = eased(z - iz);
  const plane = (k: number): number =>
    mixed(
      mixed(cornerValue(ix, iy, k, seed), cornerValue(ix + 1, iy, k, seed), tx),
      mixed(cornerValue(ix, iy + 1, k, seed), cornerValue(ix + 1, iy + 1, k, seed), tx),
      ty,
    );
  return mixed(plane(iz), plane(iz + 1), tz);
}
