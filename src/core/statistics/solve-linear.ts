/** The lower triangle L of a positive definite matrix A = L L', row by row, or undefined where A is not positive definite. */
export function cholesky(matrix: Float64Array, size: number): Float64Array | undefined {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row++)
    for (let column = 0; column <= row; column++) {
      let sum = at(matrix, row * size + column);
      for (let k = 0; k < column; k++) sum -= at(lower, row * size + k) * at(lower, column * size + k);
      if (row !== column) lower[row * size + column] = sum / at(lower, column * size + column);
      else if (sum > 0) lower[row * size + row] = Math.sqrt(sum);
      else return undefined;
    }
  return lower;
}

/** The x of L L' x = b. */
export function solveCholesky(lower: Float64Array, right: ArrayLike<number>): Float64Array {
  const size = right.length;
  const half = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    let sum = at(right, row);
    for (let k = 0; k < row; k++) sum -= at(lower, row * size + k) * at(half, k);
    half[row] = sum / at(lower, row * size + row);
  }
  return solveTransposed(lower, half);
}

/** The x of L' x = b: with b of independent unit normal numbers, a draw whose covariance is the inverse of L L'. */
export function solveTransposed(lower: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = new Float64Array(size);
  for (let row = size - 1; row >= 0; row--) {
    let sum = at(right, row);
    for (let k = row + 1; k < size; k++) sum -= at(lower, k * size + row) * at(x, k);
    x[row] = sum / at(lower, row * size + row);
  }
  return x;
}

const at = (values: ArrayLike<number>, index: number): number => values[index] ?? 0;
