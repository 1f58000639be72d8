import { type Profile, tableOf, valueAt } from "../profile.ts";
import { smoothNoise } from "../smooth-noise.ts";
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

/** 0 between the teeth, rising to 1 at the middle of each tooth. */
function fallAtTeeth(teeth: readonly PlacedTooth[]): (x: number) => number {
  const necks = teeth.map((placed) => ({
    x: placed.at.x,
    half: valueAt(placed.tooth.shape.crown.halfMesiodistal, 0) + 0.6,
  }));
  return (x) => {
    let fall = 0;
    for (const neck of necks) {
      const away = (x - neck.x) / neck.half;
      fall = Math.max(fall, 1 - away * away);
    }
    return fall;
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

/** The alveolar process around these teeth. */
export function alveolarBoneOf(shape: BoneShape, teeth: readonly PlacedTooth[]): AlveolarBone {
  const crestTable = tableOf(shape.crest);
  const fallAt = fallAtTeeth(teeth);
  /** z of the crest: lower over the middle of each root on both faces. */
  const crest = (x: number, y: number): number =>
    crestTable(x) +
    1.5 * fallAt(x) * smoothStep(1.5, 5.5, Math.abs(y)) +
    0.02 * y * y +
    0.35 * smoothNoise(x / 1.9, y / 3.2, 0, 71);
  /** z of the gum: a papilla stands between the teeth. */
  const gumTop = (x: number, y: number): number =>
    crestTable(x) - 2.4 + 1.2 * fallAt(x) - 1.6 * (1 - smoothStep(0, 0.45, fallAt(x))) + 0.05 * y * y;
  const buccal = tableOf(shape.buccal);
  const lingual = tableOf(shape.lingual);
  const plate = tableOf(shape.plateMm);
  const sides = (y: number, z: number): number => Math.max(y - buccal(z), lingual(z) - y);
  return {
    shape,
    bone: (x, y, z) => smoothIntersection(sides(y, z), crest(x, y) - z, 1.5),
    gum: (x, y, z) => smoothIntersection(sides(y, z) - 2.4, gumTop(x, y) - z, 2),
    compactMm: (x, _y, z) => {
      const belowCrest = z - crestTable(x);
      return shape.crestLayerMm + (plate(z) - shape.crestLayerMm) * smoothStep(0.4, 4, belowCrest);
    },
  };
}
