import { mix, plus, type Vector, vector } from "../../geometry/vector.ts";
import { type Trace, traceOf } from "../curvature/trace.ts";

/**
 * The trace from which fits start: places in space that were found one by one, made smooth, because noise across the
 * films' plane would make the line through them far too long.
 * Takes places from orifice to foramen, at least 4.
 */
export function startTrace(places: readonly Vector[]): Trace {
  const smooth = places.map((place, index) => {
    const reach = Math.min(3, index, places.length - 1 - index);
    if (reach === 0) return endOf(places, index);
    let sum = vector(0, 0);
    let weights = 0;
    for (let step = -reach; step <= reach; step++) {
      const weight = reach + 1 - Math.abs(step);
      sum = plus(sum, places[index + step] ?? place, weight);
      weights += weight;
    }
    return mix(1 / weights, sum, 0, sum);
  });
  return traceOf(smooth, 2);
}

/** The end of the line through the last four places (or the first four): less noisy than the place itself. */
function endOf(places: readonly Vector[], index: number): Vector {
  const near = index === 0 ? places.slice(0, 4) : places.slice(-4).reverse();
  const weights = [0.7, 0.4, 0.1, -0.2];
  return near.reduce((sum, place, at) => plus(sum, place, weights[at] ?? 0), vector(0, 0));
}
