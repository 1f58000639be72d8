import { cholesky, solveCholesky } from "./solve-linear.ts";

/** A smooth course of several values over one place, as cubic B-splines on even knots. */
export interface SmoothingSpline {
  /** Value and its first two derivatives at a place, one triple for each of the values. */
  readonly at: (place: number) => readonly { value: number; first: number; second: number }[];
  /** Weight of roughness against squared misfit. */
  readonly penalty: number;
  /** Effective number of coefficients of one value. */
  readonly effective: number;
}

/** What a smoothing spline is told. */
export interface SmoothingRequest {
  readonly places: readonly number[];
  /** One array for each value (x, y, z), each as long as `places`. */
  readonly values: readonly (readonly number[])[];
  /** A penalty, or the variance of the noise from which it is found and how many of the values carry that noise. */
  readonly by: { readonly penalty: number } | { readonly variance: number; readonly noisyValues: number };
}

/**
 * The smoothing spline through noisy values: least squares with a penalty on the third differences of the coefficients,
 * so that a course of steadily changing curvature costs nothing.
 * Takes at least four places, two of them different; the penalty is 0 or more.
 * Gives, where the noise is told instead, the penalty of the least expected error: squared misfit plus twice the noise
 * for each effective coefficient, each counted 1.4 times against undersmoothing.
 * @source P. H. C. Eilers, B. D. Marx, "Flexible smoothing with B-splines and penalties", Stat Sci 1996;11:89-121
 * (memory); P. Craven, G. Wahba, Numer Math 1979;31:377-403 for the criterion (memory); Y.-J. Kim, C. Gu, J R Stat Soc B
 * 2004;66:337-356 for the factor 1.4 (memory)
 */
export function smoothingSpline(request: SmoothingRequest): SmoothingSpline {
  const system = systemOf(request);
  const { by } = request;
  if ("penalty" in by) return splineOf(system, by.penalty);
  const cost = (exponent: number): number => {
    const { misfit, effective } = solved(system, system.scale * 10 ** exponent);
    return misfit + 2 * 1.4 * by.variance * by.noisyValues * effective;
  };
  const exponents = Array.from({ length: 33 }, (_, index) => 6 - index / 2);
  const costs = exponents.map(cost);
  const best = exponents[costs.indexOf(Math.min(...costs))] ?? 0;
  return splineOf(system, system.scale * 10 ** best);
}

interface System {
  readonly request: SmoothingRequest;
  readonly start: number;
  readonly step: number;
  readonly count: number;
  readonly gram: Float64Array;
  readonly rough: Float64Array;
  readonly rights: readonly Float64Array[];
  readonly scale: number;
}

function systemOf(request: SmoothingRequest): System {
  const { places, values } = request;
  const start = Math.min(...places);
  const spans = Math.min(32, Math.max(3, Math.round(places.length / 2)));
  const step = (Math.max(...places) - start) / spans || 1;
  const count = spans + 3;
  const gram = new Float64Array(count * count);
  const rights = values.map(() => new Float64Array(count));
  places.forEach((place, index) => {
    const { first, weights } = basis(place, { start, step, count });
    weights.forEach((a, row) => {
      weights.forEach((b, column) => {
        add(gram, (first + row) * count + first + column, a * b);
      });
      rights.forEach((right, value) => {
        add(right, first + row, a * (values[value]?.[index] ?? 0));
      });
    });
  });
  const rough = roughness(count);
  return { request, start, step, count, gram, rough, rights, scale: trace(gram, count) / trace(rough, count) };
}

/** D'D of the third differences D. */
function roughness(count: number): Float64Array {
  const rough = new Float64Array(count * count);
  const difference = [-1, 3, -3, 1];
  for (let from = 0; from + 3 < count; from++)
    difference.forEach((a, row) => {
      difference.forEach((b, column) => {
        add(rough, (from + row) * count + from + column, a * b);
      });
    });
  return rough;
}

function solved(system: System, penalty: number): { coefficients: Float64Array[]; misfit: number; effective: number } {
  const { count, gram, rough, rights, request } = system;
  const lower = firmFactor(
    gram.map((value, at) => value + penalty * (rough[at] ?? 0)),
    count,
    (trace(gram, count) || 1) / count,
  );
  const coefficients = rights.map((right) => solveCholesky(lower, right));
  let effective = 0;
  for (let column = 0; column < count; column++)
    effective += solveCholesky(lower, gram.subarray(column * count, (column + 1) * count))[column] ?? 0;
  let misfit = 0;
  request.places.forEach((place, index) => {
    const { first, weights } = basis(place, system);
    coefficients.forEach((line, value) => {
      misfit += (sum(weights, line, first) - (request.values[value]?.[index] ?? 0)) ** 2;
    });
  });
  return { coefficients, misfit, effective };
}

/** The factor of a matrix that points between far knots leave undetermined: a weight too small to see holds those still. */
function firmFactor(matrix: Float64Array, size: number, level: number): Float64Array {
  for (let ridge = 1e-11; ridge < 1e9; ridge *= 100) {
    const firm = matrix.map((value, at) => (at % (size + 1) === 0 ? value + ridge * level : value));
    const lower = cholesky(firm, size);
    if (lower !== undefined) return lower;
  }
  throw new RangeError("places and values of a smoothing spline are finite numbers");
}

function splineOf(system: System, penalty: number): SmoothingSpline {
  const { coefficients, effective } = solved(system, penalty);
  const { step } = system;
  return {
    penalty,
    effective,
    at: (place) => {
      const { first, weights, slopes, bends } = basis(place, system);
      return coefficients.map((line) => ({
        value: sum(weights, line, first),
        first: sum(slopes, line, first) / step,
        second: sum(bends, line, first) / step ** 2,
      }));
    },
  };
}

/** The four cubic B-splines that are not zero at a place, with their derivatives by the knot step. */
function basis(place: number, knots: { start: number; step: number; count: number }) {
  const position = (place - knots.start) / knots.step;
  const first = Math.min(Math.max(Math.floor(position), 0), knots.count - 4);
  const t = position - first;
  const u = 1 - t;
  return {
    first,
    weights: [u ** 3 / 6, (3 * t ** 3 - 6 * t ** 2 + 4) / 6, (3 * u ** 3 - 6 * u ** 2 + 4) / 6, t ** 3 / 6],
    slopes: [-(u ** 2) / 2, (3 * t ** 2 - 4 * t) / 2, (4 * u - 3 * u ** 2) / 2, t ** 2 / 2],
    bends: [u, 3 * t - 2, 3 * u - 2, t],
  };
}

function add(values: Float64Array, index: number, amount: number): void {
  values[index] = (values[index] ?? 0) + amount;
}

const sum = (weights: readonly number[], line: Float64Array, first: number): number =>
  weights.reduce((total, weight, index) => total + weight * (line[first + index] ?? 0), 0);

function trace(matrix: Float64Array, size: number): number {
  let total = 0;
  for (let at = 0; at < size; at++) total += matrix[at * size + at] ?? 0;
  return total;
}
