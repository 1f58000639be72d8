import { type Solid, smoothUnion } from "../solid.ts";
import type { ToothBox } from "../tooth-point.ts";
import { type Canal, type CanalShape, canalIn, canalSolid } from "./canal.ts";
import { type Crown, type CrownShape, crownOf } from "./crown.ts";
import { type ChamberShape, pulpChamberOf } from "./pulp-chamber.ts";
import { type Root, type RootShape, rootOf } from "./root.ts";

/** What a tooth is made from, in its own axes. */
export interface ToothShape {
  /** "incisor", "canine", "premolar" or "molar", with its arch. */
  readonly kind: string;
  readonly crown: CrownShape;
  readonly roots: readonly RootShape[];
  readonly canals: readonly CanalShape[];
  readonly chamber: ChamberShape;
  /** Fillet between roots and trunk. */
  readonly filletMm: number;
}

/** A tooth as solids, with the courses of its canals. */
export interface Tooth {
  readonly shape: ToothShape;
  readonly crown: Crown;
  readonly roots: readonly Root[];
  readonly canals: readonly Canal[];
  /** The chamber, with canals so wide that they go on from it. */
  readonly chamber: Solid;
  /** Distance to the outer surface, enamel and roots together. */
  readonly outside: Solid;
  /** Distance to the dentine's surface: under the enamel in the crown, the root's surface below. */
  readonly dentine: Solid;
  /** A box that holds the tooth with 2 mm around it. */
  readonly box: ToothBox;
}

/** A tooth of a shape. */
export function toothOf(shape: ToothShape): Tooth {
  const crown = crownOf(shape.crown);
  const roots = shape.roots.map(rootOf);
  const trunkZ = shape.crown.trunkEndZ + 2.5;
  const withRoots = (trunk: Solid): Solid => {
    return (x, y, z) => {
      let distance = z < trunkZ ? trunk(x, y, z) : 9;
      if (z > -1.5) for (const root of roots) distance = smoothUnion(distance, root.distance(x, y, z), shape.filletMm);
      return distance;
    };
  };
  const canals = shape.canals.flatMap((canal) =>
    roots.filter((root) => root.shape.name === canal.root).map((root) => canalIn(root, canal)),
  );
  return {
    shape,
    crown,
    roots,
    canals,
    chamber: pulpSpace(shape, canals),
    outside: withRoots(crown.outside),
    dentine: withRoots(crown.dentine),
    box: boxOf(shape, roots),
  };
}

function pulpSpace(shape: ToothShape, canals: readonly Canal[]): Solid {
  const chamber = pulpChamberOf(shape.chamber, shape.crown.cusps);
  const wide = canals.filter((canal) => canal.shape.wide).map(canalSolid);
  return wide.reduce((space, canal) => (x, y, z) => smoothUnion(space(x, y, z), canal(x, y, z), 0.5), chamber);
}

function boxOf(shape: ToothShape, roots: readonly Root[]): ToothBox {
  const reachX = shape.crown.halfMesiodistal.map(([, half]) => half);
  const axes = roots.flatMap((root) => root.axis.points);
  const widest = Math.max(...shape.roots.flatMap((root) => root.halfBuccolingual.map(([, half]) => half))) + 2;
  return {
    from: {
      x: Math.min(-Math.max(...reachX), ...axes.map((p) => p.x - 2.5)) - 2,
      y: Math.min(...shape.crown.lingual.map(([, y]) => y - 2), ...axes.map((p) => p.y - widest)),
      z: -Math.max(...shape.crown.cusps.map((cusp) => cusp.heightMm)) - 1,
    },
    to: {
      x: Math.max(Math.max(...reachX), ...axes.map((p) => p.x + 2.5)) + 2,
      y: Math.max(...shape.crown.buccal.map(([, y]) => y + 2), ...axes.map((p) => p.y + widest)),
      z: Math.max(...axes.map((p) => p.z)) + 2,
    },
  };
}
