import { type Profile, valueAt } from "../profile.ts";
import { type Solid, smoothIntersection, smoothStep } from "../solid.ts";
import type { PlacedTooth } from "./placed-tooth.ts";

/** The alveolar process of a segment, seen across: its two plates, and the crest between the teeth. */
export interface BoneShape {
  /** y of the outer face of the buccal plate, by z. */
  readonly buccal: Profile;
  /** y of the outer face of the lingual plate, by z. */
  readonly lingual: Profile;
  /** z of the crest between the teeth, by x. */
  readonly crest: Profile;
  /** Thickness of the plates by z. */
  readonly plateMm: Profile;
  /** Thickness of the compact layer on the crest. */
  readonly crestLayerMm: number;
}

/** z of the crest: highest between the teeth, lower over the middle of each root on both faces. */
function crestHeight(shape: BoneShape, teeth: readonly PlacedTooth[]): (x: number, y: number) => number {
  const necks = teeth.map((placed) => ({
    x: placed.at.x,
    half: valueAt(placed.tooth.shape.crown.halfMesiodistal, 0) + 0.6,
  }));
  return (x, y) => {
    let fall = 0;
    for (const neck of necks) {
      const away = (x - neck.x) / neck.half;
      fall = Math.max(fall, 1 - away * away);
    }
    return valueAt(shape.crest, x) + 1.5 * fall * smoothStep(1.5, 5.5, Math.abs(y));
  };
}

/** Bone and gum as solids, and how thick the compact bone is. */
export interface AlveolarBone {
  readonly shape: BoneShape;
  readonly bone: Solid;
  readonly gum: Solid;
  /** Thickness of compact bone under the outer face nearest to this place. */
  readonly compactMm: Solid;
}

/** Values of a profile on a fine table, because bone is asked for at every voxel. */
function tableOf(profile: Profile, from: number, to: number): (at: number) => number {
  const step = 0.05;
  const values = new Float64Array(Math.ceil((to - from) / step) + 2).map((_, i) => valueAt(profile, from + i * step));
  return (at) => {
    const place = Math.min(values.length - 2, Math.max(0, (at - from) / step));
    const index = Math.floor(place);
    const a = values[index] as number;
    return a + ((values[index + 1] as number) - a) * (place - index);
  };
}

/** The alveolar process around these teeth. */
export function alveolarBoneOf(shape: BoneShape, teeth: readonly PlacedTooth[]): AlveolarBone {
  const crestTable = tableOf(shape.crest, -26, 26);
  const crest = crestHeight({ ...shape, crest: [[0, 0]] }, teeth);
  const buccal = tableOf(shape.buccal, -12, 32);
  const lingual = tableOf(shape.lingual, -12, 32);
  const plate = tableOf(shape.plateMm, -12, 32);
  const sides = (y: number, z: number): number => Math.max(y - buccal(z), lingual(z) - y);
  return {
    shape,
    bone: (x, y, z) => smoothIntersection(sides(y, z), crestTable(x) + crest(x, y) - z, 1.5),
    gum: (x, y, z) => smoothIntersection(sides(y, z) - 2.4, crestTable(x) + crest(x, y) * 0.8 - 2.5 - z, 3),
    compactMm: (x, _y, z) => {
      const belowCrest = z - crestTable(x);
      return shape.crestLayerMm + (plate(z) - shape.crestLayerMm) * smoothStep(0.4, 4, belowCrest);
    },
  };
}
