import type { Canal } from "../anatomy/canal.ts";
import { placeAt } from "../course.ts";
import type { Ball } from "../exposure/ball-chain.ts";
import type { Material } from "../exposure/material.ts";
import type { Strand } from "../jaw-segment.ts";

/** A straight post from above the orifice down into a canal. */
export function postIn(
  canal: Canal,
  size: { readonly diameterMm: number; readonly aboveMm: number; readonly depthMm: number },
  material: Material,
): Strand {
  const orifice = placeAt(canal.course, 0);
  const end = placeAt(canal.course, size.depthMm);
  const length = size.aboveMm + size.depthMm;
  const steps = Math.ceil(length / 0.04);
  const balls = Array.from({ length: steps + 1 }, (_, i): Ball => {
    const t = (i / steps) * (1 + size.aboveMm / size.depthMm) - size.aboveMm / size.depthMm;
    const r = size.diameterMm / 2;
    const middle = {
      x: orifice.x + (end.x - orifice.x) * t,
      y: orifice.y + (end.y - orifice.y) * t,
      z: orifice.z + (end.z - orifice.z) * t,
    };
    return { middle, rx: r, ry: r, rz: r };
  });
  return { chain: { balls }, material, replaces: "soft" };
}
