import { smoothStep } from "../solid.ts";

/** Width of the ligament space, and of the lamina dura that lines the socket. */
export const socket = { ligamentMm: 0.2, laminaMm: 0.26 } as const;

/** The part of a place (0..1) that the ligament fills, at this distance from the root. */
export const ligamentPart = (fromRootMm: number, voxelMm: number): number =>
  Math.min(1, Math.max(0, 0.5 + fromRootMm / voxelMm)) *
  Math.min(1, Math.max(0, 0.5 - (fromRootMm - socket.ligamentMm) / voxelMm));

/** The part of a place (0..1) that the lamina dura fills, at this distance from the root: sharp inside, fading outwards. */
export const laminaPart = (fromRootMm: number): number =>
  smoothStep(socket.ligamentMm - 0.05, socket.ligamentMm + 0.05, fromRootMm) *
  (1 - smoothStep(socket.ligamentMm + socket.laminaMm * 0.6, socket.ligamentMm + socket.laminaMm * 1.4, fromRootMm));
