/** A rectangle of numbers, row by row. */
export interface Plane {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float64Array;
}

/** Deviations after which a Gaussian is cut off. */
const reach = 4;

/**
 * The half of a Gaussian's weights from its middle outwards, adding up to 1 over both halves.
 * Takes the standard deviation in pixels, above 0. Gives weights to four deviations; 1 part in 16,000 lies beyond.
 */
export function gaussianHalf(sigmaPx: number): Float64Array {
  const radius = Math.ceil(reach * sigmaPx);
  const weights = Float64Array.from({ length: radius + 1 }, (_, step) => Math.exp(-0.5 * (step / sigmaPx) ** 2));
  const sum = weights.reduce((total, weight, step) => total + (step === 0 ? weight : 2 * weight), 0);
  return weights.map((weight) => weight / sum);
}

/**
 * A plane smoothed along its rows and handed over with rows and columns exchanged, so that doing it twice smooths both
 * ways and puts the plane upright again.
 * Takes the plane and the half of the weights. Gives a new plane. Beyond an edge the plane goes on point-mirrored
 * about its last value, which leaves every slope as steep as it was: a level or sloping plane comes back unchanged.
 */
export function smoothedAcross(plane: Plane, half: Float64Array): Plane {
  const { columns, rows, values } = plane;
  const radius = half.length - 1;
  const line = new Float64Array(columns + 2 * radius);
  const across = new Float64Array(values.length);
  for (let row = 0; row < rows; row++) {
    extendedRow(line, values.subarray(row * columns, (row + 1) * columns), radius);
    for (let column = 0; column < columns; column++) {
      const middle = column + radius;
      let sum = (half[0] ?? 0) * (line[middle] ?? 0);
      for (let step = 1; step <= radius; step++)
        sum += (half[step] ?? 0) * ((line[middle - step] ?? 0) + (line[middle + step] ?? 0));
      across[column * rows + row] = sum;
    }
  }
  return { columns: rows, rows: columns, values: across };
}

/** Writes a row between its two continuations. */
function extendedRow(line: Float64Array, row: Float64Array, radius: number): void {
  const last = row.length - 1;
  line.set(row, radius);
  for (let step = 1; step <= radius; step++) {
    line[radius - step] = 2 * (row[0] ?? 0) - (row[Math.min(step, last)] ?? 0);
    line[radius + last + step] = 2 * (row[last] ?? 0) - (row[Math.max(last - step, 0)] ?? 0);
  }
}
