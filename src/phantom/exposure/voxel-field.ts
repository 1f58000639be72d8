import type { ToothBox } from "../tooth-point.ts";

/** A box of voxels in the tooth's axes; voxel (0,0,0) has its middle at `from`. Stored slice by slice along y, then rows of x by z. */
export interface VoxelGrid {
  readonly from: { readonly x: number; readonly y: number; readonly z: number };
  readonly stepMm: { readonly x: number; readonly y: number; readonly z: number };
  readonly count: { readonly x: number; readonly y: number; readonly z: number };
}

/** How much of a material each voxel holds: 0 none, {@link fullVoxel} all. */
export interface VoxelField {
  readonly grid: VoxelGrid;
  readonly filled: Uint16Array;
}

/** The stored value of a voxel that is full. */
export const fullVoxel = 65535;

/** The grid that fills a box with voxels of this size. */
export function gridOver(box: ToothBox, stepMm: { x: number; y: number; z: number }): VoxelGrid {
  const count = (axis: "x" | "y" | "z"): number => Math.ceil((box.to[axis] - box.from[axis]) / stepMm[axis]) + 1;
  return { from: { ...box.from }, stepMm: { ...stepMm }, count: { x: count("x"), y: count("y"), z: count("z") } };
}

/** The part of a grid that covers a box, on the same voxels. */
export function subgrid(
  grid: VoxelGrid,
  box: ToothBox,
): { grid: VoxelGrid; offset: { x: number; y: number; z: number } } {
  const low = (axis: "x" | "y" | "z"): number =>
    Math.min(grid.count[axis] - 1, Math.max(0, Math.floor((box.from[axis] - grid.from[axis]) / grid.stepMm[axis])));
  const high = (axis: "x" | "y" | "z"): number =>
    Math.min(grid.count[axis] - 1, Math.max(0, Math.ceil((box.to[axis] - grid.from[axis]) / grid.stepMm[axis])));
  const offset = { x: low("x"), y: low("y"), z: low("z") };
  return {
    offset,
    grid: {
      stepMm: grid.stepMm,
      from: {
        x: grid.from.x + offset.x * grid.stepMm.x,
        y: grid.from.y + offset.y * grid.stepMm.y,
        z: grid.from.z + offset.z * grid.stepMm.z,
      },
      count: { x: high("x") - offset.x + 1, y: high("y") - offset.y + 1, z: high("z") - offset.z + 1 },
    },
  };
}

/** An empty field on a grid. */
export const emptyField = (grid: VoxelGrid): VoxelField => ({
  grid,
  filled: new Uint16Array(grid.count.x * grid.count.y * grid.count.z),
});
