import { cross, dot, minus, norm, plus, type Vector, vector } from "../../geometry/vector.ts";
import { smoothingSpline } from "../../statistics/smoothing-spline.ts";
import { retraced, type Trace, traceOf } from "./trace.ts";

/** The course that a smoothing spline draws through the points, sampled from orifice to foramen. */
export interface Profile {
  /** Distance from the orifice (mm), curvature there (1/mm; in a plane positive to the right), and the place. */
  readonly samples: readonly { sMm: number; curvaturePerMm: number; place: Vector }[];
  readonly lengthMm: number;
  /** All turning added up, in radians, whatever its side. */
  readonly totalTurn: number;
  readonly maxCurvaturePerMm: number;
  /** Where the largest curvature is, from the orifice. */
  readonly atMm: number;
  readonly penalty: number;
}

/**
 * The profile of curvature along a trace: a penalised spline of each coordinate over the distance along the canal.
 * Takes a trace whose distances are those along a fitted course, and the penalty or the standard deviation of a point.
 * @source docs/methods/curvature.md C13
 */
export function profileOf(trace: Trace, by: { penalty: number } | { sigmaMm: number }): Profile {
  const { points, along, anchor } = trace;
  const values = [points.map((p) => p.x), points.map((p) => p.y), points.map((p) => p.z)].slice(0, anchor.across + 1);
  const noise = "penalty" in by ? by : { variance: by.sigmaMm ** 2, noisyValues: anchor.across };
  const spline = smoothingSpline({ places: along, values, by: noise });
  const steps = Math.min(240, Math.max(40, Math.round(trace.lengthMm / 0.1)));
  const states = Array.from({ length: steps + 1 }, (_, index) =>
    stateOf(spline.at((index / steps) * trace.lengthMm), anchor.across),
  );
  const pace = trace.lengthMm / steps;
  let sMm = 0;
  let totalTurn = 0;
  const samples = states.map(({ place, speed, curvature }, index) => {
    const before = states[index - 1];
    if (before !== undefined) {
      sMm += (pace * (speed + before.speed)) / 2;
      totalTurn += (pace * (Math.abs(curvature) * speed + Math.abs(before.curvature) * before.speed)) / 2;
    }
    return { sMm, curvaturePerMm: curvature, place };
  });
  const tightest = samples.reduce((best, one) =>
    Math.abs(one.curvaturePerMm) > Math.abs(best.curvaturePerMm) ? one : best,
  );
  return {
    samples,
    lengthMm: sMm,
    totalTurn,
    maxCurvaturePerMm: Math.abs(tightest.curvaturePerMm),
    atMm: tightest.sMm,
    penalty: spline.penalty,
  };
}

/**
 * The profile over distances along the spline itself: each point is moved to its nearest place on the spline and the
 * spline drawn anew, a few times. For a trace whose fitted course is not its shape.
 */
export function profileAlongItself(trace: Trace, by: { penalty: number } | { sigmaMm: number }): Profile {
  const polyline = traceOf(trace.points, trace.anchor.across);
  const start = polyline.lengthMm < 1.02 * trace.lengthMm ? polyline : trace;
  let profile = profileOf(start, by);
  for (let round = 0; round < 4; round++) {
    const line = traceOf(
      profile.samples.map(({ place }) => place),
      trace.anchor.across,
    );
    profile = profileOf(
      retraced(
        trace,
        trace.points.map((point) => distanceAlong(line, point)),
      ),
      by,
    );
  }
  return profile;
}

/** How far along a fine line its nearest place to a point is. */
function distanceAlong(line: Trace, point: Vector): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index + 1 < line.points.length; index++) {
    const from = line.points[index] ?? point;
    const step = minus(line.points[index + 1] ?? from, from);
    const share = dot(minus(point, from), step) / dot(step, step);
    const inside = Math.min(index + 2 === line.points.length ? 2 : 1, Math.max(index === 0 ? -1 : 0, share));
    const gap = norm(minus(point, plus(from, step, inside)));
    if (gap < least) {
      least = gap;
      best = (line.along[index] ?? 0) + inside * norm(step);
    }
  }
  return best;
}

type Derivatives = readonly { value: number; first: number; second: number }[];

function stateOf(parts: Derivatives, across: 1 | 2): { place: Vector; speed: number; curvature: number } {
  const [x, y, z] = parts;
  const none = { value: 0, first: 0, second: 0 };
  const [a, b, c] = [x ?? none, y ?? none, z ?? none];
  const velocity = vector(a.first, b.first, c.first);
  const speed = norm(velocity);
  const turning = cross(velocity, vector(a.second, b.second, c.second));
  // With x to the right of a course along +y, a bend to the right has a negative z in the vector product.
  const size = across === 1 ? -turning.z : norm(turning);
  return { place: vector(a.value, b.value, c.value), speed, curvature: speed === 0 ? 0 : size / speed ** 3 };
}
