import type { BoneShape } from "./anatomy/alveolar-bone.ts";
import type { Hollow } from "./anatomy/hollow.ts";
import type { Lesion } from "./anatomy/lesion.ts";
import type { PlacedTooth } from "./anatomy/placed-tooth.ts";
import type { TrabecularNet } from "./anatomy/trabeculae.ts";
import type { BallChain } from "./exposure/ball-chain.ts";
import type { Material } from "./exposure/material.ts";
import type { Solid } from "./solid.ts";
import type { ToothBox } from "./tooth-point.ts";
import type { Shaping } from "./treatment/shaping.ts";

/** Something put into the treated tooth, or cut out of it, that is wide enough for voxels. */
export interface Inset {
  readonly solid: Solid;
  readonly box: ToothBox;
  /** What fills it; "air" cuts only. */
  readonly material: Material | "air";
}

/** Something thin in a canal, exact to the ray. */
export interface Strand {
  readonly chain: BallChain;
  readonly material: Material;
  /** What it takes the place of: the canal's content inside the tooth, or nothing in the open. */
  readonly replaces: "soft" | "mineral" | "nothing";
}

/** A piece of jaw: everything that stands between tube and receptor. */
export interface JawSegment {
  /** The first tooth is the treated one. */
  readonly teeth: readonly PlacedTooth[];
  readonly bone: BoneShape;
  readonly nets: readonly TrabecularNet[];
  readonly hollows: readonly Hollow[];
  readonly lesions: readonly Lesion[];
  /** Canals of the treated tooth that were shaped, by name. */
  readonly shaped: Readonly<Record<string, Shaping>>;
  readonly insets: readonly Inset[];
  readonly strands: readonly Strand[];
  /** Cheek, lips and tongue in the beam. */
  readonly veilMm: number;
  readonly box: ToothBox;
  readonly seed: number;
}
