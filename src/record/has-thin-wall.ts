import type { BodyOf } from "./parts.ts";

type Body = BodyOf<"removal">;
type Walls = { readonly [Field in "canalDiameterMm" | "walls" | "thinnestAlong"]?: Body[Field] | undefined };

/**
 * Whether a wall is written that is thinner than its canal: rare enough to be a slip, so that a person is asked to stand by it.
 * Takes the canal's diameter at the head and the walls there and along the way, each absent until it is measured.
 * Gives false where either side of the comparison is missing; a wall just as thick as the canal is not thinner.
 */
export function hasThinWall({ canalDiameterMm: canal, walls = [], thinnestAlong = [] }: Walls): boolean {
  if (canal === undefined) return false;
  return [...walls, ...thinnestAlong].some(({ mm }) => mm !== undefined && mm < canal);
}
