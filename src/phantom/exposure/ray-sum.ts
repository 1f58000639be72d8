import type { Projection } from "./projection.ts";
import { fullVoxel, type VoxelField } from "./voxel-field.ts";

/** The rays of one row of the film, as lines over y: x = x0 + dx*y, z = z0 + dz*y, and the length of ray per mm of y. */
export interface RowOfRays {
  readonly x0: Float64Array;
  readonly dx: Float64Array;
  readonly z0: Float64Array;
  readonly dz: Float64Array;
  readonly perY: Float64Array;
}

/** The rays from the source to each pixel of a row. Takes geometries whose rays run mainly along y (angles under 80 degrees). */
export function raysOfRow(projection: Projection, row: number): RowOfRays {
  const { columns } = projection.geometry;
  const column = (): Float64Array => new Float64Array(columns);
  const rays = { x0: column(), dx: column(), z0: column(), dz: column(), perY: column() };
  const { source } = projection;
  const first = projection.onDetector(0, row);
  const second = projection.onDetector(1, row);
  for (let c = 0; c < columns; c++) {
    const dy = first.y + (second.y - first.y) * c - source.y;
    const dx = (first.x + (second.x - first.x) * c - source.x) / dy;
    const dz = (first.z + (second.z - first.z) * c - source.z) / dy;
    rays.dx[c] = dx;
    rays.dz[c] = dz;
    rays.x0[c] = source.x - dx * source.y;
    rays.z0[c] = source.z - dz * source.y;
    rays.perY[c] = Math.sqrt(1 + dx * dx + dz * dz);
  }
  return rays;
}

/** The columns whose rays can meet the field: a cheap test at both ends of the field's y. */
function columnsThatMeet(field: VoxelField, rays: RowOfRays): readonly [number, number] {
  const { from, stepMm, count } = field.grid;
  const yEnds = [from.y, from.y + (count.y - 1) * stepMm.y];
  const meets = (c: number): boolean => {
    const xs = yEnds.map((y) => (rays.x0[c] ?? 0) + (rays.dx[c] ?? 0) * y);
    const zs = yEnds.map((y) => (rays.z0[c] ?? 0) + (rays.dz[c] ?? 0) * y);
    const clear = (ends: number[], low: number, high: number): boolean =>
      Math.max(...ends) < low || Math.min(...ends) > high;
    return (
      !clear(xs, from.x - stepMm.x, from.x + count.x * stepMm.x) &&
      !clear(zs, from.z - stepMm.z, from.z + count.z * stepMm.z)
    );
  };
  let start = 0;
  let end = rays.x0.length;
  while (start < end && !meets(start)) start++;
  while (end > start && !meets(end - 1)) end--;
  return [start, end];
}

/**
 * Adds the length in mm of the field's material on each ray of a row.
 * Each slice of y is met once by a ray and read between its four neighbours there.
 * @source P. M. Joseph, An improved algorithm for reprojecting rays through pixel images, IEEE Transactions on Medical Imaging
 * 1982;1:192-196 (memory)
 */
export function addRaySums(field: VoxelField, rays: RowOfRays, into: Float32Array): void {
  const { from, stepMm, count } = field.grid;
  const { filled } = field;
  const [start, end] = columnsThatMeet(field, rays);
  const nx = count.x;
  const sums = new Float64Array(end);
  for (let j = 0; j < count.y; j++) {
    const y = from.y + j * stepMm.y;
    const slice = j * nx * count.z;
    for (let c = start; c < end; c++) {
      const gx = ((rays.x0[c] as number) + (rays.dx[c] as number) * y - from.x) / stepMm.x;
      const gz = ((rays.z0[c] as number) + (rays.dz[c] as number) * y - from.z) / stepMm.z;
      const ix = Math.floor(gx);
      const iz = Math.floor(gz);
      if (ix < 0 || iz < 0 || ix >= nx - 1 || iz >= count.z - 1) continue;
      const tx = gx - ix;
      const tz = gz - iz;
      const at = slice + iz * nx + ix;
      const upper = (filled[at] as number) * (1 - tx) + (filled[at + 1] as number) * tx;
      const lower = (filled[at + nx] as number) * (1 - tx) + (filled[at + nx + 1] as number) * tx;
      sums[c] = (sums[c] as number) + upper * (1 - tz) + lower * tz;
    }
  }
  for (let c = start; c < end; c++)
    into[c] = (into[c] as number) + ((sums[c] as number) / fullVoxel) * stepMm.y * (rays.perY[c] as number);
}
