import { Refusal } from "../refusal.ts";
import { BucketQueue } from "./bucket-queue.ts";

/** What it costs to be on each pixel of an image: row by row, every cost finite and above 0. */
export interface CostField {
  readonly cost: Float32Array | Float64Array;
  readonly columns: number;
  readonly rows: number;
}

/** The part of a field that paths may use: first column and row, and how many of each. */
export interface FieldBounds {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** The cheapest ways from one pixel to every other within the bounds. */
export interface LeastCostTree {
  readonly columns: number;
  readonly rows: number;
  /** Index (row * columns + column) of the pixel where all ways begin. */
  readonly start: number;
  /** Cost of the way to each pixel; Infinity outside the bounds. */
  readonly costTo: Float64Array;
  /** Index of the pixel before each on its way; a pixel without a way, and the start, name themselves. */
  readonly before: Int32Array;
}

/**
 * The cheapest ways over an image from one pixel to every other, by Dijkstra's method over eight neighbours.
 * A step costs the mean of the costs of its two pixels times its length, 1 or the square root of 2.
 * Takes the field, the index of the start, the part of the field to keep to (the whole unless given), and a pixel to stop
 * at (none unless given).
 * Gives the tree; of ways that cost the same, one. Stopped at a pixel it holds the cheapest way to that one and to all that
 * cost less; other ways may still be dear or missing.
 * @throws Refusal `input.impossible` for sizes that disagree, a cost that is not finite and above 0, bounds outside the
 * field, or a start outside the bounds.
 * @source E. W. Dijkstra, A note on two problems in connexion with graphs, Numerische Mathematik 1959;1:269-271 (memory)
 * @source E. V. Denardo, B. L. Fox, Shortest-route methods 1, Operations Research 1979;27:161-186: buckets (memory)
 */
export function leastCostTree(
  field: CostField,
  start: number,
  bounds: FieldBounds = whole(field),
  until?: number,
): LeastCostTree {
  checkField(field, bounds);
  checkStart(field, start, bounds);
  const { columns, rows, cost } = field;
  const costTo = new Float64Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(columns * rows);
  for (let index = 0; index < before.length; index++) before[index] = index;
  const tree = { columns, rows, start, costTo, before };
  const { smallest, largest } = rangeOf(field, bounds);
  const queue = new BucketQueue(cost.length, { shortest: smallest, longest: largest * Math.SQRT2 });
  costTo[start] = 0;
  queue.put(start, 0);
  // Whatever is taken costs less than one bucket more than all that wait: beyond that nothing improves the way to `until`.
  const isEnough = (index: number): boolean =>
    until !== undefined && (costTo[index] ?? 0) >= (costTo[until] ?? Number.POSITIVE_INFINITY) + queue.width;
  for (let index = queue.take(); index !== undefined && !isEnough(index); index = queue.take())
    improveNeighbours({ field, tree, queue, bounds }, index);
  return tree;
}

interface Walk {
  readonly field: CostField;
  readonly tree: LeastCostTree;
  readonly queue: BucketQueue;
  readonly bounds: FieldBounds;
}

/** Offers every neighbour of a pixel the way through it. */
function improveNeighbours({ field, tree, queue, bounds }: Walk, index: number): void {
  const { columns, cost } = field;
  const { costTo, before } = tree;
  const row = (index / columns) | 0;
  const column = index - row * columns;
  const firstRow = row > bounds.row ? -1 : 0;
  const lastRow = row < bounds.row + bounds.rows - 1 ? 1 : 0;
  const firstColumn = column > bounds.column ? -1 : 0;
  const lastColumn = column < bounds.column + bounds.columns - 1 ? 1 : 0;
  const here = costTo[index] ?? 0;
  const half = (cost[index] ?? 0) / 2;
  for (let down = firstRow; down <= lastRow; down++)
    for (let right = firstColumn; right <= lastColumn; right++) {
      const next = index + down * columns + right;
      const length = down !== 0 && right !== 0 ? Math.SQRT2 : 1;
      const offered = here + (half + (cost[next] ?? 0) / 2) * length;
      if (offered >= (costTo[next] ?? 0)) continue;
      costTo[next] = offered;
      before[next] = index;
      queue.put(next, offered);
    }
}

/**
 * The way from the start of a tree to one pixel.
 * Takes the tree and the pixel's index. Gives the indices from the start to the pixel, both included.
 * @throws Refusal `input.impossible` for a pixel that the tree does not reach.
 */
export function pathTo(tree: LeastCostTree, index: number): number[] {
  if (!Number.isFinite(tree.costTo[index] ?? Number.POSITIVE_INFINITY))
    throw new Refusal("input.impossible", `Cannot give a path: pixel ${index} is not within the tree's bounds`);
  const path = [index];
  for (let at = index; at !== tree.start; ) {
    at = tree.before[at] ?? tree.start;
    path.push(at);
  }
  return path.reverse();
}

const whole = ({ columns, rows }: CostField): FieldBounds => ({ column: 0, row: 0, columns, rows });

function checkField({ cost, columns, rows }: CostField, bounds: FieldBounds): void {
  const isWhole = [columns, rows, ...Object.values(bounds)].every(Number.isInteger);
  if (!isWhole || columns < 1 || rows < 1 || cost.length !== columns * rows)
    throw impossible(`${columns} columns and ${rows} rows do not make ${cost.length} costs`);
  const { column, row } = bounds;
  const isInside = column >= 0 && row >= 0 && column + bounds.columns <= columns && row + bounds.rows <= rows;
  if (!isInside || bounds.columns < 1 || bounds.rows < 1)
    throw impossible(`the bounds are not a part of the ${columns} x ${rows} field`);
}

function checkStart({ columns, cost }: CostField, start: number, bounds: FieldBounds): void {
  if (!Number.isInteger(start) || start < 0 || start >= cost.length) throw impossible(`there is no pixel ${start}`);
  const [column, row] = [(start % columns) - bounds.column, Math.floor(start / columns) - bounds.row];
  if (column < 0 || row < 0 || column >= bounds.columns || row >= bounds.rows)
    throw impossible("the start is outside the bounds");
}

/** The smallest and largest cost within the bounds. */
function rangeOf({ cost, columns }: CostField, bounds: FieldBounds): { smallest: number; largest: number } {
  let smallest = Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let row = bounds.row; row < bounds.row + bounds.rows; row++)
    for (let index = row * columns + bounds.column; index < row * columns + bounds.column + bounds.columns; index++) {
      const value = cost[index] ?? 0;
      if (!(value > 0 && value < Number.POSITIVE_INFINITY))
        throw impossible(`the cost of pixel ${index} is ${value}, and costs are finite and above 0`);
      if (value < smallest) smallest = value;
      if (value > largest) largest = value;
    }
  return { smallest, largest };
}

const impossible = (state: string): Refusal => new Refusal("input.impossible", `Cannot find paths: ${state}`);
