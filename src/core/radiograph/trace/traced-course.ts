import { courseOfPath } from "../../geometry/course-of-path.ts";
import { type CostField, leastCostTree, pathTo } from "../../geometry/least-cost-tree.ts";
import { type ImagePoint, px } from "../../units.ts";

/** A course between places and the path under it. */
export interface TracedCourse {
  readonly points: readonly ImagePoint[];
  /** Neighbouring pixels; none twice in a row. */
  readonly path: readonly ImagePoint[];
  readonly cost: number;
}

/**
 * The cheapest course over a picture of costs through places in order.
 * Takes the picture and at least two places within it. Gives the smoothed course, the path and what the path costs.
 * @source docs/methods/trace C2 to C4
 */
export function tracedCourse(field: CostField, places: readonly ImagePoint[]): TracedCourse {
  const legs = places.slice(1).map((to, index) => legBetween(field, places[index] ?? to, to));
  const joined = (pieces: readonly (readonly ImagePoint[])[]): ImagePoint[] =>
    pieces.flatMap((piece, index) => (index === 0 ? piece : piece.slice(1)));
  return {
    points: joined(legs.map(({ points }) => points)),
    path: joined(legs.map(({ path }) => path)),
    cost: legs.reduce((sum, { cost }) => sum + cost, 0),
  };
}

function legBetween(field: CostField, from: ImagePoint, to: ImagePoint): TracedCourse {
  const pixelOf = ({ column, row }: ImagePoint): number => Math.round(row) * field.columns + Math.round(column);
  const [start, end] = [pixelOf(from), pixelOf(to)];
  const tree = leastCostTree(field, start, undefined, end);
  const path = pathTo(tree, end).map(
    (index): ImagePoint => ({ column: px(index % field.columns), row: px(Math.floor(index / field.columns)) }),
  );
  return { points: courseOfPath(path, from, to), path, cost: tree.costTo[end] ?? 0 };
}
