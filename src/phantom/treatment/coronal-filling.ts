import type { Tooth } from "../anatomy/tooth.ts";
import type { Material } from "../exposure/material.ts";
import type { Inset } from "../jaw-segment.ts";
import { smoothNoise } from "../smooth-noise.ts";
import { roundedBox, type Solid, smoothIntersection, smoothUnion } from "../solid.ts";
import { boxAround, type ToothBox, type ToothPoint } from "../tooth-point.ts";

type Corner = readonly [x: number, y: number, z: number];

const boxOf = (from: Corner, to: Corner): ToothBox => ({
  from: { x: from[0] - 0.5, y: from[1] - 0.5, z: from[2] - 0.5 },
  to: { x: to[0] + 0.5, y: to[1] + 0.5, z: to[2] + 0.5 },
});

/** A cut through the crown; where it reaches the chamber it takes all of it in. What fills it is the caller's. */
export function accessCavity(
  tooth: Tooth,
  opening: { readonly from: Corner; readonly to: Corner },
  material: Material | "air",
): Inset {
  const cut = roundedBox(opening.from, opening.to, 0.9);
  const middleX = (opening.from[0] + opening.to[0]) / 2;
  const outside = material === "air" ? () => -9 : tooth.outside;
  const solid: Solid = (x, y, z) => {
    const flare = 1 + 0.045 * Math.max(0, 0.5 - z);
    const uneven = 0.12 * smoothNoise(x / 1.3, y / 1.3, z / 1.3, 78);
    const widened = smoothUnion(
      cut(middleX + (x - middleX) / flare, y / flare, z) + uneven,
      opening.to[2] > -1 ? tooth.chamber(x, y, z) : 9,
      0.3,
    );
    return smoothIntersection(widened, outside(x, y, z) + 0.15, 0.2);
  };
  return {
    solid,
    box: boxOf(
      [opening.from[0] - 2, opening.from[1] - 2, opening.from[2]],
      [opening.to[0] + 2, opening.to[1] + 2, opening.to[2] + 2],
    ),
    material,
  };
}

/** A filling in the crown: rounded boxes within the crown's outline, `proudMm` over it. */
export function crownFilling(
  tooth: Tooth,
  boxes: readonly { readonly from: Corner; readonly to: Corner }[],
  material: Material,
): Inset {
  const parts = boxes.map(({ from, to }) => roundedBox(from, to, 0.55));
  const solid: Solid = (x, y, z) => {
    const cavity = parts.reduce((distance, part) => smoothUnion(distance, part(x, y, z), 0.4), 9);
    return smoothIntersection(
      cavity + 0.22 * smoothNoise(x / 1.2, y / 1.2, z / 1.2, 77),
      tooth.outside(x, y, z) - 0.05,
      0.2,
    );
  };
  const low = (axis: 0 | 1 | 2): number => Math.min(...boxes.map((box) => box.from[axis]));
  const high = (axis: 0 | 1 | 2): number => Math.max(...boxes.map((box) => box.to[axis]));
  return { solid, box: boxOf([low(0), low(1), low(2)], [high(0), high(1), high(2)]), material };
}

/** Decay: an uneven hollow in the hard tissue that has become soft. */
export function decayAt(middle: ToothPoint, radiusMm: number, seed: number): Inset {
  return {
    solid: (x, y, z) =>
      Math.hypot(x - middle.x, (y - middle.y) * 0.8, (z - middle.z) * 0.85) -
      radiusMm +
      0.45 * radiusMm * smoothNoise(x / 1.1, y / 1.4, z / 1.1, seed) +
      0.2 * radiusMm * smoothNoise(x / 0.45, y / 0.6, z / 0.45, seed + 1),
    box: boxAround(middle, { x: radiusMm * 1.5, y: radiusMm * 1.5, z: radiusMm * 1.5 }),
    material: "soft",
  };
}
