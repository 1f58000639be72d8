import type { Inset } from "../jaw-segment.ts";
import { coverage } from "../solid.ts";
import type { JawVoxels } from "./fill-voxels.ts";
import type { Material } from "./material.ts";
import { emptyField, fullVoxel, subgrid, type VoxelField } from "./voxel-field.ts";

/** A field on a part of the jaw's voxels. */
interface Part {
  readonly material: Material | "air";
  readonly field: VoxelField;
  readonly offset: { readonly x: number; readonly y: number; readonly z: number };
}

/** Takes away the part `inside` of what an earlier field holds at a voxel of the jaw. */
function cutAt(part: Part, at: readonly [x: number, y: number, z: number], inside: number): void {
  const { count } = part.field.grid;
  const [x, y, z] = [at[0] - part.offset.x, at[1] - part.offset.y, at[2] - part.offset.z];
  if (x < 0 || y < 0 || z < 0 || x >= count.x || y >= count.y || z >= count.z) return;
  const index = (y * count.z + z) * count.x + x;
  part.field.filled[index] = Math.round((part.field.filled[index] as number) * (1 - inside));
}

/** Fills one inset's own field, and takes its place out of what was there before. */
function setInset(inset: Inset, whole: Part[], earlier: readonly Part[]): Part {
  const base = whole[0]?.field.grid;
  if (base === undefined) throw new Error("no voxels");
  const { grid, offset } = subgrid(base, inset.box);
  const field = emptyField(grid);
  const { from, stepMm, count } = grid;
  let at = 0;
  for (let j = 0; j < count.y; j++)
    for (let k = 0; k < count.z; k++)
      for (let i = 0; i < count.x; i++, at++) {
        const distance = inset.solid(from.x + i * stepMm.x, from.y + j * stepMm.y, from.z + k * stepMm.z);
        const inside = coverage(distance, stepMm.x * 1.1);
        if (inside === 0) continue;
        const place = [i + offset.x, j + offset.y, k + offset.z] as const;
        for (const part of [...whole, ...earlier]) cutAt(part, place, inside);
        field.filled[at] = Math.round(inside * fullVoxel);
      }
  return { material: inset.material, field, offset };
}

/**
 * Cuts insets out of tooth and bone in their order, a later one also out of the earlier ones.
 * Gives the fields of what fills them, by material.
 */
export function setInsets(voxels: JawVoxels, insets: readonly Inset[]): Map<Material, VoxelField[]> {
  const none = { x: 0, y: 0, z: 0 };
  const whole: Part[] = [voxels.soft, voxels.mineral].map((field) => ({ material: "air", field, offset: none }));
  const parts: Part[] = [];
  for (const inset of insets) parts.push(setInset(inset, whole, parts));
  const fields = new Map<Material, VoxelField[]>();
  for (const { material, field } of parts)
    if (material !== "air") fields.set(material, [...(fields.get(material) ?? []), field]);
  return fields;
}
