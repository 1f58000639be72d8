import { smoothNoise } from "../smooth-noise.ts";
import { type Solid, smoothStep } from "../solid.ts";
import type { ToothPoint } from "../tooth-point.ts";

/** A place at a root where bone has gone. */
export interface Lesion {
  readonly middle: ToothPoint;
  readonly radiusMm: number;
  /** Width of its edge, from no bone to all bone. */
  readonly softnessMm: number;
  readonly seed: number;
}

/** A lesion that a film shows has reached the plates: it is this much deeper (lingual to buccal) than it is wide. */
const deeper = 2.2;

/** The part of the bone (0..1) that a lesion leaves at a place. */
export function boneLeft(lesions: readonly Lesion[]): Solid {
  return (x, y, z) => {
    let left = 1;
    for (const { middle, radiusMm, softnessMm, seed } of lesions) {
      const away = Math.sqrt((x - middle.x) ** 2 + ((y - middle.y) / deeper) ** 2 + ((z - middle.z) * 0.94) ** 2);
      if (away > radiusMm + softnessMm + 1) continue;
      const uneven = 0.18 * radiusMm * smoothNoise(x / 1.6, y / 1.6, z / 1.6, seed);
      left *= smoothStep(radiusMm - softnessMm / 2, radiusMm + softnessMm / 2, away + uneven);
    }
    return left;
  };
}
