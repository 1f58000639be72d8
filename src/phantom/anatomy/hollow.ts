import { type Profile, valueAt } from "../profile.ts";
import type { Solid } from "../solid.ts";

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

/** The sinus: air over a floor that dips between the roots and is held off them. */
export function sinusOver(floor: Profile, buccal: Profile, lingual: Profile): Hollow {
  return {
    space: (x, y, z, fromToothMm) =>
      Math.max(valueAt(floor, x) + 0.02 * y * y - z, 0.9 - fromToothMm, y - valueAt(buccal, z) + 1.5, valueAt(lingual, z) + 1.5 - y),
    wallMm: 0.42,
    wallPart: 1,
    holds: "air",
  };
}

/** The mandibular canal: a tube along the jaw. */
export function mandibularCanal(heightZ: Profile, y: number, radiusMm: number): Hollow {
  const along: Solid = (x, py, pz) => Math.hypot(py - y, pz - valueAt(heightZ, x)) - radiusMm;
  return { space: along, wallMm: 0.35, wallPart: 0.75, holds: "soft" };
}
