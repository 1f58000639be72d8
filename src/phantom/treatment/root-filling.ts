import type { Canal } from "../anatomy/canal.ts";
import type { Material } from "../exposure/material.ts";
import type { Strand } from "../jaw-segment.ts";
import { smoothNoise } from "../smooth-noise.ts";
import { ballsAlong } from "./canal-strand.ts";
import { type Shaping, shapedRadiusMm } from "./shaping.ts";

/** A root filling, counted in mm from the orifice. */
export interface RootFilling {
  readonly fromMm: number;
  readonly toMm: number;
  /** Places where the filling is missing on part of the canal's width. */
  readonly voids?: readonly { readonly atMm: number; readonly lengthMm: number }[];
  /** How much of the canal's width it fills; old fillings often 0.75. */
  readonly fit?: number;
  readonly material?: Material;
  /** A stretch where it passes beside a fragment: half as wide, and off the middle. */
  readonly beside?: { readonly fromMm: number; readonly toMm: number };
  readonly seed: number;
}

/** Whether a length lies in one of the voids. */
const inVoid = (filling: RootFilling, alongMm: number): boolean =>
  (filling.voids ?? []).some((gap) => Math.abs(alongMm - gap.atMm) < gap.lengthMm / 2);

/** The strand of a root filling: uneven walls, thin at voids, rounded at both ends. */
export function rootFillingStrand(canal: Canal, shaping: Shaping | undefined, filling: RootFilling): Strand {
  const fit = filling.fit ?? 0.97;
  const past = filling.beside;
  const isBeside = (along: number): boolean => past !== undefined && along > past.fromMm && along < past.toMm;
  const balls = ballsAlong(canal, filling, (along) => {
    const room = shapedRadiusMm(canal, shaping, along);
    const uneven = 1 + (1 - fit) * 0.8 * smoothNoise(along / 0.8, 0, 0, filling.seed);
    const part = fit * uneven * (inVoid(filling, along) ? 0.3 : isBeside(along) ? 0.45 : 1);
    return {
      mesiodistal: Math.max(0.04, room.mesiodistal * part),
      buccolingual: Math.max(0.04, room.buccolingual * part),
    };
  });
  const shifted = balls.map((ball, i) => {
    const along = filling.fromMm + i * 0.04;
    const shift = isBeside(along) ? -0.2 : 0;
    return { ...ball, middle: { ...ball.middle, x: ball.middle.x + shift, y: ball.middle.y + shift } };
  });
  return { chain: { balls: shifted }, material: filling.material ?? "guttaPercha", replaces: "soft" };
}
