import { frameAlong } from "../../geometry/frame.ts";
import { distance, minus, mix, plus, type Vector } from "../../geometry/vector.ts";
import type { Anchor } from "./shape-of.ts";

/** A traced course made ready to be fitted: its points in order, the length of the line through them, and the anchor. */
export interface Trace {
  readonly points: readonly Vector[];
  /** Distance of each point from the first along the line through the points; it grows with noise. */
  readonly along: readonly number[];
  readonly lengthMm: number;
  readonly anchor: Anchor;
}

/**
 * A trace of points in order from orifice to foramen.
 * Takes at least two different points; `across` is 1 for points of a plane and 2 for points of space.
 */
export function traceOf(points: readonly Vector[], across: 1 | 2): Trace {
  let reached = 0;
  const along = points.map((point, index) => {
    const before = points[index - 1];
    if (before !== undefined) reached += distance(before, point);
    return reached;
  });
  const first = points[0];
  if (first === undefined) throw new RangeError("a trace has points");
  const open: Trace = {
    points,
    along,
    lengthMm: reached,
    anchor: { place: first, across, frame: frameAlong({ x: 0, y: 1, z: 0 }) },
  };
  const start = minus(onLine(open, 0.25 * reached), first);
  return { ...open, anchor: { place: first, across, frame: frameAlong(start) } };
}

/** The place on the line through the points, at a distance from the first. */
export function onLine(trace: Trace, s: number): Vector {
  const { points, along } = trace;
  const index = Math.max(
    1,
    along.findIndex((reached) => reached >= s),
  );
  const before = points[index - 1];
  const after = points[index];
  if (before === undefined || after === undefined) throw new RangeError("a trace has two points");
  const step = (along[index] ?? 0) - (along[index - 1] ?? 0);
  const share = step === 0 ? 0 : (s - (along[index - 1] ?? 0)) / step;
  return plus(before, minus(after, before), Math.min(1, Math.max(0, share)));
}

/**
 * The same trace with at most `most` points, each the mean of neighbours that follow on each other; the two end points
 * stay. Gives how many points one mean holds too, because a mean is less noisy than a point.
 */
export function thinned(trace: Trace, most: number): { trace: Trace; size: number } {
  const size = Math.ceil(trace.points.length / most);
  if (size === 1) return { trace, size };
  const means: Vector[] = [];
  for (let from = 0; from < trace.points.length; from += size) {
    const group = trace.points.slice(from, from + size);
    const sum = group.reduce((total, point) => plus(total, point), { x: 0, y: 0, z: 0 });
    means.push(mix(1 / group.length, sum, 0, sum));
  }
  const fine = traceOf(means, trace.anchor.across);
  return { trace: { ...fine, anchor: trace.anchor }, size };
}

/** The same trace with the distance of each point counted along a course instead of along the line through the points. */
export function retraced(trace: Trace, places: ArrayLike<number>): Trace {
  const first = places[0] ?? 0;
  const along = Array.from(places, (place) => Math.max(0, place - first));
  return { ...trace, along, lengthMm: Math.max(...along) };
}
