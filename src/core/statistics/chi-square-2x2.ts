import { chiSquareTail } from "../radiograph/chi-square-tail.ts";

/** How many had something, and of how many. */
interface Count {
  readonly events: number;
  readonly n: number;
}

/**
 * Whether two shares differ: Pearson's chi-square of a table of two by two, without correction, and its P.
 * Takes two counts; neither all nor none of both together may have it.
 * @source Pearson K, Philos Mag 1900;50:157-175 (memory)
 */
export function chiSquare2x2(one: Count, other: Count): { chiSquare: number; p: number } {
  const n = one.n + other.n;
  const events = one.events + other.events;
  const across = one.events * (other.n - other.events) - other.events * (one.n - one.events);
  const chiSquare = (n * across ** 2) / (one.n * other.n * events * (n - events));
  return { chiSquare, p: chiSquareTail(chiSquare, 1) };
}
