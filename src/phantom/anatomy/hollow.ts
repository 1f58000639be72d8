import { type Profile, tableOf } from "../profile.ts";
import { smoothNoise } from "../smooth-noise.ts";

/** A hollow in the bone with a thin compact wall: the sinus over upper molars, the mandibular canal under lower ones. */
export interface Hollow {
  /** Distance to its wall; inside below 0. */
  readonly space: (x: number, y: number, z: number, fromToothMm: number) => number;
  readonly wallMm: number;
  /** Density of the wall against compact bone. */
  readonly wallPart: number;
  /** What fills it. */
  readonly holds: "air" | "soft";
}

/** The sinus: air over an uneven floor that dips between the roots and is held off them. */
export function sinusOver(floor: Profile, plates: { buccal: Profile; lingual: Profile }, seed: number): Hollow {
  const floorAt = tableOf(floor);
  const buccal = tableOf(plates.buccal);
  const lingual = tableOf(plates.lingual);
  return {
    space: (x, y, z, fromToothMm) => {
      const low = floorAt(x) - z;
      if (low > 5) return low;
      const uneven = 0.6 * smoothNoise(x / 2.6, y / 2.6, 0, seed);
      return Math.max(low + 0.035 * y * y + uneven, 0.75 - fromToothMm, y - buccal(z) + 1.3, lingual(z) + 1.3 - y);
    },
    wallMm: 0.3,
    wallPart: 0.85,
    holds: "air",
  };
}

/** The mandibular canal: a tube along the jaw. */
export function mandibularCanal(heightZ: Profile, y: number, radiusMm: number): Hollow {
  const middle = tableOf(heightZ);
  return {
    space: (x, py, pz) => Math.hypot(py - y, pz - middle(x)) - radiusMm,
    wallMm: 0.3,
    wallPart: 0.9,
    holds: "soft",
  };
}
