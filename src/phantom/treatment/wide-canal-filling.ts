import { type Canal, canalSolid } from "../anatomy/canal.ts";
import type { Material } from "../exposure/material.ts";
import type { Inset } from "../jaw-segment.ts";
import { smoothNoise } from "../smooth-noise.ts";

/** A plug in a wide canal between two heights z, with uneven ends: an apical barrier, or the filling over it. */
export function wideCanalFilling(
  canal: Canal,
  part: { readonly fromZ: number; readonly toZ: number; readonly seed: number },
  material: Material,
): Inset {
  const canalSpace = canalSolid(canal);
  const reach = 3;
  return {
    solid: (x, y, z) => {
      const uneven = 0.25 * smoothNoise(x / 0.8, y / 0.8, z / 0.8, part.seed);
      return Math.max(
        canalSpace(x, y, z) + 0.04 + Math.max(0, uneven) * 0.3,
        part.fromZ + uneven - z,
        z - part.toZ - uneven,
      );
    },
    box: { from: { x: -reach, y: -reach, z: part.fromZ - 1 }, to: { x: reach, y: reach, z: part.toZ + 1 } },
    material,
  };
}
